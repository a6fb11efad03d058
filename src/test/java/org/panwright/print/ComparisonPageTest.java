package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.analysis.compare.SubjectPair;
import org.panwright.analysis.judge.Judge;
import org.panwright.analysis.judge.Judgement;
import org.panwright.kit.Box;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.Pigment;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Shelf;
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
    noTextsCollide(page(PaperFormat.A4).sheets().get(0));
  }

  private static void noTextsCollide(Sheet sheet) {
    List<Mark.Text> texts =
        sheet.singleMarks().stream()
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

  /** Forty different paints, the last eight exchanged: as much as a large box has. */
  @Test
  void largeLineupsStayOnOnePageWithoutCollidingText() {
    Papers papers = large(40, 8, "before", "after", PaperFormat.A4);
    assertThat(papers.sheets()).hasSize(1);
    everythingFits(papers);
    assertThat(text(papers)).contains("into well 40.");
  }

  /** No paint in common: rows for all of both, and a list of moves for every well. */
  @ParameterizedTest
  @CsvSource({"24, A4", "48, A4", "48, LETTER", "24, A5", "48, A3"})
  void lineupsWithNothingInCommonLeaveNoSentenceOut(int paints, PaperFormat paper) {
    String first = "Winter mud flats at low water, before: put Quinacridone violet into well 12";
    String second = "Winter mud flats at low water with Dioxazine violet for Quinacridone violet";
    Papers papers = large(paints, paints, first, second, paper);
    everythingFits(papers);
    for (int well = 1; well <= paints; well++) {
      assertThat(text(papers)).contains("out of well " + well + ".", "into well " + well + ".");
    }
  }

  @Test
  void anEmptyLineupBesideAFullOneHasItsPage() {
    Papers papers = large(12, 0, "full", "empty", PaperFormat.A4);
    assertThat(papers.sheets()).hasSize(1);
    everythingFits(papers);
    assertThat(text(papers)).contains("none of it is left", "It mixes nothing the other cannot.");
  }

  private static void everythingFits(Papers papers) {
    for (Sheet sheet : papers.sheets()) {
      assertThat(sheet.singleMarks()).allMatch(mark -> sheet.area().contains(mark.bounds(), 0.02));
      noTextsCollide(sheet);
    }
  }

  /**
   * So many paints on one side, of which the last {@code exchanged} are others on the other side;
   * with 0 the other side is empty.
   */
  private static Papers large(
      int count, int exchanged, String firstName, String secondName, PaperFormat paper) {
    List<Paint> shelf = new ArrayList<>();
    List<Well> wells = new ArrayList<>();
    Map<String, Filling> before = new LinkedHashMap<>();
    Map<String, Filling> after = new LinkedHashMap<>();
    Paint pattern = DemoKit.read(LIBRARY).shelf().paints().get(0);
    for (int i = 0; i < count + exchanged; i++) {
      Pigment pigment = LIBRARY.pigments().get(i % LIBRARY.pigments().size());
      shelf.add(
          new Paint(
              "p" + i,
              pigment.commonName(),
              "",
              List.of(new PigmentShare(pigment.name(), 1)),
              pattern.handling(),
              Ownership.OWNED,
              Optional.empty(),
              ""));
    }
    for (int i = 0; i < count; i++) {
      String id = "w" + i;
      wells.add(new Well(id, "" + (i + 1), WellKind.HALF_PAN, i % 10 * 18, i / 10 * 21, 17, 20));
      before.put(id, new Filling("p" + i, Fill.FULL));
      if (exchanged > 0) {
        after.put(id, new Filling("p" + (i < count - exchanged ? i : i + exchanged), Fill.FULL));
      }
    }
    Kit kit =
        Kit.empty("large")
            .withShelf(new Shelf(shelf))
            .withBoxes(
                List.of(new Box("box", "box", 180, 110, 180, 110, wells)),
                List.of(
                    new Lineup("before", "before", "box", before),
                    new Lineup("after", "after", "box", after)));
    Judge judge = new Judge(LIBRARY);
    return ComparisonPage.of(
        judge.judge(kit, "before", () -> false),
        judge.judge(kit, "after", () -> false),
        firstName,
        secondName,
        List.of(),
        paper);
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

  private static String text(Papers papers) {
    return papers.sheets().stream().map(ComparisonPageTest::text).collect(Collectors.joining(" "));
  }

  private static String text(Sheet sheet) {
    return sheet.singleMarks().stream()
        .filter(Mark.Text.class::isInstance)
        .map(mark -> ((Mark.Text) mark).text())
        .collect(Collectors.joining(" "));
  }
}
