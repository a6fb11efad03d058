package org.panwright.app.findings;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.VBox;
import org.panwright.app.fx.SteadyColumn;

/** A part of the list that is folded up, and not even built, until it is asked for. */
final class Fold extends SteadyColumn {
  private final ToggleButton toggle = new ToggleButton();
  private final VBox rows = new VBox();
  private String title = "";
  private Supplier<? extends List<? extends Node>> content = List::of;

  Fold() {
    getStyleClass().add("fold");
    toggle.getStyleClass().addAll("quiet", "small");
    rows.getStyleClass().add("fold");
    toggle.setOnAction(event -> refresh());
    getChildren().setAll(toggle);
  }

  /**
   * Has something else in it; it stays open or folded up as it is.
   *
   * @param fresh builds the rows, when they are seen
   */
  void hold(String newTitle, Supplier<? extends List<? extends Node>> fresh) {
    title = newTitle;
    content = fresh;
    refresh();
  }

  /** Takes the keyboard. */
  void takeFocus() {
    toggle.requestFocus();
  }

  private void refresh() {
    boolean isOpen = toggle.isSelected();
    toggle.setText((isOpen ? "▾  " : "▸  ") + title);
    rows.getChildren().setAll(isOpen ? content.get() : List.of());
    if (isOpen && getChildren().size() == 1) {
      getChildren().add(rows);
    } else if (!isOpen) {
      getChildren().remove(rows);
    }
  }
}
