package org.panwright.app.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import org.panwright.app.fx.Latest;
import org.panwright.kit.Kit;
import org.panwright.paint.Optics;
import org.panwright.paint.PigmentLibrary;
import org.panwright.swatch.fit.FitRefusal;
import org.panwright.swatch.fit.FitRefusedException;
import org.panwright.swatch.fit.FitWatch;
import org.panwright.swatch.grid.GridJudgement;
import org.panwright.swatch.grid.GridReading;
import org.panwright.swatch.grid.PaintedGrid;

/**
 * Compares the cells of a chart with what they foretell of each other. Runs away from the JavaFX
 * thread; the newest request wins.
 */
final class Comparing {
  private final PigmentLibrary library;
  private final Executor home;
  private final Latest<Outcome> comparing;

  /**
   * What came out: one of the two.
   *
   * @param refusal why nothing can be foretold
   */
  record Outcome(Optional<GridJudgement> judgement, Optional<FitRefusal> refusal) {}

  /**
   * @param away where cells are compared
   * @param home the JavaFX thread
   */
  Comparing(PigmentLibrary library, Executor away, Executor home) {
    this.library = library;
    this.home = home;
    comparing = new Latest<>(away, home);
  }

  /**
   * Compares cells.
   *
   * @param kit with the chart's paints
   * @param share told now and then what share of it is done, 0..1
   * @param done told what came out
   * @param failed told of a fault of the program
   */
  void compare(
      GridReading reading,
      Kit kit,
      DoubleConsumer share,
      Consumer<Outcome> done,
      Consumer<RuntimeException> failed) {
    Map<String, Optics> known = known(kit, reading.grid());
    comparing.request(
        outdated -> {
          FitWatch watch = new FitWatch(outdated, Latest.telling(outdated, home, share));
          try {
            return new Outcome(
                Optional.of(GridJudgement.of(reading, known, kit.paper(), kit.washes(), watch)),
                Optional.empty());
          } catch (FitRefusedException refused) {
            return new Outcome(Optional.empty(), Optional.of(refused.refusal()));
          }
        },
        done,
        failed);
  }

  /** Leaves off; nothing is told. */
  void stop() {
    comparing.cancel();
  }

  private Map<String, Optics> known(Kit kit, PaintedGrid grid) {
    Map<String, Optics> known = new LinkedHashMap<>();
    List<String> ids = new ArrayList<>(grid.rowPaints());
    ids.addAll(grid.columnPaints());
    for (String id : ids) {
      kit.shelf().find(id).ifPresent(paint -> known.put(id, paint.optics(library)));
    }
    return known;
  }
}
