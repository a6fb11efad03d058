package org.panwright.kit;

/**
 * How exactly a pan has to fit its well.
 *
 * @param makeMm by how much pans of one kind differ from maker to maker, 0..5
 * @param looseMm play on either axis beyond which a pan sits loose, 0..20
 */
public record FitTolerance(double makeMm, double looseMm) {
  /** Pans give or take half a millimetre; more than 1.5 mm of play rattles (common practice). */
  public static final FitTolerance USUAL = new FitTolerance(0.5, 1.5);

  public FitTolerance {
    if (!(makeMm >= 0 && makeMm <= 5 && looseMm >= 0 && looseMm <= 20)) {
      throw new IllegalArgumentException(
          "tolerances lie in 0..5 and 0..20 mm, were %s and %s".formatted(makeMm, looseMm));
    }
  }
}
