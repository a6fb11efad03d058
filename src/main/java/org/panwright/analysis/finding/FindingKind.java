package org.panwright.analysis.finding;

import java.util.Locale;

/** The kinds of findings; their codes stand in kit files and reports and never change. */
public enum FindingKind {
  EMPTY_LINEUP,
  HUE_GAP,
  NO_DARK,
  DRIES_GREY,
  FADING,
  NEAR_TWINS,
  STAND_IN,
  PASSENGER,
  ALSO_SPARE,
  MUDDY_PAINT,
  MUDDY_PAIRS,
  LOPSIDED,
  METALS,
  WISH,
  NATURE;

  /** The code, for example {@code hue-gap}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
