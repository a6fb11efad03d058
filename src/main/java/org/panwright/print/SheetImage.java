package org.panwright.print;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * Shows the pages of a finished PDF as pictures, so that a preview is the very page that will be
 * saved. Works without a display. One thread at a time.
 */
public final class SheetImage implements AutoCloseable {
  private static final double POINTS_PER_INCH = 72;

  private final PDDocument document;
  private final PDFRenderer renderer;

  /** Opens a PDF made by {@link PdfWriter}. */
  public SheetImage(byte[] pdf) {
    try {
      document = Loader.loadPDF(pdf);
    } catch (IOException e) {
      throw new UncheckedIOException("these bytes are no PDF of ours", e);
    }
    renderer = new PDFRenderer(document);
  }

  /** The number of pages. */
  public int pages() {
    return document.getNumberOfPages();
  }

  /**
   * A page as an opaque sRGB picture.
   *
   * @param page from 0
   * @param dpi pixels for each inch of paper, 10..600
   */
  public BufferedImage page(int page, double dpi) {
    if (!(dpi >= 10 && dpi <= 600)) {
      throw new IllegalArgumentException("resolution must lie in 10..600 dpi, was " + dpi);
    }
    try {
      return renderer.renderImage(page, (float) (dpi / POINTS_PER_INCH), ImageType.RGB);
    } catch (IOException e) {
      throw new UncheckedIOException("a page of ours could not be drawn", e);
    }
  }

  @Override
  public void close() {
    try {
      document.close();
    } catch (IOException e) {
      throw new UncheckedIOException("a PDF in memory could not be closed", e);
    }
  }
}
