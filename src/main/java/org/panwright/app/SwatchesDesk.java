package org.panwright.app;

import java.time.LocalDate;
import java.util.List;
import javafx.application.Platform;
import org.panwright.app.chart.ChartModel;
import org.panwright.app.chart.ChartSide;
import org.panwright.app.spots.SpotsModel;
import org.panwright.app.spots.SpotsSide;
import org.panwright.app.swatches.BlankSheet;
import org.panwright.app.swatches.LateWay;
import org.panwright.app.swatches.Learning;
import org.panwright.app.swatches.PictureModel;
import org.panwright.app.swatches.SheetModel;
import org.panwright.app.swatches.SheetSide;
import org.panwright.app.swatches.SwatchesView;

/** Puts the view of swatches together from the ways of reading them. */
final class SwatchesDesk {
  private final Means means;
  private final SheetModel sheet;
  private final ChartModel chart;
  private final SpotsModel spots;
  private final SwatchesView view;

  SwatchesDesk(Means means) {
    this.means = means;
    PictureModel pictures =
        new PictureModel(means.workers().opening(), Platform::runLater, means.faults()::take);
    sheet =
        new SheetModel(
            means.session(),
            pictures,
            means.library(),
            learning(),
            means.workers().reading(),
            Platform::runLater,
            means.faults()::take);
    chart =
        new ChartModel(
            means.session(),
            pictures,
            means.library(),
            learning(),
            means.workers().reading(),
            Platform::runLater,
            means.faults()::take);
    spots =
        new SpotsModel(
            means.session(),
            pictures,
            learning(),
            means.workers().reading(),
            Platform::runLater,
            means.faults()::take);
    BlankSheet blank =
        new BlankSheet(
            means.session(), means.workers().files(), Platform::runLater, means.faults()::take);
    view =
        new SwatchesView(
            pictures,
            List.of(
                new SheetSide(sheet, blank, means.dialogs()),
                new LateWay(ChartSide.WORDS, () -> new ChartSide(chart)),
                new LateWay(SpotsSide.WORDS, () -> new SpotsSide(spots))),
            means.dialogs(),
            means.workers().later());
  }

  /** The view. */
  SwatchesView view() {
    return view;
  }

  /** Whether what is shown is of the picture and the kit as they are now. */
  boolean isSettled() {
    return sheet.isSettled() && chart.isSettled() && spots.isSettled();
  }

  private Learning learning() {
    return new Learning(
        means.session(),
        means.library(),
        LocalDate::now,
        means.workers().reading(),
        Platform::runLater,
        means.faults()::take);
  }
}
