package org.panwright.kit.table;

import java.util.List;
import org.panwright.paint.Paint;

/**
 * What becomes of one row of a table.
 *
 * @param line where it stands in its file, from 1
 * @param outcome what becomes of it
 * @param paints the paint it makes, changes or names; empty for a row at fault and an empty well
 * @param faults what is wrong with it; empty unless it is at fault
 */
public record TakenRow(int line, Outcome outcome, List<Paint> paints, List<CellFault> faults) {
  /** What becomes of a row. */
  public enum Outcome {
    /** A new paint. */
    NEW,
    /** The paint is there already and stays. */
    KEPT,
    /** The paint is there already and changes. */
    CHANGED,
    /** A well without a paint. */
    NO_PAINT,
    /** It cannot be used. */
    AT_FAULT
  }

  public TakenRow {
    paints = List.copyOf(paints);
    faults = List.copyOf(faults);
  }
}
