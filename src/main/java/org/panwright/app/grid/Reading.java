package org.panwright.app.grid;

import org.panwright.mixing.Ratio;
import org.panwright.paint.Wash;

/**
 * How the two halves of the grid are read.
 *
 * <p>Both are painted by hand in the trade: halves where one paint leads, and halves by strength.
 */
public enum Reading {
  /**
   * The paint of the row leads 3:1, so the two halves lean to one and the other paint of a pair.
   */
  LEANING {
    @Override
    int ratio(int row, int column) {
      return row == column ? Ratio.EVEN : ROW_LEADS;
    }

    @Override
    Wash wash(int row, int column, Wash chosen) {
      return chosen;
    }
  },
  /** Equal strength parts; strong above the diagonal, thinned out below it. */
  STRONG_AND_THIN {
    @Override
    int ratio(int row, int column) {
      return Ratio.EVEN;
    }

    @Override
    Wash wash(int row, int column, Wash chosen) {
      return row <= column ? Wash.BUTTER : Wash.COFFEE;
    }
  };

  private static final int ROW_LEADS = Ratio.GRID.indexOf(new Ratio(3, 1));

  /** The place in {@link Ratio#GRID} a cell shows, first parts for the row paint. */
  abstract int ratio(int row, int column);

  /** The wash a cell shows when {@code chosen} is picked for the grid. */
  abstract Wash wash(int row, int column, Wash chosen);
}
