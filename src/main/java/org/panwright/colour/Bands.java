package org.panwright.colour;

/**
 * The wavelength bands of every spectrum in the program: 36 bands centred on 380, 390, … 730 nm.
 *
 * <p>Declared once, here. A band value is a sample at its centre.
 */
public final class Bands {
  /** Number of bands. */
  public static final int COUNT = 36;

  /** Centre of the first band in nanometres. */
  public static final int FIRST_NM = 380;

  /** Distance between neighbouring centres in nanometres. */
  public static final int STEP_NM = 10;

  private Bands() {}

  /**
   * The centre of a band in nanometres; band 0 is 380, band 35 is 730.
   *
   * @throws IndexOutOfBoundsException if {@code band} is outside 0..35
   */
  public static int wavelengthNm(int band) {
    return FIRST_NM + STEP_NM * java.util.Objects.checkIndex(band, COUNT);
  }
}
