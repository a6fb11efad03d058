/**
 * Coats held against a fit of the others: which disagree, how well each paint comes out, and what
 * simpler ways would have said.
 *
 * <p>Read in this order: {@link org.panwright.swatch.check.OddCoat} and {@link
 * org.panwright.swatch.check.DoubtedLoad} (what to look at again), {@link
 * org.panwright.swatch.check.PaintResiduals} and {@link org.panwright.swatch.check.MixErrors} (how
 * far off), {@link org.panwright.swatch.check.ScreenAverage} (to be measured against).
 */
package org.panwright.swatch.check;
