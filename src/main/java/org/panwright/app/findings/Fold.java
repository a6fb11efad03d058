package org.panwright.app.findings;

import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.VBox;

/** A part of the list that is folded up until it is asked for. */
final class Fold extends VBox {
  /**
   * @param open whether it is unfolded; outlives the list
   */
  Fold(String title, List<? extends Node> content, BooleanProperty open) {
    getStyleClass().add("fold");
    ToggleButton fold = new ToggleButton();
    fold.getStyleClass().addAll("quiet", "small");
    VBox rows = new VBox();
    rows.getStyleClass().add("fold");
    rows.getChildren().setAll(content);
    fold.setSelected(open.get());
    fold.selectedProperty().addListener((o, was, now) -> open.set(now));
    fold.textProperty().bind(fold.selectedProperty().map(shown -> (shown ? "▾  " : "▸  ") + title));
    rows.visibleProperty().bind(fold.selectedProperty());
    rows.managedProperty().bind(fold.selectedProperty());
    getChildren().setAll(fold, rows);
  }
}
