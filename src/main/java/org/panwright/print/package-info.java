/**
 * The papers: sheets as marks placed in millimetres, and the PDF they become.
 *
 * <p>Read in this order: {@link org.panwright.print.KeyCard} (the door for a key card), {@link
 * org.panwright.print.Papers}, {@link org.panwright.print.Sheet} and {@link
 * org.panwright.print.Mark} (what a sheet holds), {@link org.panwright.print.TextFit} (how text is
 * made to fit), {@link org.panwright.print.PdfWriter} (how marks become bytes). {@link
 * org.panwright.print.SheetImage} shows a sheet on the screen, {@link org.panwright.print.Printing}
 * sends it to a printer.
 *
 * <p>The only package that knows PDFBox. The PDF is the master: screen and printer get what it
 * shows. Knows {@code kit}, {@code analysis}, {@code mixing}, {@code words} and what they know; it
 * knows no window and no file.
 */
package org.panwright.print;
