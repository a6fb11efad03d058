package org.panwright.app.papers;

import javafx.scene.control.CheckBox;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.panwright.print.PaperKind;
import org.panwright.words.PaperViewWords;
import org.panwright.words.PaperWords;

/** The kinds of papers; the one picked is shown, those ticked are saved together. */
final class PaperList extends ListView<PaperKind> {
  private static final double ROW = 34;

  private final PapersModel model;

  PaperList(PapersModel model) {
    this.model = model;
    getStyleClass().add("paper-list");
    getItems().setAll(PaperKind.values());
    setCellFactory(list -> new Row());
    setFixedCellSize(ROW);
    setPrefHeight(ROW * getItems().size() + 2);
    setMinHeight(ROW * 3);
    setAccessibleText(PaperViewWords.KINDS);
    getSelectionModel().select(model.kindProperty().get());
    getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (property, before, now) -> {
              if (now != null) {
                model.kindProperty().set(now);
              }
            });
    addEventFilter(
        KeyEvent.KEY_PRESSED,
        key -> {
          PaperKind picked = getSelectionModel().getSelectedItem();
          if (key.getCode() == KeyCode.SPACE && picked != null) {
            model.tick(picked, !model.isTicked(picked));
            refresh();
            key.consume();
          }
        });
  }

  private final class Row extends ListCell<PaperKind> {
    private final CheckBox tick = new CheckBox();

    Row() {
      tick.setFocusTraversable(false);
      tick.setOnAction(event -> model.tick(getItem(), tick.isSelected()));
      setGraphicTextGap(8);
    }

    @Override
    protected void updateItem(PaperKind kind, boolean empty) {
      super.updateItem(kind, empty);
      setGraphic(empty ? null : tick);
      setText(empty ? null : PaperWords.name(kind.name()));
      if (!empty) {
        tick.setSelected(model.isTicked(kind));
        tick.setAccessibleText(PaperViewWords.amongAll(PaperWords.name(kind.name())));
      }
    }
  }
}
