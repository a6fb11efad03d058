package org.panwright.app.chip;

import org.panwright.colour.HueWord;
import org.panwright.colour.Oklch;
import org.panwright.paint.HueFamily;
import org.panwright.paint.Paint;
import org.panwright.paint.Pigment;
import org.panwright.paint.PigmentLibrary;

/**
 * The family a painter would file a paint under.
 *
 * <p>A paint of one known pigment is filed as the pigment is; a mixture by its colour, since a
 * yellow and a blue make a green. The bounds between dull and clear colours are a filing aid of our
 * own and enter no figure.
 */
public final class FamilySense {
  private static final double GREY_CHROMA = 0.03;
  private static final double EARTH_CHROMA = 0.11;
  private static final double BLACK_LIGHTNESS = 0.40;
  private static final double WHITE_LIGHTNESS = 0.93;
  private static final double BROWN_LIGHTNESS = 0.42;

  private FamilySense() {}

  /** The family of a paint with these tones. */
  public static HueFamily of(Paint paint, Tones tones, PigmentLibrary library) {
    if (paint.pigments().size() == 1) {
      return library
          .find(paint.pigments().get(0).pigment())
          .map(Pigment::family)
          .orElseGet(() -> of(tones));
    }
    return of(tones);
  }

  /** The family of a colour by the look of its masstone and its middle wash. */
  static HueFamily of(Tones tones) {
    Oklch body = tones.body();
    if (body.c() < GREY_CHROMA) {
      double l = tones.masstone().l();
      return l > WHITE_LIGHTNESS
          ? HueFamily.WHITE
          : l < BLACK_LIGHTNESS ? HueFamily.BLACK : HueFamily.GREY;
    }
    HueFamily earth = earth(body, tones.masstone());
    return earth == null ? clear(HueWord.of(body.hueDeg())) : earth;
  }

  private static HueFamily earth(Oklch body, Oklch masstone) {
    if (body.c() >= EARTH_CHROMA || body.hueDeg() < 18 || body.hueDeg() >= 102) {
      return null;
    }
    if (masstone.l() < BROWN_LIGHTNESS) {
      return HueFamily.BROWN;
    }
    return body.hueDeg() < 48
        ? HueFamily.EARTH_RED
        : body.hueDeg() < 75 ? HueFamily.EARTH_ORANGE : HueFamily.EARTH_YELLOW;
  }

  private static HueFamily clear(HueWord word) {
    return switch (word) {
      case ROSE, MAGENTA -> HueFamily.ROSE;
      case RED -> HueFamily.RED;
      case ORANGE_RED, ORANGE -> HueFamily.ORANGE;
      case GOLDEN_YELLOW, YELLOW, GREENISH_YELLOW -> HueFamily.YELLOW;
      case YELLOW_GREEN -> HueFamily.YELLOW_GREEN;
      case GREEN, BLUISH_GREEN -> HueFamily.GREEN;
      case TURQUOISE -> HueFamily.TURQUOISE;
      case GREENISH_BLUE, BLUE, VIOLET_BLUE -> HueFamily.BLUE;
      case VIOLET, PURPLE -> HueFamily.VIOLET;
    };
  }
}
