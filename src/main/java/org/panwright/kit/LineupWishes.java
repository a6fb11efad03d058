package org.panwright.kit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What the painter asks of the lineups to be proposed in place of this one.
 *
 * <p>Names of paints and outings that are not in the kit count for nothing; they are kept, because
 * what is taken away may come back by undo.
 *
 * @param wells paints in pans
 * @param dabs paints as dabs; wells and dabs together 0..60
 * @param paints what is said of single paints, by id; the others are free
 * @param rules what every paint has to keep to
 * @param mostOfAGroup at most so many paints of one hue group, if limited; at least 1
 * @param weights what counts how much
 * @param outingId the outing whose subject colours are to be met
 */
public record LineupWishes(
    int wells,
    int dabs,
    Map<String, PaintWish> paints,
    PaintRules rules,
    Optional<Integer> mostOfAGroup,
    Weights weights,
    Optional<String> outingId) {
  /** Most wells and dabs together. */
  public static final int MOST = 60;

  public LineupWishes {
    Map<String, PaintWish> said = new LinkedHashMap<>(paints);
    said.values().removeIf(PaintWish.FREE::equals);
    paints = Collections.unmodifiableMap(said);
    Objects.requireNonNull(rules, "rules");
    Objects.requireNonNull(weights, "weights");
    Objects.requireNonNull(outingId, "outingId");
    check(wells, dabs, mostOfAGroup);
  }

  /**
   * Checks how many paints are asked for.
   *
   * @throws IllegalArgumentException if the places do not lie in 0..60 or a group's limit is below
   *     1
   */
  public static void check(int wells, int dabs, Optional<Integer> mostOfAGroup) {
    if (!(wells >= 0 && dabs >= 0 && (long) wells + dabs <= MOST)) {
      throw new IllegalArgumentException(
          "wells and dabs together lie in 0..60, were %d and %d".formatted(wells, dabs));
    }
    if (mostOfAGroup.isPresent() && mostOfAGroup.get() < 1) {
      throw new IllegalArgumentException(
          "at most of a group must be 1 or more, was " + mostOfAGroup.get());
    }
  }

  /** So many wells and dabs from what is at hand, and nothing else asked. */
  public static LineupWishes of(int wells, int dabs) {
    return new LineupWishes(
        wells,
        dabs,
        Map.of(),
        PaintRules.AT_HAND,
        Optional.empty(),
        Weights.USUAL,
        Optional.empty());
  }

  /** What is said of a paint. */
  public PaintWish of(String paintId) {
    return paints.getOrDefault(paintId, PaintWish.FREE);
  }

  /** The same for other numbers of paints. */
  public LineupWishes withPlaces(int changedWells, int changedDabs) {
    return new LineupWishes(
        changedWells, changedDabs, paints, rules, mostOfAGroup, weights, outingId);
  }

  /** The same with something else said of one paint. */
  public LineupWishes with(String paintId, PaintWish wish) {
    Map<String, PaintWish> changed = new LinkedHashMap<>(paints);
    changed.put(paintId, wish);
    return new LineupWishes(wells, dabs, changed, rules, mostOfAGroup, weights, outingId);
  }

  /** The same with other rules. */
  public LineupWishes withRules(PaintRules changed) {
    return new LineupWishes(wells, dabs, paints, changed, mostOfAGroup, weights, outingId);
  }

  /** The same with another limit on each hue group. */
  public LineupWishes withMostOfAGroup(Optional<Integer> changed) {
    return new LineupWishes(wells, dabs, paints, rules, changed, weights, outingId);
  }

  /** The same with other weights. */
  public LineupWishes withWeights(Weights changed) {
    return new LineupWishes(wells, dabs, paints, rules, mostOfAGroup, changed, outingId);
  }

  /** The same for the colours of another outing, or of none. */
  public LineupWishes withOuting(Optional<String> changed) {
    return new LineupWishes(wells, dabs, paints, rules, mostOfAGroup, weights, changed);
  }
}
