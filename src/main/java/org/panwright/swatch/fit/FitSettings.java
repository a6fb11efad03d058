package org.panwright.swatch.fit;

import java.util.Optional;

/**
 * What a fit minds and how much: weights of squares, chosen by cross-validation.
 *
 * <p>Which figures were tried, and on what, is recorded in
 * docs/decisions/0011-fitting-optics-from-swatches.md.
 *
 * @param spectral of the difference of a measured spectrum, in steps of lightness
 * @param reconstructed of the difference of a spectrum that was only reconstructed from a colour
 * @param colour of the difference in colour, in steps of CIEDE2000
 * @param absorptionBend of the second differences of ln K from band to band
 * @param scatteringBend of the second differences of ln S
 * @param scatteringSlope of the first differences of ln S
 * @param scatteringPull of the distance of a paint's mean ln S from the usual one of the set
 * @param scatteringSpread how far, in ln S, a paint may lie from the others before the pull gives
 *     way
 * @param face that of the coats where it is known; otherwise it is fitted too
 */
public record FitSettings(
    double spectral,
    double reconstructed,
    double colour,
    double absorptionBend,
    double scatteringBend,
    double scatteringSlope,
    double scatteringPull,
    double scatteringSpread,
    Optional<KnownFace> face) {

  /** For readings of an instrument, whose face is fitted. */
  public static final FitSettings MEASURED =
      new FitSettings(0.64, 0.09, 1, 0.05, 20, 30, 40, 0.4, Optional.empty());

  /** For optics that the engine is to use: the face is that of every mix it predicts. */
  public static final FitSettings FOR_ENGINE =
      new FitSettings(0.64, 0.09, 1, 0.05, 20, 30, 40, 0.4, Optional.of(KnownFace.MATT));

  public FitSettings {
    double least =
        Math.min(
            Math.min(Math.min(spectral, reconstructed), colour),
            Math.min(
                Math.min(absorptionBend, scatteringBend),
                Math.min(scatteringSlope, scatteringPull)));
    if (!(least >= 0)) {
      throw new IllegalArgumentException("weights must not be negative, was " + least);
    }
  }

  /** The same with the face of the coats known. */
  public FitSettings on(KnownFace known) {
    return new FitSettings(
        spectral,
        reconstructed,
        colour,
        absorptionBend,
        scatteringBend,
        scatteringSlope,
        scatteringPull,
        scatteringSpread,
        Optional.of(known));
  }
}
