package org.panwright.paint;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.panwright.colour.Spectrum;

/** All pigments the program knows, by Colour Index generic name and kind. Immutable. */
public final class PigmentLibrary {
  /**
   * The CIEDE2000 error to expect of a colour estimated from pigment names alone; see {@code
   * docs/decisions} for how the figure was found.
   */
  public static final double EXPECTED_ERROR = 9;

  private final Map<PigmentName, Pigment> pigments;

  /**
   * A library of these pigments.
   *
   * @throws IllegalArgumentException if two have the same name
   */
  public PigmentLibrary(List<Pigment> pigments) {
    this.pigments = new TreeMap<>();
    for (Pigment pigment : pigments) {
      if (this.pigments.put(pigment.name(), pigment) != null) {
        throw new IllegalArgumentException("two pigments are called " + pigment.name());
      }
    }
  }

  /** All pigments in the order of their names. */
  public List<Pigment> pigments() {
    return List.copyOf(pigments.values());
  }

  /**
   * The pigment of this name; a name without a kind also finds the first kind of that code, so that
   * "PR101" always means something.
   */
  public Optional<Pigment> find(PigmentName name) {
    Pigment exact = pigments.get(name);
    if (exact != null || !name.variant().isEmpty()) {
      return Optional.ofNullable(exact);
    }
    return pigments.values().stream().filter(p -> p.name().code().equals(name.code())).findFirst();
  }

  /**
   * How a paint of these pigments usually handles: the most covering, most staining, most
   * granulating and least lightfast of them sets the tone (common practice). Pigments the library
   * does not know are passed over; empty if it knows none.
   */
  public Optional<Handling> usualHandling(List<PigmentShare> shares) {
    return shares.stream()
        .flatMap(part -> find(part.pigment()).stream())
        .map(Pigment::handling)
        .reduce(Handling::strongerOf);
  }

  /**
   * Optics estimated from pigments and their shares: K and S of the pigments' masstone coats,
   * weighted by share.
   *
   * <pre>K(λ) = Σ share · K_pigment(λ),  S(λ) = Σ share · S_pigment(λ)</pre>
   *
   * @throws IllegalArgumentException if a pigment is not in the library
   */
  public Optics estimate(List<PigmentShare> shares) {
    double total = shares.stream().mapToDouble(PigmentShare::share).sum();
    double[] k = new double[org.panwright.colour.Bands.COUNT];
    double[] s = new double[k.length];
    for (PigmentShare part : shares) {
      Pigment pigment =
          find(part.pigment())
              .orElseThrow(() -> new IllegalArgumentException("unknown pigment " + part.pigment()));
      Spectrum absorption = pigment.absorption().absorption();
      Spectrum scattering = pigment.scattering().scattering();
      for (int band = 0; band < k.length; band++) {
        k[band] += part.share() / total * absorption.at(band);
        s[band] += part.share() / total * scattering.at(band);
      }
    }
    return new Optics(Spectrum.of(k), Spectrum.of(s), OpticsSource.PIGMENTS, EXPECTED_ERROR);
  }
}
