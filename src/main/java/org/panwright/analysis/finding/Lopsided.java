package org.panwright.analysis.finding;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.panwright.analysis.balance.HueGroup;
import org.panwright.kit.Edit;
import org.panwright.paint.HueFamily;

/**
 * A lineup that leans too far to one side.
 *
 * @param side what there is too much or nothing of
 * @param group the hue group for {@link Side#CROWDED}, {@link Side#MISSING} and {@link
 *     Side#LEANING}
 * @param lean where all paints of the group lean to, for {@link Side#LEANING}
 * @param paintIds the paints on that side, in the order of the wells
 * @param paints how many paints there are in all
 * @param change the exchange that evens it out by one paint
 */
public record Lopsided(
    Side side,
    Optional<HueGroup> group,
    Optional<HueFamily> lean,
    List<String> paintIds,
    int paints,
    Change change)
    implements Finding {
  /** Fewer paints than this are too few to be called lopsided. */
  public static final int FEWEST = 6;

  /** The sides a lineup can lean to. */
  public enum Side {
    /** More than a third of the paints, and at least four, are of one hue group. */
    CROWDED,
    /** No yellow, no red or no blue at all. */
    MISSING,
    /** All yellows or all blues, of two or more, lean to the same neighbour. */
    LEANING,
    /** More than half of the masstones are light. */
    LIGHT,
    /** More than three quarters of the masstones are dark. */
    DARK,
    /** More than half are semi-opaque or opaque. */
    OPAQUE,
    /** More than three quarters stain strongly. */
    STAINING,
    /** More than three quarters granulate. */
    GRANULATING
  }

  /**
   * An exchange of one paint.
   *
   * @param leavingId the paint that leaves its well
   * @param arrivingId the owned paint that comes
   * @param edit what does it; empty if nothing on the shelf evens it out
   */
  public record Change(
      Optional<String> leavingId, Optional<String> arrivingId, Optional<Edit> edit) {
    /** Nothing on the shelf evens it out. */
    public static final Change NONE =
        new Change(Optional.empty(), Optional.empty(), Optional.empty());
  }

  public Lopsided {
    paintIds = List.copyOf(paintIds);
  }

  /** How many paints are on that side. */
  public int count() {
    return paintIds.size();
  }

  @Override
  public FindingKind kind() {
    return FindingKind.LOPSIDED;
  }

  @Override
  public String about() {
    String what = side.name() + group.map(g -> "-" + g.name()).orElse("");
    return what.toLowerCase(Locale.ROOT);
  }

  @Override
  public double severity() {
    return switch (side) {
      case MISSING -> 0.3;
      case LEANING -> 0.1;
      default -> 0.12;
    };
  }

  @Override
  public Optional<Edit> cure() {
    return change.edit();
  }
}
