package org.panwright.app.choose;

import javafx.geometry.Pos;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.panwright.app.fx.ByLabel;
import org.panwright.kit.PaintWish;
import org.panwright.paint.Paint;
import org.panwright.words.ChooseViewWords;

/** A paint and what is said of it. */
final class WishCell extends ListCell<Paint> {
  private final ChooseModel model;
  private final Label name = new Label();
  private final ChoiceBox<PaintWish> wish = new ChoiceBox<>();
  private final HBox row = new HBox(6, name, wish);
  private boolean following;

  WishCell(ChooseModel model) {
    this.model = model;
    name.setMaxWidth(Double.MAX_VALUE);
    name.setMinWidth(0);
    HBox.setHgrow(name, Priority.ALWAYS);
    row.setAlignment(Pos.CENTER_LEFT);
    wish.setConverter(new ByLabel<>(ChooseViewWords::wish));
    wish.setPrefWidth(140);
    wish.setMinWidth(140);
    wish.setFocusTraversable(false);
    wish.valueProperty()
        .addListener(
            (o, was, is) -> {
              Paint paint = getItem();
              if (!following && paint != null && is != null) {
                model.ask(wishes -> wishes.with(paint.id(), is));
              }
            });
    setPrefWidth(0);
  }

  @Override
  protected void updateItem(Paint paint, boolean isEmpty) {
    super.updateItem(paint, isEmpty);
    if (isEmpty || paint == null) {
      setGraphic(null);
      return;
    }
    following = true;
    PaintWish said = model.wish(paint.id());
    name.setText(paint.name());
    if (!wish.getItems().equals(model.choices(paint.id()))) {
      wish.getItems().setAll(model.choices(paint.id()));
    }
    wish.setValue(said);
    wish.setAccessibleText(paint.name());
    setAccessibleText(ChooseViewWords.said(paint.name(), said));
    following = false;
    setGraphic(row);
  }
}
