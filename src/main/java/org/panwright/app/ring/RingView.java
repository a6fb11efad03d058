package org.panwright.app.ring;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.analysis.reach.Ring;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.app.fx.Sentence;
import org.panwright.words.RingWords;

/** The hue ring with its choice of lightness. */
public final class RingView extends VBox {
  /** The ring alone, for a picture of it. */
  public static CanvasRegion figure(RingModel model) {
    return new RingCanvas(model.pictureProperty(), Optional.empty());
  }

  public RingView(RingModel model) {
    getStyleClass().addAll("pane", "ring-view");
    Label title = new Label(RingWords.TITLE);
    title.getStyleClass().add("pane-title");
    title.setMinWidth(Region.USE_PREF_SIZE);
    title.setTooltip(new Tooltip(RingWords.MEANING));
    ChoiceBox<Ring.Part> parts = new ChoiceBox<>();
    parts.getItems().setAll(Ring.Part.values());
    parts.setConverter(new ByLabel<>(part -> RingWords.part(part)));
    parts.setAccessibleText(RingWords.PARTS);
    parts.setTooltip(new Tooltip(RingWords.PARTS));
    parts.valueProperty().bindBidirectional(model.partProperty());
    Region space = new Region();
    HBox.setHgrow(space, Priority.ALWAYS);
    HBox head = new HBox(title, space, parts);
    head.setAlignment(Pos.CENTER_LEFT);
    head.getStyleClass().add("pane-head");
    RingCanvas canvas = new RingCanvas(model.pictureProperty(), Optional.of(model.cursor()));
    VBox.setVgrow(canvas, Priority.ALWAYS);
    Label key = Sentence.of(RingWords.KEY, "readout");
    getChildren().addAll(head, canvas, key);
    Runnable tell =
        () -> {
          canvas.setAccessibleText(model.summary());
          boolean isGone = model.cursor().placeProperty().get().isPresent();
          key.setText(
              canvas.isFocused() ? isGone ? model.summary() : RingWords.KEYS : RingWords.KEY);
        };
    model.pictureProperty().addListener(o -> tell.run());
    model.cursor().placeProperty().addListener(o -> tell.run());
    canvas.focusedProperty().addListener(o -> tell.run());
    tell.run();
  }
}
