/**
 * Paints and what is known of them: pigments, properties, optics, the shelf. Data with meaning, no
 * mixing.
 *
 * <p>Read in this order: {@link org.panwright.paint.Pigment} and {@link
 * org.panwright.paint.PigmentLibrary}, {@link org.panwright.paint.Optics}, {@link
 * org.panwright.paint.Paint} and its {@link org.panwright.paint.Swatchbook}, {@link
 * org.panwright.paint.Shelf}; then {@link org.panwright.paint.Paper} and {@link
 * org.panwright.paint.WashStrengths}, which every coat needs.
 *
 * <p>Knows only {@code colour}. Where the figures are stored is the business of {@code store}.
 */
package org.panwright.paint;
