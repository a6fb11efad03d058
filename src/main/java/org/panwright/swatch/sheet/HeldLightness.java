package org.panwright.swatch.sheet;

import org.panwright.colour.Lab;

/**
 * Whether a corrected lightness lies beyond what a coat can have, so that the nearest possible one
 * stands in its place.
 *
 * <p>Light from glare, a fold or a scrap of brighter paper gives more than all the light there is;
 * a channel the picture has at nought gives none at all, which no paint is.
 */
public enum HeldLightness {
  /** As read. */
  NOT_HELD,
  /** L* above 99.8, taken as 99.8. */
  TOO_LIGHT,
  /** L* below 0.2, taken as 0.2. */
  TOO_DARK;

  private static final double LIGHTEST = 99.8;
  private static final double DARKEST = 0.2;

  static HeldLightness of(Lab read) {
    return read.l() > LIGHTEST ? TOO_LIGHT : read.l() < DARKEST ? TOO_DARK : NOT_HELD;
  }

  /** The colour with the lightness that stands in its place. */
  Lab hold(Lab read) {
    return switch (this) {
      case NOT_HELD -> read;
      case TOO_LIGHT -> new Lab(LIGHTEST, read.a(), read.b());
      case TOO_DARK -> new Lab(DARKEST, read.a(), read.b());
    };
  }
}
