package org.panwright.app.fx;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Labels that hold whole sentences. */
public final class Sentence {
  private Sentence() {}

  /**
   * A label that wraps and keeps the height its lines need, however little room there is.
   *
   * @param styles its style classes
   */
  public static Label of(String text, String... styles) {
    Label label = new Label(text);
    label.getStyleClass().addAll(styles);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }
}
