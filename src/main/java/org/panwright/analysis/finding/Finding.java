package org.panwright.analysis.finding;

import java.util.List;
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
        DriesGrey,
        Fading,
        NearTwins,
        StandIn,
        Passenger,
        AlsoSpare,
        MuddyPaint,
        MuddyPairs,
        Lopsided,
        Metals,
        Wish,
        Nature {
  /** What kind of finding. */
  FindingKind kind();

  /**
   * What it is about within its kind; empty where a lineup has only one of the kind. Stays the same
   * while the finding stays the same, whatever its figures become.
   */
  String about();

  /** The paints it speaks of, by id, the most concerned first; none for some. */
  List<String> paintIds();

  /** How much it matters: 0 a remark, 1 as bad as can be. */
  double severity();

  /** How much of it there is, in its own unit: what a cure lessens. */
  default double extent() {
    return severity();
  }

  /** The single edit that would cure it, if there is one. */
  Optional<Edit> cure();

  /** By what the kit remembers that it is muted: its kind's code and what it is about. */
  default String key() {
    return about().isEmpty() ? kind().code() : kind().code() + ":" + about();
  }
}
