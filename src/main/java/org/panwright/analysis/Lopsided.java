package org.panwright.analysis;

import java.util.Optional;
import org.panwright.kit.Edit;

/**
 * A lineup that leans too far to one side.
 *
 * @param side what there is too much or nothing of
 * @param group the hue group for {@link Side#CROWDED} and {@link Side#MISSING}
 * @param count how many paints are on that side
 * @param paints how many paints there are
 */
public record Lopsided(Side side, Optional<HueGroup> group, int count, int paints)
    implements Finding {
  /** Fewer paints than this are too few to be called lopsided. */
  public static final int FEWEST = 6;

  /** The sides a lineup can lean to. */
  public enum Side {
    /** More than a third of the paints, and at least four, are of one hue group. */
    CROWDED,
    /** No yellow, no red or no blue at all. */
    MISSING,
    /** More than half are semi-opaque or opaque. */
    OPAQUE,
    /** More than three quarters stain strongly. */
    STAINING,
    /** More than three quarters granulate. */
    GRANULATING
  }

  @Override
  public double severity() {
    return side == Side.MISSING ? 0.3 : 0.12;
  }

  @Override
  public Optional<Edit> cure() {
    return Optional.empty();
  }
}
