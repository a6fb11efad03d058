package org.panwright.app.papers;

import java.util.function.Consumer;
import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Paper;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.Group;
import javafx.stage.Window;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.print.Papers;
import org.panwright.print.Sheet;
import org.panwright.words.PaperViewWords;

/** Sends papers to a printer at true size. */
public final class PaperPrinter {
  /** JavaFX prints in points of 1/72 inch. */
  private static final double POINTS_PER_MM = 72 / 25.4;

  /** How far the sheet asked for and the printer's paper may differ and still be the same. */
  private static final double SAME_PAPER_POINTS = 6;

  /** How it went. */
  private enum Result {
    SENT,
    LEFT,
    NO_PRINTER,
    NOT_TAKEN
  }

  private PaperPrinter() {}

  /** Prints papers and says how it went: in a word to {@code status}, what failed in a dialog. */
  public static void send(Papers papers, Window owner, Dialogs dialogs, Consumer<String> status) {
    switch (print(papers, owner)) {
      case SENT -> status.accept(PaperViewWords.SENT);
      case LEFT -> status.accept("");
      case NO_PRINTER -> dialogs.tell(PaperViewWords.NO_PRINTER_TITLE, PaperViewWords.NO_PRINTER);
      case NOT_TAKEN -> dialogs.tell(PaperViewWords.NOT_PRINTED_TITLE, PaperViewWords.NOT_PRINTED);
    }
  }

  /** Asks which printer, then sends all sheets. JavaFX thread. */
  private static Result print(Papers papers, Window owner) {
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
