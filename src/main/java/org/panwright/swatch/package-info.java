/**
 * Swatches turned into optics: what a painter's dried coats say about the paints in them, and the
 * files such readings come in.
 *
 * <p>Read in this order: {@link org.panwright.swatch.Swatch} and {@link
 * org.panwright.swatch.SwatchSet} (the readings), {@link org.panwright.swatch.OpticsFit} (the best
 * fit), {@link org.panwright.swatch.FitReport} (what came out and how far to trust it); then {@link
 * org.panwright.swatch.PaintFit} (from the coats kept with the painter's paints), {@link
 * org.panwright.swatch.CoatTable} and {@link org.panwright.swatch.Cgats} for files. The equations
 * stand in docs/engine.md under "From swatches to optics".
 *
 * <p>Knows {@code colour}, {@code paint} and {@code mixing}. It knows no sentence: what is wrong
 * with a reading is a {@link org.panwright.swatch.FitRefusal}, with a file a {@link
 * org.panwright.swatch.TableFault}.
 */
package org.panwright.swatch;
