package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.Judge;
import org.panwright.analysis.Judgement;
import org.panwright.analysis.SubjectPair;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;
import org.panwright.store.DemoKit;
import org.panwright.store.PigmentLibraryReader;

class ComparisonPageTest {
  private static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();

  @Test
  void twoLineupsOfTheDemoGoOnOnePage() {
    Papers papers = page(PaperFormat.A4);

    assertThat(papers.sheets()).hasSize(1);
    Sheet sheet = papers.sheets().get(0);
    assertThat(sheet.singleMarks()).allMatch(mark -> sheet.area().contains(mark.bounds(), 0.02));
    assertThat(text(sheet)).contains("To do in the real box", "Put Lemon yellow into well 1.");
    assertThat(text(sheet)).contains("Put Dioxazine violet into well dab 2.");
  }

  @Test
  void everyTextIsLegibleAndNoTwoTextsCollide() {
    List<Mark.Text> texts =
        page(PaperFormat.A4).sheets().get(0).singleMarks().stream()
            .filter(Mark.Text.class::isInstance)
            .map(Mark.Text.class::cast)
            .toList();
    assertThat(texts).allMatch(text -> text.sizePt() >= TextFit.LEGIBLE_PT);
    for (int i = 0; i < texts.size(); i++) {
      for (int j = i + 1; j < texts.size(); j++) {
        assertThat(texts.get(i).bounds().overlaps(texts.get(j).bounds(), 0.4))
            .as(texts.get(i) + " and " + texts.get(j))
            .isFalse();
      }
    }
  }

  private static Papers page(PaperFormat paper) {
    Kit kit = DemoKit.read(LIBRARY);
    Judge judge = new Judge(LIBRARY);
    Judgement first = judge.judge(kit, kit.lineups().get(0).id(), () -> false);
    Judgement second = judge.judge(kit, kit.lineups().get(1).id(), () -> false);
    List<SubjectPair> pairs =
        SubjectPair.of(first, second, kit.outings().get(0).subjects(), () -> false);
    return ComparisonPage.of(
        first, second, kit.lineups().get(0).name(), kit.lineups().get(1).name(), pairs, paper);
  }

  private static String text(Sheet sheet) {
    return sheet.singleMarks().stream()
        .filter(Mark.Text.class::isInstance)
        .map(mark -> ((Mark.Text) mark).text())
        .collect(Collectors.joining(" "));
  }
}
