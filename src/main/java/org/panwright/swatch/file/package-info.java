/**
 * Files of readings, as people and instruments write them.
 *
 * <p>Read in this order: {@link org.panwright.swatch.file.ReadingFile} (readings without paints,
 * from a file of either kind), {@link org.panwright.swatch.file.ReadingPlan} (what it holds),
 * {@link org.panwright.swatch.file.CoatTable} (swatches with their paints). What each column is,
 * {@link org.panwright.swatch.file.ReadingMapping} says.
 */
package org.panwright.swatch.file;
