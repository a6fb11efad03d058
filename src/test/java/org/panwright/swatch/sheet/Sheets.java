package org.panwright.swatch.sheet;

import java.util.List;
import org.panwright.print.Papers;
import org.panwright.print.SwatchSheet;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.picture.Zone;

/** Printed and painted sheets of the invented paints. */
public final class Sheets {
  private Sheets() {}

  /** A page as it comes out of the printer. */
  public static PaintedPage blank(SheetFormat format) {
    return new PaintedPage(papers(format), 0);
  }

  public static Papers papers(SheetFormat format) {
    return SwatchSheet.of("round trip", InventedShelf.paints(), format);
  }

  /** The first page with each row's paint in it. */
  public static PaintedPage painted(SheetFormat format) {
    return painted(format, List.copyOf(InventedShelf.OPTICS.keySet()));
  }

  /** The first page, with these paints in its rows whatever their heads say. */
  public static PaintedPage painted(SheetFormat format, List<String> paints) {
    PaintedPage page = blank(format);
    List<Zone> outlines = PaintedPage.outlines(papers(format).sheets().get(0));
    for (int row = 0; 4 * row < outlines.size() && row < paints.size(); row++) {
      List<List<PaintLoad>> four = PaintedPage.four(paints.get(row));
      for (int i = 0; i < 4; i++) {
        if (!four.get(i).isEmpty()) {
          page.paint(outlines.get(4 * row + i), four.get(i));
        }
      }
    }
    return page;
  }
}
