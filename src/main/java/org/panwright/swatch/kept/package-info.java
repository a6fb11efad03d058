/**
 * What the coats kept with a painter's paints say of those paints.
 *
 * <p>{@link org.panwright.swatch.kept.PaintFit} is the door, {@link
 * org.panwright.swatch.kept.PaintFitReport} what comes out of it.
 */
package org.panwright.swatch.kept;
