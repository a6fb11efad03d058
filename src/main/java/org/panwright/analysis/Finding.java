package org.panwright.analysis;

import java.util.Optional;
import org.panwright.kit.Edit;

/**
 * One thing worth telling the painter about a lineup, as numbers; {@code words} makes the sentence.
 *
 * <p>A list of findings is ordered by {@link #severity()}, worst first.
 */
public sealed interface Finding
    permits EmptyLineup,
        HueGap,
        NoDark,
        Fading,
        NearTwins,
        StandIn,
        Passenger,
        Lopsided,
        Metals,
        Wish,
        Nature {
  /** How much it matters: 0 a remark, 1 as bad as can be. */
  double severity();

  /** The single edit that would cure it, if there is one. */
  Optional<Edit> cure();
}
