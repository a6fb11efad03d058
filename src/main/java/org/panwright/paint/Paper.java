package org.panwright.paint;

import java.util.List;
import org.panwright.colour.Spectrum;

/**
 * The paper the painter paints on.
 *
 * @param name as the painter calls it
 * @param reflectance as measured from outside, 0.05..1 in every band
 */
public record Paper(String name, Spectrum reflectance) {
  /**
   * A plain white watercolour paper: bright, falling below 430 nm.
   *
   * <pre>R(λ) = 0.875 − 0.06 / (1 + exp((λ − 420 nm) / 15 nm))</pre>
   *
   * <p>Common practice puts such papers at L* 94–97; this one has L* 94.9 under D65.
   */
  public static final Paper WHITE =
      new Paper(
          "white watercolour paper",
          Spectrum.ofWavelengths(nm -> 0.875 - 0.06 / (1 + Math.exp((nm - 420) / 15))));

  /**
   * A natural white paper without brighteners: a little darker and warmer than {@link #WHITE}.
   *
   * <pre>R(λ) = 0.865 − 0.13 / (1 + exp((λ − 455 nm) / 32 nm))</pre>
   *
   * <p>A working value by eye, no measurement.
   */
  public static final Paper NATURAL =
      new Paper(
          "natural white paper",
          Spectrum.ofWavelengths(nm -> 0.865 - 0.13 / (1 + Math.exp((nm - 455) / 32))));

  /** The papers to choose from where nothing better is known. */
  public static final List<Paper> PLAIN = List.of(WHITE, NATURAL);

  public Paper {
    if (name.isBlank()) {
      throw new IllegalArgumentException("a paper's name must not be blank");
    }
    reflectance.requireWithin(0.05, 1, "paper reflectance");
  }
}
