package org.panwright.app.grid;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.panwright.analysis.judge.Judgement;
import org.panwright.app.fx.Swatches;
import org.panwright.colour.GamutFit;
import org.panwright.kit.Box;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.mixing.MixGrid;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.Ratio;
import org.panwright.mixing.Recipe;
import org.panwright.mixing.Trust;
import org.panwright.paint.Paint;
import org.panwright.paint.Wash;

/**
 * The grid as it is to be drawn: heads and one showable colour for each cell. Immutable.
 *
 * @param heads one for each row, which is also its column
 * @param cells row by row
 * @param trial whether this shows an edit that has not been made
 */
record GridPicture(List<Head> heads, List<Cell> cells, boolean trial) {
  static final GridPicture EMPTY = new GridPicture(List.of(), List.of(), false);

  /**
   * A row's or column's head.
   *
   * @param fresh whether the paint is not in the lineup as it stands
   */
  record Head(String paintId, String well, String name, String codes, boolean fresh) {}

  /** What a cell shows, and how far to trust it. */
  record Cell(GamutFit colour, int ratio, Wash wash, Trust trust) {}

  GridPicture {
    heads = List.copyOf(heads);
    cells = List.copyOf(cells);
  }

  int size() {
    return heads.size();
  }

  Cell cell(int row, int column) {
    return cells.get(row * size() + column);
  }

  /** The row of a paint, or −1. */
  int rowOf(String paintId) {
    for (int row = 0; row < heads.size(); row++) {
      if (heads.get(row).paintId().equals(paintId)) {
        return row;
      }
    }
    return -1;
  }

  /**
   * The picture of a judgement.
   *
   * @param standing the paints of the lineup as it stands; others are fresh
   */
  static GridPicture of(
      Judgement judgement, Set<String> standing, boolean trial, Reading reading, Wash wash) {
    MixGrid grid = judgement.grid();
    Mixer mixer = new Mixer(judgement.table());
    List<Head> heads = new ArrayList<>();
    List<Cell> cells = new ArrayList<>();
    for (int row = 0; row < grid.size(); row++) {
      String id = judgement.table().ids().get(grid.paint(row));
      heads.add(head(judgement, id, !standing.contains(id)));
      for (int column = 0; column < grid.size(); column++) {
        int ratio = reading.ratio(row, column);
        Wash shown = reading.wash(row, column, wash);
        GamutFit colour = Swatches.fit(grid.lab(row, column, ratio, shown));
        String other = judgement.table().ids().get(grid.paint(column));
        Recipe recipe = Recipe.of(id, other, Ratio.GRID.get(ratio));
        cells.add(new Cell(colour, ratio, shown, mixer.trust(recipe)));
      }
    }
    return new GridPicture(heads, cells, trial);
  }

  /** The ids of all paints in a lineup's wells. */
  static Set<String> paintsIn(Lineup lineup) {
    Set<String> ids = new HashSet<>();
    lineup.fillings().values().forEach(filling -> ids.add(filling.paintId()));
    return ids;
  }

  private static Head head(Judgement judgement, String paintId, boolean fresh) {
    Kit kit = judgement.kit();
    Paint paint = kit.shelf().find(paintId).orElseThrow();
    Lineup lineup = kit.lineup(judgement.lineupId()).orElseThrow();
    Box box = kit.boxOf(lineup);
    String well =
        box.wells().stream()
            .filter(w -> lineup.in(w.id()).filter(f -> f.paintId().equals(paintId)).isPresent())
            .map(Well::label)
            .findFirst()
            .orElse("");
    return new Head(paintId, well, paint.name(), paint.codes(), fresh);
  }
}
