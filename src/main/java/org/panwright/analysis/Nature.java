package org.panwright.analysis;

import java.util.List;
import java.util.Optional;
import org.panwright.kit.Edit;

/**
 * A remark on paints that change the nature of every mix they enter.
 *
 * @param kind what they do
 * @param paintIds the paints, in the order of the wells
 */
public record Nature(Kind kind, List<String> paintIds) implements Finding {
  /** What paints do to mixes. */
  public enum Kind {
    /** Whites and paints that hold one: mixes with them turn to opaque pastels. */
    WHITE,
    /**
     * Three or more pigments in one tube: mixes with them dull sooner and are harder to foretell.
     */
    MANY_PIGMENTS
  }

  public Nature {
    paintIds = List.copyOf(paintIds);
  }

  @Override
  public double severity() {
    return 0.05;
  }

  @Override
  public Optional<Edit> cure() {
    return Optional.empty();
  }
}
