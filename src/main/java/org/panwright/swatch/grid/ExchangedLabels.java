package org.panwright.swatch.grid;

/**
 * Two labels of a chart that look exchanged.
 *
 * @param rows whether rows are meant; otherwise columns
 * @param first the place of one, from 0
 * @param second the place of the other
 * @param before the mean CIEDE2000 of the cells concerned as labelled
 * @param after the same once exchanged
 */
public record ExchangedLabels(boolean rows, int first, int second, double before, double after) {}
