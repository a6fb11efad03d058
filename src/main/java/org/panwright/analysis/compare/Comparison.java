package org.panwright.analysis.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.panwright.analysis.judge.Judgement;
import org.panwright.analysis.mud.Dark;
import org.panwright.analysis.reach.HueArc;
import org.panwright.analysis.reach.Ring;
import org.panwright.colour.Lab;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;

/**
 * Two lineups side by side: what is won and what is lost by going from the first to the second.
 *
 * @param lost arcs of hue the first has and the second lacks, by the measure of a hue gap
 * @param won arcs of hue the second has and the first lacks
 * @param firstCovered share of the first's reach that the second covers, 0..1
 * @param secondCovered share of the second's reach that the first covers, 0..1
 * @param onlyFirst some colours only the first mixes, far from each other, CIELAB under D65
 * @param onlySecond some colours only the second mixes
 * @param firstDarkest the darkest dry mix of the first, unless it is empty
 * @param secondDarkest the darkest dry mix of the second, unless it is empty
 * @param inCommon ids of paints in both, in the order of the first
 * @param leaving ids of paints only in the first
 * @param coming ids of paints only in the second
 * @param sameBox whether both are for one box
 * @param moves what is to be done in the real box; empty for different boxes
 */
public record Comparison(
    List<Shift> lost,
    List<Shift> won,
    double firstCovered,
    double secondCovered,
    List<Lab> onlyFirst,
    List<Lab> onlySecond,
    Optional<Dark> firstDarkest,
    Optional<Dark> secondDarkest,
    List<String> inCommon,
    List<String> leaving,
    List<String> coming,
    boolean sameBox,
    List<Move> moves) {
  /** How many sample colours are given on each side at most. */
  public static final int SAMPLES = 12;

  /**
   * An arc of hue where one lineup falls behind the other.
   *
   * @param fromDeg where it starts, OKLCh degrees
   * @param toDeg where it ends, going up
   * @param less the best chroma within it of the lineup that falls behind
   * @param more the best chroma within it of the other
   */
  public record Shift(double fromDeg, double toDeg, double less, double more) {}

  public Comparison {
    lost = List.copyOf(lost);
    won = List.copyOf(won);
    onlyFirst = List.copyOf(onlyFirst);
    onlySecond = List.copyOf(onlySecond);
    inCommon = List.copyOf(inCommon);
    leaving = List.copyOf(leaving);
    coming = List.copyOf(coming);
    moves = List.copyOf(moves);
  }

  /**
   * Compares two judgements: of two lineups, or of one before and after an edit.
   *
   * <p>They must be of the same paper and washes, or the difference is not one of paints.
   *
   * @throws IllegalArgumentException if paper or washes differ
   */
  public static Comparison of(Judgement first, Judgement second) {
    if (!first.kit().paper().equals(second.kit().paper())
        || !first.kit().washes().equals(second.kit().washes())) {
      throw new IllegalArgumentException("lineups on different papers or washes do not compare");
    }
    Set<String> firstPaints = paints(first);
    Set<String> secondPaints = paints(second);
    return new Comparison(
        shifts(second.ring(), first.ring()),
        shifts(first.ring(), second.ring()),
        first.reach().coveredBy(second.reach()),
        second.reach().coveredBy(first.reach()),
        first.reach().samplesBeyond(second.reach(), SAMPLES),
        second.reach().samplesBeyond(first.reach(), SAMPLES),
        first.darkest(),
        second.darkest(),
        firstPaints.stream().filter(secondPaints::contains).toList(),
        firstPaints.stream().filter(id -> !secondPaints.contains(id)).toList(),
        secondPaints.stream().filter(id -> !firstPaints.contains(id)).toList(),
        lineup(first).boxId().equals(lineup(second).boxId()),
        Move.between(lineup(first), lineup(second)));
  }

  /** The arcs of hue in which one ring falls behind another, by the measure of a hue gap. */
  public static List<Shift> shifts(Ring less, Ring more) {
    double[] behind = HueArc.closed(less.toArray());
    double[] ahead = HueArc.closed(more.toArray());
    List<Shift> shifts = new ArrayList<>();
    for (HueArc arc : HueArc.missing(behind, ahead)) {
      shifts.add(new Shift(arc.fromDeg(), arc.toDeg(), arc.highest(behind), arc.highest(ahead)));
    }
    return shifts;
  }

  private static Lineup lineup(Judgement judgement) {
    return judgement.kit().lineup(judgement.lineupId()).orElseThrow();
  }

  private static Set<String> paints(Judgement judgement) {
    Kit kit = judgement.kit();
    Lineup lineup = lineup(judgement);
    return new LinkedHashSet<>(lineup.paintIds(kit.boxOf(lineup)));
  }
}
