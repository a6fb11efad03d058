package org.panwright.app.swatches;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.app.fx.Sentence;
import org.panwright.words.SwatchesWords;

/** One row of a read sheet: its paint, its patches above what the model makes of them. */
final class RowCard extends VBox {
  private final SheetModel model;
  private final PaintChoice paint;
  private final HBox chips = new HBox(6);
  private final Label learnt = Sentence.of("", "soft", "small");
  private Optional<SheetRow> shown = Optional.empty();

  /**
   * @param row from 0; a card stays with its row
   */
  RowCard(int row, SheetModel model) {
    this.model = model;
    getStyleClass().add("row-card");
    paint = new PaintChoice(Optional.of(SwatchesWords.NO_PAINT), id -> model.say(row, id));
    paint.setAccessibleText(SwatchesWords.row(row + 1));
    HBox.setHgrow(paint, Priority.ALWAYS);
    Label number = new Label(SwatchesWords.row(row + 1));
    number.getStyleClass().add("soft");
    number.setMinWidth(Region.USE_PREF_SIZE);
    number.setLabelFor(paint);
    HBox head = new HBox(8, number, paint);
    head.setAlignment(Pos.CENTER_LEFT);
    chips.getStyleClass().addAll("swatch-ground", "row-chips");
    learnt.managedProperty().bind(learnt.textProperty().isNotEmpty());
    getChildren().setAll(head, chips, learnt);
  }

  /** Shows a row, changing only what is not as it was. */
  void show(SheetRow row) {
    paint.show(model.paints(), row.paintId());
    if (shown.map(before -> !before.chips().equals(row.chips())).orElse(true)) {
      chips.getChildren().setAll(row.chips().stream().map(ReadAndModel::new).toList());
    }
    learnt.setText(row.learnt().orElse(""));
    shown = Optional.of(row);
  }
}
