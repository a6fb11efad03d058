package org.panwright.colour;

/**
 * A colour made showable on an sRGB screen.
 *
 * @param shown the colour the screen gets
 * @param exact whether {@code shown} is the colour asked for; if not, chroma was taken away at
 *     constant Oklab hue and lightness
 */
public record GamutFit(Srgb shown, boolean exact) {
  /** What white may exceed 1 in lightness by rounding alone, far below one step of the screen. */
  private static final double WHITE_ROUNDING = 1e-4;

  /** The chroma a white may have by rounding alone. */
  private static final double GREY_ROUNDING = 1e-3;

  /** Halvings of the chroma interval: 0.4 / 2^24 is far below one step of the screen. */
  private static final int HALVINGS = 24;

  /**
   * The nearest showable colour of the same Oklab hue and lightness, found by bisection of chroma.
   *
   * <p>Colours lighter than white become white, darker than black black. The method follows the
   * idea of CSS Color 4, section 13, without its local clipping: a colour that fits is never moved.
   */
  public static GamutFit of(Oklch colour) {
    if (colour.l() >= 1) {
      return new GamutFit(new Srgb(1, 1, 1), isWhite(colour));
    }
    if (colour.l() <= 0) {
      return new GamutFit(new Srgb(0, 0, 0), colour.l() == 0 && colour.c() == 0);
    }
    LinearSrgb wanted = linear(colour);
    if (wanted.fits()) {
      return new GamutFit(wanted.clipped(), true);
    }
    double fits = 0;
    double tooMuch = colour.c();
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (fits + tooMuch) / 2;
      if (linear(colour.withChroma(middle)).fits()) {
        fits = middle;
      } else {
        tooMuch = middle;
      }
    }
    return new GamutFit(linear(colour.withChroma(fits)).clipped(), false);
  }

  /** The nearest showable colour for tristimulus values under D65. */
  public static GamutFit ofXyzD65(Xyz xyz) {
    return of(Oklab.ofD65(xyz).toOklch());
  }

  private static boolean isWhite(Oklch colour) {
    return colour.l() < 1 + WHITE_ROUNDING && colour.c() < GREY_ROUNDING;
  }

  private static LinearSrgb linear(Oklch colour) {
    return LinearSrgb.ofXyzD65(colour.toOklab().toXyzD65());
  }
}
