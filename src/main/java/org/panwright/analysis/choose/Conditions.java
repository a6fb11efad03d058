package org.panwright.analysis.choose;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.panwright.analysis.balance.HueGroup;
import org.panwright.kit.LineupWishes;
import org.panwright.kit.PaintRules;
import org.panwright.kit.SubjectColour;
import org.panwright.kit.Weights;

/**
 * What a painter asks of a lineup to be proposed.
 *
 * @param wells paints in pans
 * @param dabs paints as dabs; wells and dabs together 0..60
 * @param must ids of paints that have to be in, those kept where they are among them
 * @param never ids of paints that must not be in
 * @param rules what every paint has to keep to
 * @param mostOfAGroup at most so many paints of one {@link HueGroup}, if limited; at least 1
 * @param weights what counts how much
 * @param subjects colours of a place to be met, none or more
 */
public record Conditions(
    int wells,
    int dabs,
    Set<String> must,
    Set<String> never,
    PaintRules rules,
    Optional<Integer> mostOfAGroup,
    Weights weights,
    List<SubjectColour> subjects) {
  /** Most wells and dabs together. */
  public static final int MOST = LineupWishes.MOST;

  public Conditions {
    must = Set.copyOf(must);
    never = Set.copyOf(never);
    subjects = List.copyOf(subjects);
    Objects.requireNonNull(rules, "rules");
    Objects.requireNonNull(weights, "weights");
    LineupWishes.check(wells, dabs, mostOfAGroup);
  }

  /** So many wells and dabs from what is at hand, and nothing else asked. */
  public static Conditions of(int wells, int dabs) {
    return new Conditions(
        wells,
        dabs,
        Set.of(),
        Set.of(),
        PaintRules.AT_HAND,
        Optional.empty(),
        Weights.USUAL,
        List.of());
  }

  /** How many paints in all. */
  public int places() {
    return wells + dabs;
  }

  /** The same with other paints that have to be in. */
  public Conditions withMust(Set<String> changed) {
    return new Conditions(wells, dabs, changed, never, rules, mostOfAGroup, weights, subjects);
  }

  /** The same with other paints that must not be in. */
  public Conditions withNever(Set<String> changed) {
    return new Conditions(wells, dabs, must, changed, rules, mostOfAGroup, weights, subjects);
  }

  /** The same with other rules. */
  public Conditions withRules(PaintRules changed) {
    return new Conditions(wells, dabs, must, never, changed, mostOfAGroup, weights, subjects);
  }

  /** The same with another limit on each hue group. */
  public Conditions withMostOfAGroup(Optional<Integer> changed) {
    return new Conditions(wells, dabs, must, never, rules, changed, weights, subjects);
  }

  /** The same with other weights. */
  public Conditions withWeights(Weights changed) {
    return new Conditions(wells, dabs, must, never, rules, mostOfAGroup, changed, subjects);
  }

  /** The same with other colours to be met. */
  public Conditions withSubjects(List<SubjectColour> changed) {
    return new Conditions(wells, dabs, must, never, rules, mostOfAGroup, weights, changed);
  }
}
