/**
 * The papers: sheets as marks placed in millimetres, and the PDF they become.
 *
 * <p>Read in this order: {@link org.panwright.print.KeyCard}, {@link
 * org.panwright.print.MixingChart}, {@link org.panwright.print.SwatchLadder} and {@link
 * org.panwright.print.PanLabels} (the doors), {@link org.panwright.print.Papers}, {@link
 * org.panwright.print.Sheet} and {@link org.panwright.print.Mark} (what a sheet holds), {@link
 * org.panwright.print.TextFit} (how text is made to fit), {@link org.panwright.print.PdfWriter}
 * (how marks become bytes).
 *
 * <p>The only package that knows PDFBox; whoever shows a sheet on a screen draws its marks. Knows
 * {@code kit}, {@code analysis}, {@code mixing}, {@code words} and what they know; it knows no
 * window and no file.
 */
package org.panwright.print;
