/**
 * Swatches read at places the painter points at, where a picture has no marks of ours: coats, bare
 * paper, a grey or white card.
 *
 * <p>Read in this order: {@link org.panwright.app.spots.SpotMarks} (the spots on the picture),
 * {@link org.panwright.app.spots.SpotsModel}, {@link org.panwright.app.spots.SpotsSide}.
 */
package org.panwright.app.spots;
