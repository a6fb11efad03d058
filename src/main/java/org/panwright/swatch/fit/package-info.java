/**
 * Swatches turned into optics: K(λ) and S(λ) of every paint that explain a set of dry coats best.
 *
 * <p>Read in this order: {@link org.panwright.swatch.fit.OpticsFit} (the best fit), {@link
 * org.panwright.swatch.fit.FitReport} (what came out and how far to trust it), {@link
 * org.panwright.swatch.fit.GroupedFit} (many paints, and what is known of some beforehand). The
 * equations stand in docs/engine.md under "From swatches to optics".
 *
 * <p>It knows no sentence: what is wrong with a set is a {@link
 * org.panwright.swatch.fit.FitRefusal}.
 */
package org.panwright.swatch.fit;
