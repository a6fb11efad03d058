package org.panwright.analysis.choose;

import java.util.List;

/**
 * The lineups proposed for some conditions.
 *
 * @param proposals the best found first, each of the others the best found that differs from all
 *     before it in at least {@code apart} paints; empty only if the conditions contradict each
 *     other
 * @param apart in how many paints proposals differ at least
 * @param allowed how many paints keep to the conditions
 * @param considered how many of them were looked at
 * @param lineups how many lineups these make, a limit on hue groups aside
 * @param contradictions what stands in the way, if anything does
 */
public record Choice(
    List<Proposal> proposals,
    int apart,
    int allowed,
    int considered,
    double lineups,
    List<Contradiction> contradictions) {
  public Choice {
    proposals = List.copyOf(proposals);
    contradictions = List.copyOf(contradictions);
  }
}
