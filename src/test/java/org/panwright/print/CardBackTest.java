package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.panwright.kit.KeptMix;
import org.panwright.kit.Kit;
import org.panwright.paint.Wash;

/** The list of a key card with its mixes, beside the card and behind it. */
class CardBackTest {
  private static final double MM = 72 / 25.4;
  private static final Kit TWELVE = CardKits.kit(CardKits.rows(2, 6, 124, 66));
  private static final CardOptions BEHIND = CardOptions.USUAL.withList(true).withTurned(true);

  @Test
  void theListTellsTheUsefulMixesByWellAndName() {
    List<String> texts = texts(CardKits.card(TWELVE, CardOptions.USUAL.withList(true)).papers());

    assertThat(texts).contains("Mixes, in parts of equal strength");
    assertThat(texts)
        .filteredOn(text -> text.matches("\\d+ \\+ \\d+: .* and .*"))
        .hasSizeBetween(6, 12);
  }

  @Test
  void chosenMixesTakeThePlaceOfTheUsefulOnes() {
    Kit kept = keeping(mix("p0", 2, "p4", 1), mix("p1", 1, "not aboard", 1));

    assertThat(texts(CardKits.card(kept, CardOptions.USUAL.withList(true)).papers()))
        .filteredOn(text -> text.matches("\\d+ \\+ .*"))
        .singleElement()
        .asString()
        .startsWith("1 + 5: 2 parts lemon yellow and 1 part ultramarine blue, milk");
  }

  @Test
  void noMixesAreShownIfNoneIsChosen() {
    assertThat(texts(CardKits.card(keeping(), CardOptions.USUAL.withList(true)).papers()))
        .doesNotContain("Mixes, in parts of equal strength");
  }

  /** Turning a sheet like a page exchanges left and right: a back lies at width − x − its width. */
  @ParameterizedTest
  @EnumSource(PaperFormat.class)
  void theBackLiesBehindItsCard(PaperFormat paper) throws IOException {
    Papers papers = CardKits.card(TWELVE, BEHIND.withPaper(paper).withCopies(2)).papers();
    papers.sheets().forEach(SheetChecks::check);
    Sheet front = papers.sheets().get(0);
    Sheet back = papers.sheets().get(1);

    assertThat(back.title()).endsWith("(back)");
    assertThat(back.widthMm()).isEqualTo(front.widthMm());
    assertThat(texts(papers))
        .anyMatch(
            text ->
                text.contains(
                    front.heightMm() >= front.widthMm()
                        ? "over its long edge"
                        : "over its short edge"));
    Area card = cutArea(front);
    Area mirrored =
        new Area(front.widthMm() - card.rightMm(), card.yMm(), card.widthMm(), card.heightMm());
    try (PDDocument pdf = Loader.loadPDF(PdfWriter.write(papers))) {
      Places places = new Places("Estuary, low water: list", 2);
      places.getText(pdf);
      double x = places.first.getXDirAdj() / MM;
      double y = places.first.getYDirAdj() / MM;
      assertThat(x).isBetween(mirrored.xMm(), mirrored.xMm() + 5);
      assertThat(y).isBetween(mirrored.yMm(), mirrored.yMm() + 8);
    }
  }

  /**
   * As seen against the light: the back turned over onto its front has no ink outside of the cards.
   * Turning a sheet like a page is turning it over its long edge if it stands (A4 with cards for
   * the lid) and over its short edge if it lies (A4 with cards of A5).
   */
  @ParameterizedTest
  @CsvSource({"LID, long", "A5, short"})
  void againstTheLightTheBackLiesWithinTheCutMarks(CardFormat format, String edge)
      throws IOException {
    KeyCard card = CardKits.card(TWELVE, BEHIND.withFormat(format).withCopies(2));
    assertThat(card.notes()).anyMatch(note -> note.contains("over its " + edge + " edge"));
    Area cut = cutArea(card.papers().sheets().get(0));
    try (PDDocument pdf = Loader.loadPDF(PdfWriter.write(card.papers()))) {
      BufferedImage back = new PDFRenderer(pdf).renderImageWithDPI(1, 50.8f, ImageType.GRAY);
      int inked = 0;
      for (int y = 2 * (int) cut.yMm(); y < back.getHeight(); y++) {
        for (int x = 0; x < back.getWidth(); x++) {
          if ((back.getRGB(x, y) & 0xFF) < 160) {
            double turnedMm = (back.getWidth() - 1 - x) / 2.0;
            assertThat(turnedMm).isBetween(cut.xMm() - 1, cut.rightMm() + 1);
            inked++;
          }
        }
      }
      assertThat(inked).as("pixels with ink").isGreaterThan(200);
    }
  }

