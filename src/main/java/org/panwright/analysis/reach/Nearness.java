package org.panwright.analysis.reach;

import org.panwright.colour.Lab;

/**
 * A quick stand-in for CIEDE2000 close to one colour, for sorting out what to look at closely.
 *
 * <p>It has the weights of CIEDE2000 at the target itself and leaves out the turning of the blues
 * and the stretching of a*:
 *
 * <pre>
 * d² = (ΔL / SL)² + (ΔC / SC)² + (ΔH / SH)²
 * SL = 1 + 0.015 (L − 50)² / √(20 + (L − 50)²),  SC = 1 + 0.045 C,  SH = 1 + 0.015 C
 * </pre>
 */
public final class Nearness {
  private final double l;
  private final double a;
  private final double b;
  private final double c;
  private final double perL;
  private final double perC;
  private final double perH;

  /** Nearness to a colour: CIELAB under D65. */
  public Nearness(Lab target) {
    l = target.l();
    a = target.a();
    b = target.b();
    c = target.chroma();
    double l50 = (l - 50) * (l - 50);
    perL = square(1 / (1 + 0.015 * l50 / Math.sqrt(20 + l50)));
    perC = square(1 / (1 + 0.045 * c));
    perH = square(1 / (1 + 0.015 * c));
  }

  /** d² to a colour. */
  public double squared(double otherL, double otherA, double otherB) {
    double dL = otherL - l;
    double dC = Math.sqrt(otherA * otherA + otherB * otherB) - c;
    double dAB = square(otherA - a) + square(otherB - b);
    return dL * dL * perL + dC * dC * perC + Math.max(0, dAB - dC * dC) * perH;
  }

  private static double square(double value) {
    return value * value;
  }
}
