package org.panwright.app.chart;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.panwright.swatch.grid.CellReading;
import org.panwright.swatch.grid.GridReading;

/** What the painter said of single cells: left out, taken in, exchanged with another. */
final class CellWishes {
  private final Map<Place, Boolean> kept = new HashMap<>();
  private final List<Exchange> exchanged = new ArrayList<>();

  private record Place(int row, int column) {
    static Place of(CellReading cell) {
      return new Place(cell.row(), cell.column());
    }
  }

  private record Exchange(Place first, Place second) {}

  /** Nothing was said of any cell. */
  void clear() {
    kept.clear();
    exchanged.clear();
  }

  /** Says whether the paints are to learn from a cell. */
  void keep(CellReading cell, boolean wished) {
    kept.put(Place.of(cell), wished);
  }

  /** Says that two cells were painted in each other's place. */
  void exchange(CellReading first, CellReading second) {
    exchanged.add(new Exchange(Place.of(first), Place.of(second)));
  }

  /** Whether the paints are to learn from a cell: as wished, or if it agrees. */
  boolean isKept(CellReading cell, boolean agrees) {
    return !cell.patch().isBeyondPicture() && kept.getOrDefault(Place.of(cell), agrees);
  }

  /** A reading with the exchanged cells meant to hold what the other was. */
  GridReading applyTo(GridReading read) {
    GridReading changed = read;
    for (Exchange pair : exchanged) {
      List<Place> places = changed.cells().stream().map(Place::of).toList();
      int first = places.indexOf(pair.first());
      int second = places.indexOf(pair.second());
      if (first >= 0 && second >= 0) {
        changed = changed.withExchanged(first, second);
      }
    }
    return changed;
  }
}
