package org.panwright;

import org.assertj.core.data.Offset;

/** How far each quantity may lie from its published value: one figure a quantity, all here. */
public final class Tolerance {
  /** CIEDE2000 against the table of Sharma, Wu and Dalal, which states four decimals. */
  public static final Offset<Double> CIEDE2000 = Offset.offset(1e-4);

  /**
   * Tristimulus values of a white, scale Y = 100, against CIE 015. The published values are summed
   * at 1 nm over 360–830 nm, ours at 5 nm over 360–780 nm.
   */
  public static final Offset<Double> WHITE_XYZ = Offset.offset(0.02);

  /** Tristimulus values, scale Y = 1, of an exact formula. */
  public static final Offset<Double> XYZ = Offset.offset(1e-12);

  /** Elements of a matrix published with seven decimals. */
  public static final Offset<Double> MATRIX = Offset.offset(2e-7);

  /** CIELAB coordinates against another implementation that counts in single precision. */
  public static final Offset<Double> LAB = Offset.offset(0.01);

  /**
   * Oklab coordinates against another implementation, which keeps the first printed matrices of
   * 2020; those recomputed for CSS Color 4 move a coordinate by some ten-thousandths.
   */
  public static final Offset<Double> OKLAB = Offset.offset(5e-4);

  /** Oklab coordinates published with three decimals. */
  public static final Offset<Double> OKLAB_PRINTED = Offset.offset(6e-4);

  /** Hue angles in degrees of an exact formula. */
  public static final Offset<Double> HUE_DEG = Offset.offset(1e-6);

  /** An encoded sRGB coordinate: a tenth of one step of 1/255. */
  public static final Offset<Double> SRGB = Offset.offset(0.1 / 255);

  /** What is lost on the way there and back in double precision. */
  public static final Offset<Double> ROUND_TRIP = Offset.offset(1e-9);

  /** A reflectance worked by hand, stated with nine decimals. */
  public static final Offset<Double> REFLECTANCE = Offset.offset(6e-10);

  /** A reflectance printed with six decimals. */
  public static final Offset<Double> REFLECTANCE_PRINTED = Offset.offset(6e-7);

  /** A reflectance or transmittance against a numerical integration of the equations. */
  public static final Offset<Double> INTEGRATED = Offset.offset(1e-9);

  /** A reflectance of the fast form against the plain one. */
  public static final Offset<Double> FAST_REFLECTANCE = Offset.offset(1e-12);

  /** A CIELAB coordinate of the batch mixer against the plain mixer. */
  public static final Offset<Double> FAST_LAB = Offset.offset(1e-10);

  private Tolerance() {}
}
