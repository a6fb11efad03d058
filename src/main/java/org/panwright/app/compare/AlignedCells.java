package org.panwright.app.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.analysis.judge.Judgement;
import org.panwright.app.fx.Swatches;
import org.panwright.colour.Srgb;
import org.panwright.mixing.MixGrid;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.Ratio;
import org.panwright.mixing.Recipe;
import org.panwright.mixing.Trust;
import org.panwright.paint.Wash;

/**
 * The cells of one side as they are to be drawn: rows and columns are those of both sides, and
 * where the side lacks a paint its cells are empty. Immutable.
 */
final class AlignedCells {
  /** The paint of the row leads: its place in {@link Ratio#GRID}. */
  static final int LEADING = Ratio.GRID.indexOf(new Ratio(3, 1));

  /** The wash every cell is painted with. */
  static final Wash WASH = Wash.CREAM;

  private final int size;
  private final List<Optional<Srgb>> cells;
  private final Mixer mixer;

  private AlignedCells(int size, List<Optional<Srgb>> cells, Mixer mixer) {
    this.mixer = mixer;
    this.size = size;
    this.cells = List.copyOf(cells);
  }

  /**
   * The cells of a judged side.
   *
   * @param paints ids of rows and columns
   */
  static AlignedCells of(Judgement judgement, List<String> paints) {
    MixGrid grid = judgement.grid();
    Map<String, Integer> rows = new HashMap<>();
    for (int row = 0; row < grid.size(); row++) {
      rows.put(judgement.table().ids().get(grid.paint(row)), row);
    }
    List<Optional<Srgb>> cells = new ArrayList<>();
    for (String one : paints) {
      for (String two : paints) {
        Integer row = rows.get(one);
        Integer column = rows.get(two);
        cells.add(
            row == null || column == null
                ? Optional.empty()
                : Optional.of(Swatches.fit(grid.lab(row, column, ratio(one, two), WASH)).shown()));
      }
    }
    return new AlignedCells(paints.size(), cells, new Mixer(judgement.table()));
  }

  /** The place in {@link Ratio#GRID} of the mix a cell shows. */
  static int ratio(String rowPaintId, String columnPaintId) {
    return rowPaintId.equals(columnPaintId) ? Ratio.EVEN : LEADING;
  }

  /** What the screen shows of a cell; empty if the side lacks one of its paints. */
  Optional<Srgb> at(int row, int column) {
    return cells.get(row * size + column);
  }

  /** How far to trust what it mixes of two paints it holds. */
  Trust trust(String rowPaintId, String columnPaintId) {
    Ratio ratio = Ratio.GRID.get(ratio(rowPaintId, columnPaintId));
    return mixer.trust(Recipe.of(rowPaintId, columnPaintId, ratio));
  }

  /** Whether the side holds the paint of a row. */
  boolean holds(int row) {
    return at(row, row).isPresent();
  }
}
