/**
 * Swatches read at places the painter points at, on a picture without marks of ours.
 *
 * <p>Read in this order: {@link org.panwright.swatch.spot.Spot}, {@link
 * org.panwright.swatch.spot.SpotsReading}, {@link org.panwright.swatch.spot.SpotCoats}.
 */
package org.panwright.swatch.spot;
