/**
 * Mixing charts painted by hand: which mix each cell holds, what it looks like in a picture, and
 * which cells disagree with the rest.
 *
 * <p>Read in this order: {@link org.panwright.swatch.grid.PaintedGrid} (what is meant to be in the
 * cells), {@link org.panwright.swatch.grid.GridReading} (what is seen in them), {@link
 * org.panwright.swatch.grid.GridJudgement} (what follows).
 */
package org.panwright.swatch.grid;
