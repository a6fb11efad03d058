package org.panwright.app.choose;

import java.util.List;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyEvent;
import org.panwright.kit.PaintWish;
import org.panwright.paint.Paint;

/**
 * What is said of each paint of the shelf: by the choice in its row, or by left and right in the
 * row gone to. Only rows in sight are built, however long the shelf.
 */
final class WishList extends ListView<Paint> {
  private static final double ROW = 34;
  private static final int MOST_ROWS = 12;

  private final ChooseModel model;

  WishList(ChooseModel model) {
    this.model = model;
    getStyleClass().addAll("framed", "wish-list");
    setFixedCellSize(ROW);
    setCellFactory(list -> new WishCell(model));
    addEventFilter(KeyEvent.KEY_PRESSED, this::act);
    model.session().historyProperty().addListener(changed -> follow());
    model.session().lineupProperty().addListener(changed -> refresh());
    model.wishesProperty().addListener(changed -> refresh());
    follow();
  }

  private void follow() {
    List<Paint> paints = model.session().kit().shelf().paints();
    if (!getItems().equals(paints)) {
      getItems().setAll(paints);
      double rows = Math.max(1, Math.min(MOST_ROWS, paints.size()));
      setMinHeight(rows * ROW + 4);
      setPrefHeight(rows * ROW + 4);
    }
  }

  private void act(KeyEvent event) {
    Paint paint = getSelectionModel().getSelectedItem();
    if (paint == null) {
      return;
    }
    switch (event.getCode()) {
      case LEFT -> turn(paint, -1);
      case RIGHT -> turn(paint, 1);
      default -> {
        return;
      }
    }
    event.consume();
  }

  private void turn(Paint paint, int by) {
    List<PaintWish> choices = model.choices(paint.id());
    int next = choices.indexOf(model.wish(paint.id())) + by;
    if (next >= 0 && next < choices.size()) {
      model.ask(wishes -> wishes.with(paint.id(), choices.get(next)));
    }
  }
}
