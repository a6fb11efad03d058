package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.junit.jupiter.api.Test;

/** The structure of the PDF as ISO 32000-1:2008, 14.7 and 14.8, asks for it. */
class TaggedPdfTest {
  private static final Papers CARD =
      CardKits.card(
              CardKits.kit(CardKits.rows(2, 6, 124, 66), "w11"), CardOptions.USUAL.withList(true))
          .papers();

  /** 14.8.1: a tagged PDF says that it is marked and has a language and a title to display. */
  @Test
  void theDocumentSaysThatItIsTagged() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(PdfWriter.write(CARD))) {
      assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
      assertThat(pdf.getDocumentCatalog().getLanguage()).isNotBlank();
      assertThat(pdf.getDocumentCatalog().getViewerPreferences().displayDocTitle()).isTrue();
      assertThat(pdf.getPage(0).getCOSObject().getCOSName(COSName.getPDFName("Tabs")))
          .isEqualTo(COSName.S);
    }
  }

  @Test
  void aDocumentHasASectionForEachPaperUnderItsTitle() throws IOException {
    Papers chart =
        MixingChart.of(
            CardKits.kit(CardKits.rows(2, 6, 124, 66)),
            CardKits.LINEUP,
            CardKits.LIBRARY,
            ChartOptions.USUAL);
    try (PDDocument pdf =
        Loader.loadPDF(PdfWriter.write(new Bundle("both", List.of(CARD, chart))))) {
      PDStructureElement document =
          (PDStructureElement)
              pdf.getDocumentCatalog().getStructureTreeRoot().getKids().iterator().next();

      assertThat(document.getStructureType()).isEqualTo("Document");
      List<PDStructureElement> sections = kids(document);
      assertThat(sections).extracting(PDStructureElement::getStructureType).containsOnly("Sect");
      assertThat(sections)
          .extracting(PDStructureElement::getTitle)
          .containsExactly(CARD.title(), chart.title());
      assertThat(sections)
          .allSatisfy(
              section ->
                  assertThat(kids(section).get(0).getStructureType())
                      .as("first kid")
                      .isEqualTo("H1"));
      assertThat(pdf.getDocumentCatalog().getDocumentOutline().children())
          .extracting(item -> item.getTitle())
          .containsExactly(CARD.title(), chart.title());
    }
  }

  /** 14.9.3: a figure has an alternate description. */
  @Test
  void everyFigureHasWords() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(PdfWriter.write(CARD))) {
      List<PDStructureElement> figures =
          all(pdf.getDocumentCatalog().getStructureTreeRoot()).stream()
              .filter(element -> element.getStructureType().equals("Figure"))
              .toList();

      assertThat(figures).hasSizeGreaterThanOrEqualTo(11);
      assertThat(figures)
          .allSatisfy(figure -> assertThat(figure.getAlternateDescription()).isNotBlank());
      assertThat(figures)
          .anySatisfy(
              figure ->
                  assertThat(figure.getAlternateDescription()).contains("ultramarine", "blue"));
    }
  }

  /** 14.8.2.2: all content is marked, as part of the structure or as an artifact. */
  @Test
  void nothingIsDrawnOutsideOfMarkedContent() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(PdfWriter.write(CARD))) {
      for (PDPage page : pdf.getPages()) {
        int depth = 0;
        int drawn = 0;
        for (Object token : new PDFStreamParser(page).parse()) {
          if (token instanceof Operator operator) {
            switch (operator.getName()) {
              case "BDC", "BMC" -> depth++;
              case "EMC" -> depth--;
              case "Tj", "TJ", "S", "f", "B", "sh" -> {
                drawn++;
                assertThat(depth).as(operator.getName()).isEqualTo(1);
              }
              default -> {}
            }
          }
        }
        assertThat(depth).isZero();
        assertThat(drawn).isPositive();
      }
    }
  }

  /** 14.7.4.4: the parent tree leads from each marked content to the element that holds it. */
  @Test
  void theParentTreeKnowsTheOwnerOfEachContent() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(PdfWriter.write(CARD))) {
      COSArray numbers =
          pdf.getDocumentCatalog()
              .getStructureTreeRoot()
              .getCOSObject()
              .getCOSDictionary(COSName.PARENT_TREE)
              .getCOSArray(COSName.NUMS);
      for (int i = 0; i < pdf.getNumberOfPages(); i++) {
        assertThat(numbers.getInt(2 * i)).isEqualTo(pdf.getPage(i).getStructParents());
        COSArray owners = (COSArray) numbers.getObject(2 * i + 1);
        assertThat(owners.size()).isEqualTo(markedContents(pdf.getPage(i)));
        for (int id = 0; id < owners.size(); id++) {
          COSDictionary owner = (COSDictionary) owners.getObject(id);
          int wanted = id;
          assertThat(new PDStructureElement(owner).getKids())
              .as("kids of the owner of content %d", id)
              .anyMatch(kid -> kid.equals(wanted));
        }
      }
    }
  }

  /** 14.9.4: text drawn in another order than it is read carries the text as it is read. */
  @Test
  void hebrewIsReadInItsOwnOrder() throws IOException {
    String name = "כחול ים";
    Papers papers =
        new Papers(
            "t",
            List.of(
                new Sheet(
                    "t",
                    100,
                    100,
                    List.of(new Mark.Text(Typeface.REGULAR, 9, 10, 20, false, Ink.BLACK, name)))));
    try (PDDocument pdf = Loader.loadPDF(PdfWriter.write(papers))) {
      assertThat(all(pdf.getDocumentCatalog().getStructureTreeRoot()))
          .extracting(PDStructureElement::getActualText)
          .contains(name);
    }
  }

  @Test
  void aFigureWithoutWordsIsRefused() {
    List<Mark> marks = List.of(new Mark.Swatch(new Area(0, 0, 5, 5), List.of(Ink.BLACK)));

    assertThatThrownBy(() -> new Mark.Group(Role.FIGURE, " ", marks))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a figure, and nothing else, needs words; FIGURE had \" \"");
  }

  private static int markedContents(PDPage page) throws IOException {
    int count = 0;
    for (Object token : new PDFStreamParser(page).parse()) {
      count += token instanceof Operator operator && operator.getName().equals("BDC") ? 1 : 0;
    }
    return count;
  }

  private static List<PDStructureElement> kids(PDStructureNode node) {
    return node.getKids().stream()
        .filter(PDStructureElement.class::isInstance)
        .map(PDStructureElement.class::cast)
        .toList();
  }

  private static List<PDStructureElement> all(PDStructureNode node) {
    List<PDStructureElement> found = new ArrayList<>();
    for (PDStructureElement kid : kids(node)) {
      found.add(kid);
      found.addAll(all(kid));
    }
    return found;
  }
}
