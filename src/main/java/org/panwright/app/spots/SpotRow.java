package org.panwright.app.spots;

import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.Sentence;
import org.panwright.app.swatches.PaintChoice;
import org.panwright.app.swatches.PatchChip;
import org.panwright.app.swatches.ReadAndModel;
import org.panwright.swatch.spot.SpotKind;
import org.panwright.words.SpotsWords;

/** One spot: what it is of, its colour beside the model's. */
final class SpotRow extends VBox {
  private static final PseudoClass PICKED = PseudoClass.getPseudoClass("picked");
  private static final double NUMBER_WIDTH = 22;

  private final SpotsModel model;
  private final ChoiceBox<SpotKind> kind = new ChoiceBox<>();
  private final PaintChoice paint;
  private final HBox colours = new HBox(8);
  private final Label figures = Sentence.of("", "small");
  private Optional<PatchChip> chip = Optional.empty();
  private boolean filling;

  SpotRow(int place, SpotsModel model) {
    super(4);
    this.model = model;
    getStyleClass().addAll("row-card", "spot-row");
    Label number = new Label(String.valueOf(place + 1));
    number.setMinWidth(NUMBER_WIDTH);
    number.getStyleClass().add("strong");
    number.setLabelFor(kind);
    kind.getItems().setAll(SpotKind.values());
    kind.setConverter(new ByLabel<>(SpotsWords::kind));
    kind.setAccessibleText(SpotsWords.spot(place + 1));
    kind.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(kind, Priority.ALWAYS);
    kind.valueProperty()
        .addListener(
            (property, before, now) -> {
              if (!filling) {
                model
                    .marks()
                    .change(place, model.marks().spotsProperty().get().get(place).withKind(now));
              }
            });
    paint =
        new PaintChoice(
            Optional.of(SpotsWords.NO_PAINT),
            id ->
                model
                    .marks()
                    .change(place, model.marks().spotsProperty().get().get(place).withPaint(id)));
    paint.setAccessibleText(SpotsWords.PAINT);
    paint.managedProperty().bind(paint.visibleProperty());
    Button remove = new Button(SpotsWords.REMOVE);
    remove.getStyleClass().add("quiet");
    remove.setAccessibleText(SpotsWords.remove(place + 1));
    remove.setOnAction(event -> model.marks().remove(place));
    HBox head = new HBox(8, number, kind, remove);
    head.setAlignment(Pos.CENTER_LEFT);
    colours.setAlignment(Pos.CENTER_LEFT);
    colours.getStyleClass().addAll("swatch-ground", "row-chips");
    setOnMousePressed(event -> model.marks().pickedProperty().set(place));
    getChildren().setAll(head, paint, colours);
  }

  void show(SpotsState.Row row, boolean picked) {
    pseudoClassStateChanged(PICKED, picked);
    filling = true;
    kind.setValue(row.spot().kind());
    filling = false;
    paint.setVisible(row.spot().kind().isCoat());
    paint.show(model.paints(), row.spot().paintId());
    figures.setText(
        row.chip().map(c -> SpotsWords.figures(c.read(), c.spread())).orElse(SpotsWords.NOT_READ));
    if (colours.getChildren().isEmpty() || !chip.equals(row.chip())) {
      chip = row.chip();
      colours.getChildren().clear();
      chip.ifPresent(c -> colours.getChildren().add(new ReadAndModel(c)));
      colours.getChildren().add(figures);
    }
  }
}
