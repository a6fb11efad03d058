/**
 * Filling pans out of tubes: what goes where, in which layers, what is short and what to buy.
 *
 * <p>Read {@link org.panwright.analysis.fill.FillPlan} and {@link
 * org.panwright.analysis.fill.PlannedWell}; {@code FillPlanning} makes them. {@link
 * org.panwright.analysis.fill.Purchase} is what to buy, {@link
 * org.panwright.analysis.fill.PaintPlaces} where a paint is now.
 */
package org.panwright.analysis.fill;
