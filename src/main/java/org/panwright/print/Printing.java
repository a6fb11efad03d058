package org.panwright.print;

import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import javax.print.PrintService;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;

/**
 * Sends a finished PDF to a printer at its true size, one page of the PDF on one sheet.
 *
 * <p>An extra: drivers may scale or lose a job without telling. The PDF file remains the master and
 * the ruler on it the proof.
 */
public final class Printing {
  private Printing() {}

  /** The names of the printers this computer knows, in its order; empty if there are none. */
  public static List<String> printers() {
    return Arrays.stream(PrinterJob.lookupPrintServices()).map(PrintService::getName).toList();
  }

  /**
   * Prints all pages. Takes as long as the printer takes to accept them; call it off the window's
   * thread.
   *
   * @param pdf made by {@link PdfWriter}
   * @param printer one of {@link #printers}
   * @param title the name of the job
   * @throws NoSuchPrinterException if there is no such printer
   * @throws PrinterException if the printer or its driver refuses
   */
  public static void print(byte[] pdf, String printer, String title)
      throws NoSuchPrinterException, PrinterException {
    PrintService service =
        Arrays.stream(PrinterJob.lookupPrintServices())
            .filter(candidate -> candidate.getName().equals(printer))
            .findFirst()
            .orElseThrow(() -> new NoSuchPrinterException(printer));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PrinterJob job = PrinterJob.getPrinterJob();
      job.setPrintService(service);
      job.setJobName(title);
      job.setPageable(new PDFPageable(document));
      job.print();
    } catch (IOException e) {
      throw new UncheckedIOException("these bytes are no PDF of ours", e);
    }
  }
}
