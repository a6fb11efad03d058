package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.colour.Srgb;

class PdfWriterTest {
  private static final double MM = 72 / 25.4;
  private static final double PT_TOLERANCE = 0.01;
  private static final Papers CARD =
      CardKits.card(CardKits.kit(CardKits.rows(2, 6, 124, 66), "w11"), CardOptions.USUAL).papers();

  @Test
  void samePapersMakeTheSameBytes() {
    Papers again =
        CardKits.card(CardKits.kit(CardKits.rows(2, 6, 124, 66), "w11"), CardOptions.USUAL)
            .papers();

    assertThat(PdfWriter.write(again)).isEqualTo(PdfWriter.write(CARD));
  }

  @Test
  void titleLanguageAndTrueSizeAreDeclaredAndNoDate() throws IOException {
    try (PDDocument document = Loader.loadPDF(PdfWriter.write(CARD))) {
      assertThat(document.getDocumentInformation().getTitle())
          .isEqualTo("Key card: Estuary, low water");
      assertThat(document.getDocumentInformation().getCreationDate()).isNull();
      assertThat(document.getDocumentInformation().getModificationDate()).isNull();
      assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-GB");
      assertThat(document.getDocumentCatalog().getOutputIntents())
          .extracting(intent -> intent.getOutputConditionIdentifier())
          .containsExactly("sRGB IEC61966-2.1");
      assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
          .isEqualTo(PDViewerPreferences.PRINT_SCALING.None.name());
    }
  }

  @Test
  void everyFontIsEmbedded() throws IOException {
    try (PDDocument document = Loader.loadPDF(PdfWriter.write(CARD))) {
      List<String> names = new ArrayList<>();
      for (COSName name : document.getPage(0).getResources().getFontNames()) {
        PDFont font = document.getPage(0).getResources().getFont(name);
        assertThat(font.isEmbedded()).as(font.getName()).isTrue();
        names.add(font.getName());
      }
      assertThat(names)
          .hasSize(2)
          .anyMatch(name -> name.endsWith("+LiberationSans"))
          .anyMatch(name -> name.endsWith("+LiberationSans-Bold"));
    }
  }

  /** ISO 216 and the North American sizes (ANSI/ASME Y14.1), in points of 1/72 inch. */
  @ParameterizedTest(name = "{0}")
  @EnumSource(PaperFormat.class)
  void pagesHaveTheExactSizeOfTheirPaper(PaperFormat paper) throws IOException {
    double[] mm =
        switch (paper) {
          case A3 -> new double[] {297, 420};
          case A4 -> new double[] {210, 297};
          case A5 -> new double[] {148, 210};
          case LETTER -> new double[] {8.5 * 25.4, 11 * 25.4};
          case LEGAL -> new double[] {8.5 * 25.4, 14 * 25.4};
          case TABLOID -> new double[] {11 * 25.4, 17 * 25.4};
        };
    Papers papers =
        CardKits.card(CardKits.kit(CardKits.rows(1, 6, 80, 50)), CardOptions.USUAL.withPaper(paper))
            .papers();
    try (PDDocument document = Loader.loadPDF(PdfWriter.write(papers))) {
      PDPage page = document.getPage(0);
      List<Double> sides =
          List.of((double) page.getMediaBox().getWidth(), (double) page.getMediaBox().getHeight());
      assertThat(sides.stream().mapToDouble(d -> d).min().orElseThrow())
          .isEqualTo(mm[0] * MM, offset(PT_TOLERANCE));
      assertThat(sides.stream().mapToDouble(d -> d).max().orElseThrow())
          .isEqualTo(mm[1] * MM, offset(PT_TOLERANCE));
    }
  }

