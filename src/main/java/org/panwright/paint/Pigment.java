package org.panwright.paint;

import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * One pigment by its Colour Index generic name, with the properties it usually has in watercolour.
 *
 * @param name the generic name and kind
 * @param commonName the trade's or chemist's plain name
 * @param constitution the Colour Index constitution number, empty if not known
 * @param family where a painter files it
 * @param handling transparency, staining, granulation, lightfastness
 * @param strength relative tinting strength by mass, cobalt blue PB28 = 1
 * @param metals chemical symbols of metals it holds that call for care, for example "Cd"
 * @param fugitive whether it is known to fade within years on a wall
 * @param caution a short remark in the usual wording, empty if none
 * @param absorption shape of K
 * @param scattering shape of S
 * @param evidence source and grade of each {@link Facts} group
 */
public record Pigment(
    PigmentName name,
    String commonName,
    String constitution,
    HueFamily family,
    Handling handling,
    double strength,
    List<String> metals,
    boolean fugitive,
    String caution,
    AbsorptionShape absorption,
    ScatteringShape scattering,
    Map<Facts, Evidence> evidence) {
  /** The groups of figures that share one source. */
  public enum Facts {
    IDENTITY,
    HANDLING,
    LIGHTFASTNESS,
    ABSORPTION,
    SCATTERING,
    CAUTION
  }

  public Pigment {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(family, "family");
    Objects.requireNonNull(handling, "handling");
    metals = List.copyOf(metals);
    evidence = Map.copyOf(evidence);
    if (!(strength > 0 && strength < 100)) {
      throw new IllegalArgumentException(
          "tinting strength of " + name + " must lie in 0..100, was " + strength);
    }
    for (Facts group : Facts.values()) {
      if (!evidence.containsKey(group)) {
        throw new IllegalArgumentException(name + " names no source for " + group);
      }
    }
  }
}
