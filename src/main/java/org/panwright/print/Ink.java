package org.panwright.print;

import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Srgb;

/**
 * The inks of the papers besides the paints.
 *
 * <p>Text is always black: a printer makes grey from dots, and dots eat small letters.
 */
public final class Ink {
  /** For text and what must be seen. */
  public static final Srgb BLACK = Srgb.ofBytes(0, 0, 0);

  /** For outlines of wells and cells. */
  public static final Srgb LINE = Srgb.ofBytes(120, 120, 120);

  /** For lines that only guide the eye. */
  public static final Srgb FAINT = Srgb.ofBytes(190, 190, 190);

  /** For text on a dark swatch. */
  public static final Srgb WHITE = Srgb.ofBytes(255, 255, 255);

  private static final double DARK_BELOW_L = 60;

  private Ink() {}

  /** Black or white, whichever reads better on {@code ground}. */
  public static Srgb on(Srgb ground) {
    Lab lab = Lab.of(ground.toXyzD65(), Light.D65.white());
    return lab.l() < DARK_BELOW_L ? WHITE : BLACK;
  }
}
