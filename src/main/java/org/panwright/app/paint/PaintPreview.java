package org.panwright.app.paint;

import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Orientation;
import javafx.scene.control.Label;
import javafx.scene.layout.Background;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.panwright.app.chip.ChipInk;
import org.panwright.app.chip.Tones;
import org.panwright.app.fx.Sentence;
import org.panwright.words.ColourWords;
import org.panwright.words.PaintEditorWords;
import org.panwright.words.PaintWords;

/**
 * The predicted chip of the paint being edited, with where it comes from and how far to trust it.
 */
final class PaintPreview extends VBox {
  private final ChipInk ink = new ChipInk(Orientation.HORIZONTAL, 2);
  private final Region chip = new Region();
  private final Label ends = new Label();
  private final Label badge = new Label();
  private final Label trust = Sentence.of("", "soft", "small");

  PaintPreview(ObservableValue<Optional<Tones>> tones) {
    super(6);
    chip.setMinHeight(64);
    chip.setPrefHeight(64);
    StackPane ground = new StackPane(chip);
    ground.getStyleClass().add("swatch-ground");
    ground.setStyle("-fx-padding: 0.8em; -fx-background-radius: 0.4em");
    badge.getStyleClass().add("badge");
    badge.setMinWidth(USE_PREF_SIZE);
    ends.getStyleClass().add("soft");
    Region room = new Region();
    HBox.setHgrow(room, Priority.ALWAYS);
    getChildren().setAll(ground, new HBox(8, ends, room, badge), trust);
    tones.addListener((property, before, now) -> show(now));
    show(tones.getValue());
  }

  private void show(Optional<Tones> tones) {
    chip.setBackground(tones.map(ink::of).orElse(Background.EMPTY));
    badge.setVisible(tones.isPresent());
    badge.setText(tones.map(t -> PaintWords.badge(t.source())).orElse(""));
    ends.setText(
        tones
            .map(
                t ->
                    PaintEditorWords.from(
                        ColourWords.describe(t.masstone()), ColourWords.describe(t.body())))
            .orElse(""));
    trust.setText(
        tones
            .map(t -> PaintWords.explain(t.source(), t.expectedError()))
            .orElse(PaintEditorWords.NO_PREVIEW));
    chip.setAccessibleText(ends.getText() + ". " + trust.getText());
  }
}
