package org.panwright.analysis.finding;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.panwright.analysis.mud.PairMud;
import org.panwright.kit.Edit;

/**
 * The pairs of a lineup that lose most chroma without making a useful grey.
 *
 * @param pairs the worst, worst first, at least one
 * @param count how many such pairs there are in all
 * @param lost what all of them lose together, in shares of a pair's chroma
 * @param greys pairs that neutralise each other, darkest first, for contrast
 * @param remedy the exchange that takes most of it away, if one does
 */
public record MuddyPairs(
    List<PairMud> pairs, int count, double lost, List<PairMud> greys, Optional<Remedy> remedy)
    implements Finding {
  /** A pair that loses this share of its chroma, on average over the ratios, is worth naming. */
  public static final double LOSS_FROM = 0.5;

  public MuddyPairs {
    pairs = List.copyOf(pairs);
    greys = List.copyOf(greys);
  }

  /** The same finding with the remedy that was found for it. */
  public MuddyPairs with(Optional<Remedy> found) {
    return new MuddyPairs(pairs, count, lost, greys, found);
  }

  @Override
  public FindingKind kind() {
    return FindingKind.MUDDY_PAIRS;
  }

  @Override
  public String about() {
    return "";
  }

  @Override
  public List<String> paintIds() {
    return pairs.stream()
        .flatMap(pair -> Stream.of(pair.firstPaintId(), pair.secondPaintId()))
        .distinct()
        .toList();
  }

  /** A remark. */
  @Override
  public double severity() {
    return 0.07;
  }

  @Override
  public double extent() {
    return lost;
  }

  @Override
  public Optional<Edit> cure() {
    return remedy.map(Remedy::edit);
  }
}
