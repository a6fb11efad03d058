package org.panwright.analysis.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.panwright.analysis.judge.Judgement;
import org.panwright.analysis.subject.Match;
import org.panwright.analysis.subject.Recipes;
import org.panwright.kit.SubjectColour;

/**
 * How near two lineups come to one colour of a place.
 *
 * @param subject the colour
 * @param first the best recipe of the first lineup, unless it is empty
 * @param second the best recipe of the second lineup, unless it is empty
 */
public record SubjectPair(SubjectColour subject, Optional<Match> first, Optional<Match> second) {
  /**
   * The best recipes of two lineups for each colour.
   *
   * @param cancelled asked once for each paint
   * @throws java.util.concurrent.CancellationException as soon as {@code cancelled} answers true
   */
  public static List<SubjectPair> of(
      Judgement first, Judgement second, List<SubjectColour> subjects, BooleanSupplier cancelled) {
    if (subjects.isEmpty()) {
      return List.of();
    }
    Recipes ofFirst = recipes(first, cancelled);
    Recipes ofSecond = recipes(second, cancelled);
    List<SubjectPair> pairs = new ArrayList<>();
    for (SubjectColour subject : subjects) {
      pairs.add(
          new SubjectPair(
              subject,
              ofFirst.nearest(subject.lab(), 1).stream().findFirst(),
              ofSecond.nearest(subject.lab(), 1).stream().findFirst()));
    }
    return pairs;
  }

  private static Recipes recipes(Judgement judgement, BooleanSupplier cancelled) {
    List<String> paints =
        java.util.stream.IntStream.range(0, judgement.grid().size())
            .mapToObj(row -> judgement.table().ids().get(judgement.grid().paint(row)))
            .toList();
    return Recipes.of(judgement.table(), paints, judgement.kit().washes(), cancelled);
  }
}
