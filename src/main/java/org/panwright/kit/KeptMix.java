package org.panwright.kit;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.panwright.paint.Wash;

/**
 * A mix the painter wants on the key card of a lineup.
 *
 * <p>Its paints need not be in the lineup any more; such a mix is kept and not printed.
 *
 * @param parts at least one, each of another paint
 * @param wash how thick it is painted
 * @param name what it is for, in the painter's words; may be empty
 */
public record KeptMix(List<Part> parts, Wash wash, String name) {
  /**
   * How much of one paint.
   *
   * @param parts strength parts, above 0, at most 100
   */
  public record Part(String paintId, double parts) {
    public Part {
      if (paintId.isBlank()) {
        throw new IllegalArgumentException("a part names a paint");
      }
      if (!(parts > 0 && parts <= 100)) {
        throw new IllegalArgumentException("parts must lie above 0 and up to 100, were " + parts);
      }
    }
  }

  public KeptMix {
    parts = List.copyOf(parts);
    Objects.requireNonNull(wash, "wash");
    Objects.requireNonNull(name, "name");
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("a mix needs a paint");
    }
    if (parts.stream().map(Part::paintId).distinct().count() < parts.size()) {
      throw new IllegalArgumentException("a mix names each paint once");
    }
  }

  /** What tells it from the other mixes of its card. */
  public String key() {
    return parts.stream()
        .map(part -> part.paintId() + "*" + part.parts())
        .sorted()
        .collect(Collectors.joining("+", "", "@" + wash));
  }
}
