package org.panwright.app.window;

import javafx.beans.value.ObservableValue;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.OverrunStyle;
import javafx.scene.control.Separator;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.panwright.app.fx.Action;
import org.panwright.words.WindowWords;

/** The bar on top: the kit's name, the lineup, undo and redo. */
final class TopBar extends HBox {
  /**
   * @param name the kit's name with its mark
   * @param file where the kit is kept, shown as a tip
   */
  TopBar(
      ObservableValue<String> name,
      ObservableValue<String> file,
      Node lineups,
      Action undo,
      Action redo) {
    getStyleClass().add("top-bar");
    Label kit = new Label();
    kit.getStyleClass().add("kit-name");
    kit.textProperty().bind(name);
    kit.setMinWidth(80);
    kit.setMaxWidth(320);
    kit.setTextOverrun(OverrunStyle.CENTER_ELLIPSIS);
    Tooltip tip = new Tooltip();
    tip.textProperty().bind(file);
    kit.setTooltip(tip);
    Region room = new Region();
    HBox.setHgrow(room, Priority.ALWAYS);
    getChildren()
        .setAll(
            kit,
            new Separator(Orientation.VERTICAL),
            lineups,
            room,
            undo.button("↶  " + WindowWords.UNDO),
            redo.button("↷  " + WindowWords.REDO));
  }
}
