package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.panwright.kit.Kit;
import org.panwright.kit.Outing;
import org.panwright.store.DemoKit;

/** Fill plan and packing list: lines to tick. */
class ListPapersTest {
  private static final double MM = 72 / 25.4;
  private static final Kit DEMO = DemoKit.read(CardKits.LIBRARY);
  private static final Outing OUTING = DEMO.outings().get(0);

  @Test
  void thePackingListHasABoxForEachThingAndTicksThoseThatAreTicked() {
    Papers papers = made(PackingOptions.USUAL).papers().orElseThrow();
    List<Mark> marks = marks(papers);
    int things = OUTING.checklist().orElseThrow().size();
    long ticked = OUTING.checklist().orElseThrow().stream().filter(i -> i.ticked()).count();

    assertThat(papers.title()).isEqualTo("Packing list: " + OUTING.name());
    assertThat(marks.stream().filter(Mark.Rectangle.class::isInstance)).hasSize(things);
    assertThat(marks.stream().filter(m -> m instanceof Mark.Line l && l.strokeMm() == 0.35))
        .hasSize((int) (2 * ticked));
    SheetChecks.check(papers);
  }

  @Test
  void cautionsForRinseWaterStandOnThePackingList() {
    assertThat(text(made(PackingOptions.USUAL).papers().orElseThrow()))
        .contains("Carry the rinse water home", "local rules", "safety sheet");
  }

  @Test
  void theFillPlanHasABoxForEachLayer() {
    Papers papers = made(FillPlanOptions.USUAL).papers().orElseThrow();

    assertThat(text(papers)).contains("layers of").contains("Out of the tubes").contains("To buy");
    assertThat(marks(papers).stream().filter(Mark.Rectangle.class::isInstance))
        .hasSizeGreaterThan(14);
    SheetChecks.check(papers);
  }

  @Test
  void aFillPlanOfEveryBoxHasAHeadingForEach() {
    Papers all = made(FillPlanOptions.USUAL.withEveryBox(true)).papers().orElseThrow();

    assertThat(all.title()).isEqualTo("Fill plan: " + DEMO.name());
    assertThat(text(all)).contains("Quay in May, for ").contains("Six for the pocket, for ");
    assertThat(text(made(FillPlanOptions.USUAL).papers().orElseThrow()))
        .doesNotContain("Six for the pocket");
    SheetChecks.check(all);
  }

  @Test
  void withoutAnOutingThereIsNoPackingListButAReason() {
    Kit bare = CardKits.kit(CardKits.rows(1, 6, 104, 45));
    Made made =
        Made.of(
            PackingOptions.USUAL,
            new Occasion(bare, CardKits.LINEUP, Optional.empty(), CardKits.LIBRARY, CardKits.DATE));

    assertThat(made.papers()).isEmpty();
    assertThat(made.notes().get(0)).contains("No outing takes this lineup along");
  }

  @Test
  void aSingleLineupIsComparedWithNothing() {
    Kit bare = CardKits.kit(CardKits.rows(1, 6, 104, 45));
    Made made =
        Made.of(
            ComparisonOptions.USUAL,
            new Occasion(bare, CardKits.LINEUP, Optional.empty(), CardKits.LIBRARY, CardKits.DATE));

    assertThat(made.papers()).isEmpty();
    assertThat(made.notes().get(0)).contains("only one lineup");
  }

  @Test
  void aSwatchSheetOnAPaperThatCannotBeReadIsRefused() {
    assertThat(made(SwatchSheetOptions.USUAL.withPaper(PaperFormat.A3)).papers()).isEmpty();
    assertThat(made(SwatchSheetOptions.USUAL.withPaper(PaperFormat.A5)).papers()).isPresent();
  }

  /** The first line stands in the upper left corner of the room below the strip. */
  @Test
  void linesStandWhereTheyAreMarked() throws IOException {
    Papers papers = made(PackingOptions.USUAL).papers().orElseThrow();
    Mark.Text wanted =
        marks(papers).stream()
            .filter(Mark.Text.class::isInstance)
            .map(Mark.Text.class::cast)
            .filter(text -> text.text().equals("To pack"))
            .findFirst()
            .orElseThrow();
    assertThat(wanted.xMm()).isEqualTo(8, offset(1e-9));

    try (PDDocument pdf = Loader.loadPDF(PdfWriter.write(papers))) {
      List<TextPosition> found = new ArrayList<>();
      new PDFTextStripper() {
        @Override
        protected void writeString(String text, List<TextPosition> positions) {
          if (found.isEmpty() && text.contains("To pack")) {
            found.add(positions.get(text.indexOf("To pack")));
          }
        }
      }.getText(pdf);
      assertThat(found.get(0).getXDirAdj() / MM).isEqualTo(8, offset(0.01));
      assertThat(found.get(0).getYDirAdj() / MM).isEqualTo(wanted.baselineMm(), offset(0.01));
    }
  }

  private static Made made(PaperOrder order) {
    return Made.of(
        order,
        new Occasion(
            DEMO,
            OUTING.lineupId().orElseThrow(),
            Optional.of(OUTING),
            CardKits.LIBRARY,
            CardKits.DATE));
  }

  private static List<Mark> marks(Papers papers) {
    return papers.sheets().stream().flatMap(sheet -> sheet.singleMarks().stream()).toList();
  }

  private static String text(Papers papers) {
    StringBuilder text = new StringBuilder();
    marks(papers)
        .forEach(
            mark -> {
              if (mark instanceof Mark.Text line) {
                text.append(line.text()).append(' ');
              }
            });
    return text.toString();
  }
}
