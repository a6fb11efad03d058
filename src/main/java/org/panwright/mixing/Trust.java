package org.panwright.mixing;

import org.panwright.paint.OpticsSource;

/**
 * How far the predicted colour of a mix can be trusted.
 *
 * @param source the least certain of the sources of its paints' optics
 * @param error the CIEDE2000 to expect between the prediction and the mix on paper
 */
public record Trust(OpticsSource source, double error) {}
