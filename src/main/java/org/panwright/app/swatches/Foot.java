package org.panwright.app.swatches;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.app.fx.Sentence;
import org.panwright.words.SwatchesWords;

/**
 * The foot of what was read: the work under way, the button that keeps what was read, and what came
 * of that.
 */
public final class Foot extends VBox {
  private final WorkBar work;
  private final Button keep;
  private final Label status = Sentence.of("");

  /**
   * @param label on the button
   * @param keep what it does
   */
  public Foot(WorkBar work, String label, Runnable keep) {
    super(8);
    this.work = work;
    this.keep = new Button(label);
    this.keep.getStyleClass().add("primary");
    this.keep.setMinWidth(Region.USE_PREF_SIZE);
    this.keep.setOnAction(event -> keep.run());
    HBox line = new HBox(10, this.keep, status);
    line.setAlignment(Pos.CENTER_LEFT);
    getChildren().setAll(work, line);
  }

  /** Says what came of it; nothing if empty. */
  public void say(String sentence) {
    status.setText(sentence);
  }

  /** Lets the button be pressed, or not. */
  public void allow(boolean canKeep) {
    keep.setDisable(!canKeep);
  }

  /** Takes the keyboard to the button. */
  public void focusButton() {
    keep.requestFocus();
  }

  /** Shows how far the paints have come with learning. */
  public void show(Learning.Stage stage) {
    switch (stage) {
      case DONE -> work.hide();
      case RUNNING -> work.run(SwatchesWords.FITTING);
      case LEFT_OFF -> work.leftOff(SwatchesWords.LEFT_OFF, SwatchesWords.LEARN);
    }
  }
}
