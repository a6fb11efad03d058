/**
 * What a lineup can mix, and what without each of its paints: what a paint is worth.
 *
 * <p>Read {@link org.panwright.analysis.worth.Earning} first; {@link
 * org.panwright.analysis.worth.LineupFigures} gathers everything in one walk, {@link
 * org.panwright.analysis.worth.LeaveOneOut} and {@link
 * org.panwright.analysis.worth.SubjectsWithout} say what goes with each paint, {@link
 * org.panwright.analysis.worth.ShelfFigures} is the measure a lineup is held against.
 */
package org.panwright.analysis.worth;
