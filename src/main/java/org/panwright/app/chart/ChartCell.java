package org.panwright.app.chart;

import java.util.Optional;
import java.util.OptionalInt;
import org.panwright.colour.Lab;
import org.panwright.swatch.grid.CellReading;
import org.panwright.swatch.grid.CellVerdict;
import org.panwright.swatch.grid.JudgedCell;

/**
 * One cell of a chart as it is shown.
 *
 * @param reading what was read, and what it is meant to hold
 * @param judged the same beside what the others foretell, once that is known
 * @param kept whether the paints are to learn from it
 */
record ChartCell(CellReading reading, Optional<JudgedCell> judged, boolean kept) {
  Lab painted() {
    return reading.patch().lab();
  }

  Optional<Lab> predicted() {
    return judged.map(JudgedCell::predicted);
  }

  /** What is made of it; it agrees as long as nothing is known. */
  CellVerdict verdict() {
    return judged.map(JudgedCell::verdict).orElse(CellVerdict.AGREES);
  }

  /** The place in the list of the cell it was exchanged with. */
  OptionalInt partner() {
    return judged.map(JudgedCell::partner).orElse(OptionalInt.empty());
  }

  /** Whether the picture cannot hold its colour. */
  boolean isBeyondPicture() {
    return reading.patch().isBeyondPicture();
  }

  boolean isAt(int row, int column) {
    return reading.row() == row && reading.column() == column;
  }
}