  @Test
  void theRulerMeasuresFiftyMillimetresInThePageStream() throws IOException {
    try (PDDocument document = Loader.loadPDF(PdfWriter.write(CARD))) {
      Strokes strokes = new Strokes(document.getPage(0));
      strokes.processPage(document.getPage(0));

      List<Double> levels =
          strokes.lines.stream()
              .filter(line -> Math.abs(line[1] - line[3]) < 1e-6)
              .map(line -> Math.abs(line[2] - line[0]) / MM)
              .toList();
      assertThat(levels).anySatisfy(mm -> assertThat(mm).isEqualTo(50, offset(0.0005)));
      List<Double> ticks =
          strokes.lines.stream()
              .filter(line -> Math.abs(line[0] - line[2]) < 1e-6)
              .filter(line -> Math.abs(Math.abs(line[3] - line[1]) / MM - 3) < 1e-3)
              .map(line -> line[0] / MM)
              .sorted()
              .toList();
      assertThat(ticks).hasSize(6);
      for (int i = 1; i < ticks.size(); i++) {
        assertThat(ticks.get(i) - ticks.get(i - 1)).isEqualTo(10, offset(0.0005));
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"yellow ochre", "office fluff", "AVATAR Te", "PB15:3 + PV19"})
  void textStandsAtItsPlaceAndIsAsLongAsMeasured(String text) throws IOException {
    for (Typeface face : Typeface.values()) {
      Mark.Text mark = new Mark.Text(face, 9, 30, 40, false, Ink.BLACK, text);
      byte[] pdf =
          PdfWriter.write(new Papers("t", List.of(new Sheet("t", 100, 100, List.of(mark)))));

      try (PDDocument document = Loader.loadPDF(pdf)) {
        Places places = new Places(text);
        places.getText(document);

        assertThat(places.first.getXDirAdj() / MM).isEqualTo(30, offset(0.01));
        assertThat(places.first.getYDirAdj() / MM).isEqualTo(40, offset(0.01));
        double end = places.last.getXDirAdj() + places.last.getWidthDirAdj();
        assertThat(end / MM).isEqualTo(mark.bounds().rightMm(), offset(0.02));
      }
    }
  }

  @Test
  void accentsGreekHebrewAndLigatureLettersComeBackWhole() throws IOException {
    List<String> texts =
        List.of("terre d'ombre brûlée", "μπλε του κοβαλτίου", "office fluff", "כחול ים");
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      marks.add(
          new Mark.Text(Typeface.REGULAR, 10, 20, 20 + 10 * i, false, Ink.BLACK, texts.get(i)));
    }
    byte[] pdf = PdfWriter.write(new Papers("words", List.of(new Sheet("words", 100, 100, marks))));

    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      assertThat(stripper.getText(document).lines().map(String::strip))
          .containsExactlyElementsOf(texts);
    }
  }

  @Test
  void aTextRunningUpwardsIsTurned() throws IOException {
    Mark text = new Mark.Text(Typeface.REGULAR, 10, 30, 80, true, Ink.BLACK, "upwards");
    byte[] pdf = PdfWriter.write(new Papers("t", List.of(new Sheet("t", 100, 100, List.of(text)))));

    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<TextPosition> letters = new ArrayList<>();
      new PDFTextStripper() {
        @Override
        protected void processTextPosition(TextPosition letter) {
          letters.add(letter);
        }
      }.getText(document);

      TextPosition first = letters.get(0);
      TextPosition last = letters.get(letters.size() - 1);
      assertThat(letters).hasSize("upwards".length());
      assertThat(first.getTextMatrix().getTranslateX() / MM).isEqualTo(30, offset(0.01));
      assertThat(first.getTextMatrix().getTranslateY() / MM).isEqualTo(20, offset(0.01));
      assertThat(last.getTextMatrix().getTranslateX() / MM).isEqualTo(30, offset(0.01));
      assertThat(last.getTextMatrix().getTranslateY() / MM).isGreaterThan(30);
    }
  }

  @Test
  void swatchesShowTheirColoursFromLeftToRight() throws IOException {
    List<Mark> marks =
        List.of(
            new Mark.Swatch(
                new Area(10, 10, 60, 20),
                List.of(Srgb.ofBytes(200, 40, 30), Srgb.ofBytes(100, 90, 80), Ink.WHITE)),
            new Mark.Swatch(new Area(10, 40, 60, 20), List.of(Srgb.ofBytes(12, 120, 200))),
            new Mark.Rectangle(
                new Area(10, 70, 60, 20), 3, 0.2, Ink.BLACK, false, Optional.of(Ink.FAINT)));
    byte[] pdf = PdfWriter.write(new Papers("s", List.of(new Sheet("s", 100, 100, marks))));

    try (PDDocument document = Loader.loadPDF(pdf)) {
      BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 254, ImageType.RGB);

      assertThat(page.getWidth()).isBetween(999, 1001);
      assertColour(page, 102, 200, Srgb.ofBytes(200, 40, 30));
      assertColour(page, 400, 200, Srgb.ofBytes(100, 90, 80));
      assertColour(page, 400, 500, Srgb.ofBytes(12, 120, 200));
      assertColour(page, 400, 800, Ink.FAINT);
      assertColour(page, 900, 900, Ink.WHITE);
    }
  }

  @Test
  void severalSheetsHaveBookmarks() throws IOException {
    Papers papers =
        new Papers(
            "two",
            List.of(
                new Sheet("first", 100, 100, List.of()), new Sheet("second", 100, 100, List.of())));

    try (PDDocument document = Loader.loadPDF(PdfWriter.write(papers))) {
      List<String> titles = new ArrayList<>();
      document
          .getDocumentCatalog()
          .getDocumentOutline()
          .children()
          .forEach(item -> titles.add(item.getTitle()));
      assertThat(titles).containsExactly("first", "second");
    }
  }

  private static void assertColour(BufferedImage page, int x, int y, Srgb wanted) {
    int rgb = page.getRGB(x, y);
    assertThat(rgb >> 16 & 0xff).isCloseTo(wanted.redByte(), offset(4));
    assertThat(rgb >> 8 & 0xff).isCloseTo(wanted.greenByte(), offset(4));
    assertThat(rgb & 0xff).isCloseTo(wanted.blueByte(), offset(4));
  }

  /** Finds the first and last letter of a line of text. */
  private static final class Places extends PDFTextStripper {
    private final String wanted;
    private TextPosition first;
    private TextPosition last;

    Places(String wanted) {
      this.wanted = wanted;
    }

    @Override
    protected void writeString(String text, List<TextPosition> positions) throws IOException {
      int at = text.indexOf(wanted);
      if (at >= 0) {
        first = positions.get(at);
        last = positions.get(at + wanted.length() - 1);
      }
      super.writeString(text, positions);
    }
  }

  /** Gathers stroked lines, in points. */
  private static final class Strokes extends PDFGraphicsStreamEngine {
    private final List<double[]> lines = new ArrayList<>();
    private Point2D.Float at = new Point2D.Float();

    Strokes(PDPage page) {
      super(page);
    }

    @Override
    public void moveTo(float x, float y) {
      at = new Point2D.Float(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
      lines.add(new double[] {at.x, at.y, x, y});
      at = new Point2D.Float(x, y);
    }

    @Override
    public Point2D getCurrentPoint() {
      return at;
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
      at = new Point2D.Float(x3, y3);
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {}

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void clip(int windingRule) {}

    @Override
    public void closePath() {}

    @Override
    public void endPath() {}

    @Override
    public void strokePath() {}

    @Override
    public void fillPath(int windingRule) {}

    @Override
    public void fillAndStrokePath(int windingRule) {}

    @Override
    public void shadingFill(COSName shadingName) {}
  }
}
