package org.panwright.analysis;

import java.util.List;
import java.util.function.BooleanSupplier;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.mixing.MixGrid;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Ratio;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.Wash;

/** Judges lineups; the door of this package. */
public final class Judge {
  private final PigmentLibrary library;

  /** A judge who estimates paints without measured optics from {@code library}. */
  public Judge(PigmentLibrary library) {
    this.library = library;
  }

  /**
   * The judgement of one lineup of a kit. Any thread.
   *
   * @param cancelled asked now and then
   * @throws java.util.concurrent.CancellationException as soon as {@code cancelled} answers true
   */
  public Judgement judge(Kit kit, String lineupId, BooleanSupplier cancelled) {
    OpticsTable table = OpticsTable.of(kit.shelf().paints(), library, kit.paper());
    Lineup lineup = kit.lineup(lineupId).orElseThrow();
    int[] own = lineup.paintIds(kit.boxOf(lineup)).stream().mapToInt(table::indexOf).toArray();
    int[] all = java.util.stream.IntStream.range(0, table.size()).toArray();
    MixGrid grid = MixGrid.of(table, own, kit.washes(), cancelled);
    return new Judgement(
        kit,
        lineupId,
        table,
        grid,
        ring(grid),
        ring(MixGrid.of(table, all, kit.washes(), cancelled)),
        List.of());
  }

  private static Ring ring(MixGrid grid) {
    Ring.Gatherer gatherer = new Ring.Gatherer();
    for (int row = 0; row < grid.size(); row++) {
      for (int column = row; column < grid.size(); column++) {
        for (int ratio = 0; ratio < Ratio.GRID.size(); ratio++) {
          for (Wash wash : Wash.values()) {
            Lab lab = grid.lab(row, column, ratio, wash);
            gatherer.add(Oklab.ofD65(lab.toXyz(Light.D65.white())).toOklch());
          }
        }
      }
    }
    return gatherer.ring();
  }
}
