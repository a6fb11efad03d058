package org.panwright.app.swatches;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.Swatches;
import org.panwright.colour.Lab;
import org.panwright.paint.Paint;
import org.panwright.words.SwatchesWords;

/** One row of a read sheet: its paint, its patches above what the model makes of them. */
final class RowCard extends VBox {
  private static final double CHIP_WIDTH = 62;
  private static final double CHIP_HEIGHT = 20;

  RowCard(SheetRow row, SheetModel model, Optional<String> learnt) {
    getStyleClass().add("row-card");
    Label name = new Label(SwatchesWords.row(row.reading().row() + 1));
    name.getStyleClass().add("soft");
    name.setMinWidth(Region.USE_PREF_SIZE);
    HBox head = new HBox(8, name, paints(row, model));
    head.setAlignment(Pos.CENTER_LEFT);
    HBox chips = new HBox(6);
    chips.getStyleClass().addAll("swatch-ground", "row-chips");
    row.chips().forEach(chip -> chips.getChildren().add(chip(chip)));
    getChildren().setAll(head, chips);
    learnt.ifPresent(
        words -> {
          Label label = new Label(words);
          label.getStyleClass().addAll("soft", "small");
          getChildren().add(label);
        });
  }

  private static ComboBox<Optional<Paint>> paints(SheetRow row, SheetModel model) {
    ComboBox<Optional<Paint>> box = new ComboBox<>();
    List<Optional<Paint>> all = new ArrayList<>();
    all.add(Optional.empty());
    model.paints().forEach(paint -> all.add(Optional.of(paint)));
    box.getItems().setAll(all);
    box.setConverter(
        new ByLabel<>(
            paint -> paint.map(p -> p.name() + "  " + p.codes()).orElse(SwatchesWords.NO_PAINT)));
    box.setValue(
        all.stream()
            .filter(paint -> paint.map(Paint::id).equals(row.paintId()))
            .findFirst()
            .orElse(Optional.empty()));
    box.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(box, javafx.scene.layout.Priority.ALWAYS);
    box.setVisibleRowCount(16);
    box.setAccessibleText(SwatchesWords.row(row.reading().row() + 1));
    box.valueProperty()
        .addListener(
            (property, before, now) ->
                model.say(
                    row.reading().row(), now == null ? Optional.empty() : now.map(Paint::id)));
    return box;
  }

  private static VBox chip(SheetRow.Chip chip) {
    VBox colours = new VBox(half(Optional.of(chip.read())), half(chip.model()));
    String distance =
        chip.distance()
            .map(d -> SwatchesWords.distance(d, chip.spread()))
            .orElse(SwatchesWords.spread(chip.spread()));
    String told =
        chip.words() + ": " + distance + (chip.beyond() ? "; " + SwatchesWords.BEYOND : "");
    Tooltip.install(colours, new Tooltip(told));
    Label below =
        new Label(
            chip.beyond()
                ? SwatchesWords.LEFT_OUT
                : chip.distance().map("%.1f"::formatted).orElse(""));
    below.getStyleClass().addAll("small", chip.beyond() ? "warn" : "soft");
    Label above = new Label(chip.words());
    above.getStyleClass().addAll("small", "soft");
    VBox box = new VBox(2, above, colours, below);
    box.setAccessibleText(told);
    return box;
  }

  private static Rectangle half(Optional<Lab> colour) {
    Rectangle half = new Rectangle(CHIP_WIDTH, CHIP_HEIGHT);
    half.setFill(colour.map(Swatches::color).orElse(Color.TRANSPARENT));
    return half;
  }
}
