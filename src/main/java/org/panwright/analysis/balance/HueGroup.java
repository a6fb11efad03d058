package org.panwright.analysis.balance;

import org.panwright.colour.Oklch;
import org.panwright.paint.HueFamily;

/** The coarse groups a painter counts a box by. */
public enum HueGroup {
  YELLOWS,
  REDS,
  VIOLETS,
  BLUES,
  GREENS,
  EARTHS,
  NEUTRALS;

  private static final double GREY_BELOW = 0.04;
  private static final double EARTH_BELOW = 0.10;

  /**
   * The group of a colour, for paints mixed from several pigments; judged by a milk wash. Bounds
   * are ours: grey below chroma 0.04, earth from 30° to 100° below chroma 0.10.
   */
  static HueGroup of(Oklch colour) {
    double hue = colour.hueDeg();
    if (colour.c() < GREY_BELOW) {
      return NEUTRALS;
    }
    if (hue >= 30 && hue < 100 && colour.c() < EARTH_BELOW) {
      return EARTHS;
    }
    if (hue < 80 || hue >= 335) {
      return REDS;
    }
    if (hue < 112) {
      return YELLOWS;
    }
    if (hue < 200) {
      return GREENS;
    }
    return hue < 278 ? BLUES : VIOLETS;
  }

  /** The group of a family; oranges and roses count as reds, browns as earths. */
  public static HueGroup of(HueFamily family) {
    return switch (family) {
      case YELLOW -> YELLOWS;
      case ORANGE, RED, ROSE -> REDS;
      case VIOLET -> VIOLETS;
      case BLUE, TURQUOISE -> BLUES;
      case GREEN, YELLOW_GREEN -> GREENS;
      case EARTH_YELLOW, EARTH_ORANGE, EARTH_RED, BROWN -> EARTHS;
      case BLACK, GREY, WHITE -> NEUTRALS;
    };
  }
}
