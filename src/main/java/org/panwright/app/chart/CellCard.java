package org.panwright.app.chart;

import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;
import org.panwright.app.fx.Sentence;
import org.panwright.app.fx.Swatches;
import org.panwright.colour.Lab;
import org.panwright.swatch.grid.CellVerdict;
import org.panwright.swatch.grid.JudgedCell;
import org.panwright.words.ChartReadingWords;

/** The cell looked at: what it holds, as painted and as foretold, and what to do with it. */
final class CellCard extends VBox {
  private static final double WIDTH = 110;
  private static final double HEIGHT = 44;
  private static final double GAP = 6;

  private final ChartModel model;
  private final Label name = Sentence.of("", "strong");
  private final Rectangle painted = new Rectangle(WIDTH, HEIGHT);
  private final Rectangle foretold = new Rectangle(WIDTH, HEIGHT);
  private final Label foretoldName = new Label(ChartReadingWords.FORETOLD);
  private final Label figures = Sentence.of("", "soft");
  private final Label verdict = Sentence.of("", "warn");
  private final CheckBox kept = new CheckBox(ChartReadingWords.KEEP_CELL);
  private final Button exchange = new Button(ChartReadingWords.EXCHANGE_CELLS);

  CellCard(ChartModel model) {
    super(GAP);
    this.model = model;
    getStyleClass().add("row-card");
    kept.setOnAction(event -> model.keepPicked(kept.isSelected()));
    exchange.setOnAction(event -> model.exchangePicked());
    HBox colours =
        new HBox(
            GAP,
            named(new Label(ChartReadingWords.PAINTED), painted),
            named(foretoldName, foretold));
    colours.getStyleClass().addAll("swatch-ground", "row-chips");
    exchange.managedProperty().bind(exchange.visibleProperty());
    verdict.managedProperty().bind(verdict.textProperty().isNotEmpty());
    managedProperty().bind(visibleProperty());
    getChildren().setAll(name, colours, figures, verdict, kept, exchange);
    model.cursor().pickedProperty().addListener(changed -> show());
    model.stateProperty().addListener(changed -> show());
    show();
  }

  private static VBox named(Label label, Rectangle colour) {
    label.getStyleClass().addAll("soft", "small");
    return new VBox(2, label, colour);
  }

  private void show() {
    Optional<ChartCell> looked = model.cursor().picked();
    setVisible(looked.isPresent());
    looked.ifPresent(this::show);
  }

  private void show(ChartCell cell) {
    name.setText(ChartReadingWords.cell(cell.reading(), model::name));
    painted.setFill(Swatches.color(cell.painted()));
    Optional<Lab> lab = cell.predicted();
    foretold.setFill(lab.map(Swatches::color).orElse(Color.TRANSPARENT));
    boolean agrees = cell.verdict() == CellVerdict.AGREES;
    foretoldName.setText(agrees ? ChartReadingWords.FORETOLD : ChartReadingWords.FORETOLD_USUAL);
    figures.setText(
        ChartReadingWords.figures(
            cell.reading().patch().spread(), cell.judged().map(JudgedCell::distance)));
    String partner =
        cell.partner().isPresent()
            ? ChartReadingWords.place(
                model.stateProperty().get().cells().get(cell.partner().getAsInt()).reading())
            : "";
    verdict.setText(ChartReadingWords.verdict(cell.verdict(), partner, cell.isBeyondPicture()));
    kept.setSelected(cell.kept());
    kept.setDisable(cell.isBeyondPicture() || cell.judged().isEmpty());
    exchange.setVisible(cell.partner().isPresent());
  }
}
