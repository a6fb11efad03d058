/**
 * Least squares: {@link org.panwright.swatch.squares.Equations} of many unknowns that are found
 * step by step. Knows nothing of swatches.
 */
package org.panwright.swatch.squares;
