package org.panwright.command;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.panwright.analysis.compare.Comparison;
import org.panwright.analysis.compare.SubjectPair;
import org.panwright.analysis.judge.Judge;
import org.panwright.analysis.judge.Judgement;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.SubjectColour;
import org.panwright.paint.PigmentLibrary;
import org.panwright.store.FileProblemException;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.words.CommandWords;
import org.panwright.words.ComparisonWords;

/** {@code compare KIT LINEUP LINEUP [--json]}: two lineups of a kit side by side. */
final class Compare implements Command {
  private static final String NAME = "compare";

  @Override
  public void run(List<String> words, PrintStream out, PrintStream err)
      throws BadUseException, FileProblemException {
    Arguments arguments = Arguments.of(NAME, words, Set.of("json"), Set.of());
    List<String> plain = arguments.plain();
    if (plain.size() != 3) {
      throw new BadUseException(CommandWords.compareWantsTwo(plain.size()));
    }
    PigmentLibrary library = PigmentLibraryReader.read();
    Kit kit = OpenKit.at(plain.get(0), library, err);
    Lineup first = NamedLineup.in(kit, plain.get(1));
    Lineup second = NamedLineup.in(kit, plain.get(2));
    Judge judge = new Judge(library);
    Judgement ofFirst = judge.judge(kit, first.id(), () -> false);
    Judgement ofSecond = judge.judge(kit, second.id(), () -> false);
    List<SubjectColour> subjects =
        kit.outings().stream().flatMap(outing -> outing.subjects().stream()).toList();
    List<SubjectPair> pairs = SubjectPair.of(ofFirst, ofSecond, subjects, () -> false);
    out.println(
        arguments.has("json")
            ? Json.text(ComparisonJson.of(ofFirst, ofSecond, pairs))
            : text(ofFirst, ofSecond, pairs, first, second));
  }

  private static String text(
      Judgement ofFirst, Judgement ofSecond, List<SubjectPair> pairs, Lineup first, Lineup second) {
    Kit kit = ofFirst.kit();
    Comparison comparison = Comparison.of(ofFirst, ofSecond);
    List<String> lines = new ArrayList<>();
    lines.add(ComparisonWords.heading(first.name(), second.name()));
    lines.addAll(ComparisonWords.paints(comparison, kit, first.name(), second.name()));
    lines.addAll(ComparisonWords.hues(comparison));
    lines.add(ComparisonWords.reach(comparison, first.name(), second.name()));
    lines.add(ComparisonWords.darks(comparison, first.name(), second.name()));
    lines.addAll(ComparisonWords.subjects(pairs, ofFirst, ofSecond, first.name(), second.name()));
    lines.addAll(ComparisonWords.cautions(ofFirst, ofSecond, first.name(), second.name()));
    lines.addAll(ComparisonWords.moves(comparison, kit, kit.boxOf(first)));
    return String.join("\n", lines);
  }
}
