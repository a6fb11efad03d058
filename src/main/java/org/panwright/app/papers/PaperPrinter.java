package org.panwright.app.papers;

import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Paper;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.Group;
import javafx.stage.Window;
import org.panwright.print.Papers;
import org.panwright.print.Sheet;

/** Sends papers to a printer at true size. */
final class PaperPrinter {
  /** JavaFX prints in points of 1/72 inch. */
  private static final double POINTS_PER_MM = 72 / 25.4;

  /** How far the sheet asked for and the printer's paper may differ and still be the same. */
  private static final double SAME_PAPER_POINTS = 6;

  /** How it went. */
  enum Result {
    SENT,
    LEFT,
    NO_PRINTER,
    NOT_TAKEN
  }

  private PaperPrinter() {}

  /** Asks which printer, then sends all sheets. JavaFX thread. */
  static Result print(Papers papers, Window owner) {
    PrinterJob job = Printer.getDefaultPrinter() == null ? null : PrinterJob.createPrinterJob();
    if (job == null) {
      return Result.NO_PRINTER;
    }
    job.getJobSettings().setJobName(papers.title());
    if (!job.showPrintDialog(owner)) {
      job.cancelJob();
      return Result.LEFT;
    }
    for (Sheet sheet : papers.sheets()) {
      if (!job.printPage(layout(job.getPrinter(), sheet), page(job.getPrinter(), sheet))) {
        job.cancelJob();
        return Result.NOT_TAKEN;
      }
    }
    return job.endJob() ? Result.SENT : Result.NOT_TAKEN;
  }

  /** Where JavaFX starts to print is the corner of the printable area, not of the paper. */
  private static Group page(Printer printer, Sheet sheet) {
    PageLayout layout = layout(printer, sheet);
    SheetPicture picture = new SheetPicture(sheet, POINTS_PER_MM);
    picture.setTranslateX(-layout.getLeftMargin());
    picture.setTranslateY(-layout.getTopMargin());
    return new Group(picture);
  }

  private static PageLayout layout(Printer printer, Sheet sheet) {
    boolean wide = sheet.widthMm() > sheet.heightMm();
    double shortSide = Math.min(sheet.widthMm(), sheet.heightMm()) * POINTS_PER_MM;
    double longSide = Math.max(sheet.widthMm(), sheet.heightMm()) * POINTS_PER_MM;
    Paper paper =
        printer.getPrinterAttributes().getSupportedPapers().stream()
            .filter(p -> Math.abs(p.getWidth() - shortSide) < SAME_PAPER_POINTS)
            .filter(p -> Math.abs(p.getHeight() - longSide) < SAME_PAPER_POINTS)
            .findFirst()
            .orElse(printer.getPrinterAttributes().getDefaultPaper());
    return printer.createPageLayout(
        paper,
        wide ? PageOrientation.LANDSCAPE : PageOrientation.PORTRAIT,
        Printer.MarginType.HARDWARE_MINIMUM);
  }
}
