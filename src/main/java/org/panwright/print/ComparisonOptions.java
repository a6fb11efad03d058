package org.panwright.print;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.panwright.analysis.compare.SubjectPair;
import org.panwright.analysis.judge.Judge;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.SubjectColour;
import org.panwright.words.PaperWords;

/**
 * What the painter chooses about a comparison page.
 *
 * @param paper what it is printed on
 * @param otherId the lineup compared with; empty, or no longer there, for the next one in the kit
 */
public record ComparisonOptions(PaperFormat paper, Optional<String> otherId) implements PaperOrder {
  /** With the next lineup, on A4. */
  public static final ComparisonOptions USUAL =
      new ComparisonOptions(PaperFormat.A4, Optional.empty());

  public ComparisonOptions {
    Objects.requireNonNull(paper, "paper");
  }

  @Override
  public PaperKind kind() {
    return PaperKind.COMPARISON;
  }

  @Override
  public ComparisonOptions withPaper(PaperFormat changed) {
    return new ComparisonOptions(changed, otherId);
  }

  /** The same with another lineup to compare with. */
  public ComparisonOptions withOtherId(Optional<String> changed) {
    return new ComparisonOptions(paper, changed);
  }

  @Override
  public Made make(Occasion occasion) {
    Kit kit = occasion.kit();
    Optional<Lineup> other = other(occasion);
    if (other.isEmpty()) {
      return Made.nothing(PaperWords.ONE_LINEUP);
    }
    Judge judge = new Judge(occasion.library());
    var first = judge.judge(kit, occasion.lineupId(), () -> false);
    var second = judge.judge(kit, other.get().id(), () -> false);
    List<SubjectColour> subjects =
        occasion.outing().map(outing -> outing.subjects()).orElse(List.of());
    return Made.of(
        ComparisonPage.of(
            first,
            second,
            occasion.lineup().name(),
            other.get().name(),
            SubjectPair.of(first, second, subjects, () -> false),
            paper));
  }

  private Optional<Lineup> other(Occasion occasion) {
    List<Lineup> others =
        occasion.kit().lineups().stream()
            .filter(lineup -> !lineup.id().equals(occasion.lineupId()))
            .toList();
    return others.stream()
        .filter(lineup -> otherId.equals(Optional.of(lineup.id())))
        .findFirst()
        .or(() -> others.stream().findFirst());
  }
}
