package org.panwright.swatch.grid;

/**
 * Two labels of a chart that look exchanged.
 *
 * @param where whether they are those of rows, of columns, or of both alike
 * @param first the place of one, from 0
 * @param second the place of the other
 * @param before the mean CIEDE2000 of the cells concerned as labelled
 * @param after the same once exchanged
 */
public record ExchangedLabels(Where where, int first, int second, double before, double after) {
  /** Which labels. */
  public enum Where {
    ROWS,
    COLUMNS,
    /** Of a chart whose rows and columns hold the same paints in the same order. */
    BOTH
  }

  /** Whether a row has one of these labels. */
  public boolean ofRows() {
    return where != Where.COLUMNS;
  }

  /** Whether a column has one of these labels. */
  public boolean ofColumns() {
    return where != Where.ROWS;
  }

  double gain() {
    return before - after;
  }
}
