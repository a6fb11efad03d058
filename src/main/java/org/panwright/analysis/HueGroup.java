package org.panwright.analysis;

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
