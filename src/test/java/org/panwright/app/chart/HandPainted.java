package org.panwright.app.chart;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import org.panwright.analysis.judge.Judge;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.swatches.Learning;
import org.panwright.app.swatches.PictureModel;
import org.panwright.paint.PigmentLibrary;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.grid.PaintedCharts;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.sheet.SimulatedCamera;

/** Models that do everything at once, on a kit whose lineup is that of a painted chart. */
final class HandPainted {
  static final List<String> PAINTS = List.of("yellow", "rose", "blue", "earth");
  static final PaintedCharts CHARTS = new PaintedCharts(PAINTS);
  static final LocalDate DAY = LocalDate.of(2026, 11, 29);
  private static final SimulatedCamera CAMERA = SimulatedCamera.phone(760, 1000);
  private static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();

  /** Its lineup is not judged: that takes long and nothing here asks for it. */
  final Session session =
      new Session(
          new Judge(LIBRARY), judging -> {}, Sessions.AT_ONCE, Sessions::fail, CHARTS.kit());

  final PictureModel pictures =
      new PictureModel(Sessions.AT_ONCE, Sessions.AT_ONCE, Sessions::fail);
  final ChartModel chart;

  HandPainted() {
    this(Sessions.AT_ONCE, Sessions.AT_ONCE);
  }

  /**
   * @param reader where cells are read and compared
   * @param learner where the paints are fitted
   */
  HandPainted(Executor reader, Executor learner) {
    chart =
        new ChartModel(
            session,
            pictures,
            LIBRARY,
            new Learning(session, LIBRARY, () -> DAY, learner, Sessions.AT_ONCE, Sessions::fail),
            reader,
            Sessions.AT_ONCE,
            Sessions::fail);
  }

  static Path save(Map<List<Integer>, List<PaintLoad>> cells, Path file) {
    return CAMERA.save(CHARTS.page(cells), file);
  }

  /** Puts the corners where the camera saw them. */
  void placeCorners() {
    List<Point> seen = CHARTS.corners(CHARTS.page(Map.of()), CAMERA);
    chart.setChosen(false);
    for (int i = 0; i < seen.size(); i++) {
      chart.corners().move(i, seen.get(i));
    }
    chart.setChosen(true);
  }
}
