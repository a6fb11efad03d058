package org.panwright.print;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/**
 * Draws the marks of one page, each inside a marked content that says what it belongs to; whatever
 * belongs to nothing is an artifact (ISO 32000-1:2008, 14.8.2.2).
 */
final class TaggedPage {
  private final PDPageContentStream content;
  private final PagePen pen;
  private final StructureTree.Contents contents;
  private final boolean first;

  /**
   * @param first whether the page is the first of its papers, whose title is theirs
   */
  TaggedPage(
      PDPageContentStream content, PagePen pen, StructureTree.Contents contents, boolean first) {
    this.content = content;
    this.pen = pen;
    this.contents = contents;
    this.first = first;
  }

  /** Marks in a section: groups are elements, runs of loose texts paragraphs. */
  void draw(List<Mark> marks, PDStructureElement section) throws IOException {
    int at = 0;
    while (at < marks.size()) {
      int end = at + 1;
      if (marks.get(at) instanceof Mark.Group group) {
        draw(group, section);
      } else {
        boolean text = marks.get(at) instanceof Mark.Text;
        while (end < marks.size() && isLoose(marks.get(end), text)) {
          end++;
        }
        List<Mark> run = marks.subList(at, end);
        if (text) {
          texts(run, StructureTree.element(section, StandardStructureTypes.P));
        } else {
          artifact(run);
        }
      }
      at = end;
    }
  }

  private static boolean isLoose(Mark mark, boolean text) {
    return !(mark instanceof Mark.Group) && mark instanceof Mark.Text == text;
  }

  private void draw(Mark.Group group, PDStructureElement parent) throws IOException {
    switch (group.role()) {
      case TITLE ->
          inside(
              group.marks(),
              StructureTree.element(
                  parent, first ? StandardStructureTypes.H1 : StandardStructureTypes.H2));
      case HEADING ->
          inside(group.marks(), StructureTree.element(parent, StandardStructureTypes.H2));
      case SECTION ->
          draw(group.marks(), StructureTree.element(parent, StandardStructureTypes.SECT));
      case PARAGRAPH ->
          inside(group.marks(), StructureTree.element(parent, StandardStructureTypes.P));
      case FIGURE -> figure(group, parent);
      case DECORATION -> artifact(group.single().toList());
    }
  }

  /** The marks of one element: texts belong to it, figures in it to themselves. */
  private void inside(List<Mark> marks, PDStructureElement element) throws IOException {
    for (Mark mark : marks) {
      if (mark instanceof Mark.Group group) {
        draw(group, element);
      } else if (mark instanceof Mark.Text) {
        texts(List.of(mark), element);
      } else {
        artifact(List.of(mark));
      }
    }
  }

  private void figure(Mark.Group group, PDStructureElement parent) throws IOException {
    PDStructureElement figure = StructureTree.element(parent, StandardStructureTypes.Figure);
    figure.setAlternateDescription(group.words());
    content.beginMarkedContent(COSName.getPDFName("Figure"), contents.next(figure));
    for (Mark mark : group.single().toList()) {
      pen.draw(mark);
    }
    content.endMarkedContent();
  }

  /** Texts of one element; one set in another order than it is read says how it is read. */
  private void texts(List<Mark> texts, PDStructureElement element) throws IOException {
    for (Mark mark : texts) {
      String read = ((Mark.Text) mark).text();
      PDStructureElement owner = element;
      if (!Script.visual(read).equals(read)) {
        owner = StructureTree.element(element, StandardStructureTypes.SPAN);
        owner.setActualText(read);
      }
      content.beginMarkedContent(
          COSName.getPDFName(owner.getStructureType()), contents.next(owner));
      pen.draw(mark);
      content.endMarkedContent();
    }
  }

  private void artifact(List<Mark> marks) throws IOException {
    content.beginMarkedContent(COSName.ARTIFACT);
    for (Mark mark : marks) {
      pen.draw(mark);
    }
    content.endMarkedContent();
  }
}