  @Test
  void aCardTooSmallForAListOnItsBackHasItBeside() {
    KeyCard card = CardKits.card(CardKits.kit(CardKits.rows(1, 4, 70, 40)), BEHIND);

    assertThat(card.notes()).contains(org.panwright.words.CardWords.BACK_TOO_SMALL);
    assertThat(card.papers().sheets()).hasSize(1);
    SheetChecks.check(card.papers());
  }

  /** Lid 124 × 66 mm, the card 1 mm smaller both ways. */
  @Test
  void cutMarksStandAtTheCardsSize() {
    Area card = cutArea(CardKits.card(TWELVE, BEHIND).papers().sheets().get(0));

    assertThat(card.widthMm()).isEqualTo(123, offset(1e-9));
    assertThat(card.heightMm()).isEqualTo(65, offset(1e-9));
  }

  private static Kit keeping(KeptMix... mixes) {
    return TWELVE.replacing(TWELVE.lineups().get(0).withCardMixes(Optional.of(List.of(mixes))));
  }

  private static KeptMix mix(String first, double firstParts, String second, double secondParts) {
    return new KeptMix(
        List.of(new KeptMix.Part(first, firstParts), new KeptMix.Part(second, secondParts)),
        Wash.MILK,
        "");
  }

  /** The area the cut marks of the first card leave between them. */
  private static Area cutArea(Sheet sheet) {
    List<Mark.Line> cuts =
        sheet.singleMarks().stream()
            .filter(Mark.Line.class::isInstance)
            .map(Mark.Line.class::cast)
            .filter(line -> line.strokeMm() == 0.15)
            .toList();
    List<Mark.Line> first = cuts.subList(0, 8);
    double left =
        first.stream()
            .filter(l -> l.fromXMm() == l.toXMm())
            .mapToDouble(Mark.Line::toXMm)
            .min()
            .orElseThrow();
    double right =
        first.stream()
            .filter(l -> l.fromXMm() == l.toXMm())
            .mapToDouble(Mark.Line::toXMm)
            .max()
            .orElseThrow();
    double top =
        first.stream()
            .filter(l -> l.fromYMm() == l.toYMm())
            .mapToDouble(Mark.Line::toYMm)
            .min()
            .orElseThrow();
    double bottom =
        first.stream()
            .filter(l -> l.fromYMm() == l.toYMm())
            .mapToDouble(Mark.Line::toYMm)
            .max()
            .orElseThrow();
    return new Area(left, top, right - left, bottom - top);
  }

  private static List<String> texts(Papers papers) {
    List<String> texts = new ArrayList<>();
    for (Sheet sheet : papers.sheets()) {
      sheet
          .singleMarks()
          .forEach(
              mark -> {
                if (mark instanceof Mark.Text text) {
                  texts.add(text.text());
                }
              });
    }
    return texts;
  }

  /** Finds the first letter of a text on one page. */
  private static final class Places extends PDFTextStripper {
    private final String wanted;
    private TextPosition first;

    Places(String wanted, int page) {
      this.wanted = wanted;
      setStartPage(page);
      setEndPage(page);
    }

    @Override
    protected void writeString(String text, List<TextPosition> positions) throws IOException {
      if (first == null && text.contains(wanted)) {
        first = positions.get(text.indexOf(wanted));
      }
      super.writeString(text, positions);
    }
  }
}
