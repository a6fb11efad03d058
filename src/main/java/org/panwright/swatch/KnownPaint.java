package org.panwright.swatch;

import org.panwright.paint.Optics;

/**
 * What is known of a paint before any swatch is read.
 *
 * @param optics per unit load, as estimated from the names of its pigments
 * @param firm whether its curves are to be taken as they are, as nobody means to learn them from
 *     the swatches: a white or black that is only named
 */
record KnownPaint(Optics optics, boolean firm) {}
