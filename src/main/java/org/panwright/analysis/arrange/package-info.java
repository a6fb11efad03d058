/**
 * Laying a lineup into the wells of its box, and whether the pans fit them.
 *
 * <p>Read {@link org.panwright.analysis.arrange.Arranger} with {@link
 * org.panwright.analysis.arrange.WellOrder}; {@code ChainOrder} and {@code NeighbourOrder} are its
 * two ways to search. {@link org.panwright.analysis.arrange.FitCheck} stands for itself.
 */
package org.panwright.analysis.arrange;
