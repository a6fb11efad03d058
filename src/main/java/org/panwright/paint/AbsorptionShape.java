package org.panwright.paint;

import java.util.List;
import org.panwright.colour.Bands;
import org.panwright.colour.Spectrum;

/**
 * The shape of a pigment's absorption over wavelength, as a sum of terms read from published
 * spectra.
 *
 * @param terms edges, bands and flats, at least one
 * @param masstoneDepth the largest K·X a masstone coat reaches between 400 and 700 nm
 */
public record AbsorptionShape(List<Term> terms, double masstoneDepth) {
  public AbsorptionShape {
    terms = List.copyOf(terms);
    if (terms.isEmpty()) {
      throw new IllegalArgumentException("an absorption shape needs a term");
    }
    if (!(masstoneDepth > 0 && masstoneDepth < 1000)) {
      throw new IllegalArgumentException(
          "masstone depth must lie in 0..1000, was " + masstoneDepth);
    }
  }

  /** One contribution to the shape; heights are relative to each other. */
  public sealed interface Term permits Edge, Band, Flat {
    /** The contribution at a wavelength in nanometres. */
    double at(double wavelengthNm);
  }

  /**
   * Absorption below an edge, as of yellows and reds.
   *
   * <pre>height / (1 + exp((λ − atNm) / widthNm))</pre>
   */
  public record Edge(double atNm, double widthNm, double height) implements Term {
    public Edge {
      requirePositive(widthNm, height);
    }

    @Override
    public double at(double wavelengthNm) {
      return height / (1 + Math.exp((wavelengthNm - atNm) / widthNm));
    }
  }

  /**
   * An absorption band: 85 % Gaussian and 15 % Lorentzian of the same full width at half height.
   *
   * <pre>height · (0.85 exp(−4 ln 2 u²) + 0.15 / (1 + 4 u²)),  u = (λ − atNm) / fullWidthNm</pre>
   */
  public record Band(double atNm, double fullWidthNm, double height) implements Term {
    public Band {
      requirePositive(fullWidthNm, height);
    }

    @Override
    public double at(double wavelengthNm) {
      double u = (wavelengthNm - atNm) / fullWidthNm;
      return height * (0.85 * Math.exp(-4 * Math.log(2) * u * u) + 0.15 / (1 + 4 * u * u));
    }
  }

  /** The same absorption everywhere: greyness. */
  public record Flat(double height) implements Term {
    public Flat {
      requirePositive(1, height);
    }

    @Override
    public double at(double wavelengthNm) {
      return height;
    }
  }

  /**
   * K(λ) per unit load.
   *
   * <pre>K(λ) = masstoneDepth · Σ terms(λ) / max over 400–700 nm of Σ terms</pre>
   */
  public Spectrum absorption() {
    Spectrum sum = Spectrum.ofWavelengths(nm -> terms.stream().mapToDouble(t -> t.at(nm)).sum());
    double peak = 0;
    for (int band = 0; band < Bands.COUNT; band++) {
      int nm = Bands.wavelengthNm(band);
      if (nm >= 400 && nm <= 700) {
        peak = Math.max(peak, sum.at(band));
      }
    }
    double scale = masstoneDepth / peak;
    return sum.map(value -> value * scale);
  }

  private static void requirePositive(double width, double height) {
    if (!(width > 0 && height > 0 && Double.isFinite(width) && Double.isFinite(height))) {
      throw new IllegalArgumentException(
          "width and height must be positive, were " + width + ", " + height);
    }
  }
}
