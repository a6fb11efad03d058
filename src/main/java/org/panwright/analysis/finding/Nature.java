package org.panwright.analysis.finding;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.panwright.kit.Edit;

/**
 * A remark on paints that change the nature of every mix they enter.
 *
 * @param effect what they do
 * @param paintIds the paints, in the order of the wells
 * @param remedy the exchange of one of them for the nearest that does not, if there is one
 */
public record Nature(Effect effect, List<String> paintIds, Optional<Remedy> remedy)
    implements Finding {
  /** From this luminance Y of the masstone coat over black a paint is a hiding light. */
  public static final double LIGHT_FROM = 0.25;

  /** And from this share of the luminance over paper (a contrast ratio). */
  public static final double HIDING_FROM = 0.5;

  /** What paints do to mixes. */
  public enum Effect {
    /** Whites and paints that hold one: mixes with them turn to opaque pastels. */
    WHITE,
    /**
     * Light, hiding paints without a white: in a mix they cover like one. Their masstone coat over
     * black keeps a luminance of {@value #LIGHT_FROM} or more and half of that over paper.
     */
    HIDING_LIGHT,
    /**
     * Three or more pigments in one tube: mixes with them dull sooner and are harder to foretell.
     */
    MANY_PIGMENTS
  }

  public Nature {
    paintIds = List.copyOf(paintIds);
  }

  /** The same finding with the remedy that was found for it. */
  public Nature with(Optional<Remedy> found) {
    return new Nature(effect, paintIds, found);
  }

  @Override
  public FindingKind kind() {
    return FindingKind.NATURE;
  }

  @Override
  public String about() {
    return effect.name().toLowerCase(Locale.ROOT).replace('_', '-')
        + ":"
        + String.join("+", paintIds);
  }

  @Override
  public double severity() {
    return 0.05;
  }

  /** How many paints. */
  @Override
  public double extent() {
    return paintIds.size();
  }

  @Override
  public Optional<Edit> cure() {
    return remedy.map(Remedy::edit);
  }
}
