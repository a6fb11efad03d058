package org.panwright.print;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;

/** The bookmarks of a PDF. */
final class Bookmarks {
  private Bookmarks() {}

  /**
   * Gives a document that has its pages their bookmarks: of several papers one each with their
   * sheets beneath, of one its sheets, of a single sheet none.
   */
  static void add(PDDocument document, Bundle bundle) {
    if (document.getNumberOfPages() == 1) {
      return;
    }
    PDDocumentOutline outline = new PDDocumentOutline();
    boolean several = bundle.parts().size() > 1;
    int page = 0;
    for (Papers papers : bundle.parts()) {
      PDOutlineNode above = outline;
      if (several) {
        PDOutlineItem item = item(papers.title(), document, page);
        outline.addLast(item);
        above = item;
      }
      for (Sheet sheet : papers.sheets()) {
        if (!several || papers.sheets().size() > 1) {
          above.addLast(item(sheet.title(), document, page));
        }
        page++;
      }
    }
    document.getDocumentCatalog().setDocumentOutline(outline);
  }

  private static PDOutlineItem item(String title, PDDocument document, int page) {
    PDPageFitDestination destination = new PDPageFitDestination();
    destination.setPage(document.getPage(page));
    PDOutlineItem item = new PDOutlineItem();
    item.setTitle(title);
    item.setDestination(destination);
    return item;
  }
}
