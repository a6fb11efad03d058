/**
 * The papers: sheets as marks placed in millimetres, and the PDF they become.
 *
 * <p>Read in this order: {@link org.panwright.print.PaperKind}, {@link
 * org.panwright.print.PaperOrder} and {@link org.panwright.print.Made} (which papers there are and
 * how one is asked for), {@link org.panwright.print.KeyCard} and {@link
 * org.panwright.print.MixingChart} (how they are laid out), {@link org.panwright.print.Papers},
 * {@link org.panwright.print.Sheet}, {@link org.panwright.print.Mark} and {@link
 * org.panwright.print.Role} (what a sheet holds and what it means), {@link
 * org.panwright.print.TextFit} (how text is made to fit), {@link org.panwright.print.PdfWriter}
 * (how marks become bytes).
 *
 * <p>The only package that knows PDFBox; whoever shows a sheet on a screen draws its marks. Knows
 * {@code kit}, {@code analysis}, {@code mixing}, {@code words} and what they know; it knows no
 * window and no file.
 */
package org.panwright.print;
