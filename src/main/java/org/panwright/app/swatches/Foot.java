package org.panwright.app.swatches;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/** The line at the foot of what was read: the button that keeps it, and what came of it. */
public final class Foot {
  private Foot() {}

  /** The line; the button keeps its words whole. */
  public static HBox of(Button keep, Label status) {
    keep.setMinWidth(Region.USE_PREF_SIZE);
    HBox line = new HBox(10, keep, status);
    line.setAlignment(Pos.CENTER_LEFT);
    return line;
  }
}
