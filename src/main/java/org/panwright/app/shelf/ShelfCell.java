package org.panwright.app.shelf;

import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.panwright.app.chip.ChipInk;
import org.panwright.app.fx.LateTip;
import org.panwright.paint.Ownership;
import org.panwright.words.ShelfWords;

/** One row of the shelf: chip, name, codes and family, where it sits, how sure its colour is. */
final class ShelfCell extends ListCell<ShelfRow> {
  private static final PseudoClass NOT_OWNED = PseudoClass.getPseudoClass("not-owned");

  private final ChipInk ink;
  private final Region chip = new Region();
  private final Region beyond = new Region();
  private final Label name = new Label();
  private final Label detail = new Label();
  private final Label place = new Label();
  private final Label badge = new Label();
  private final HBox row;

  ShelfCell(ChipInk ink) {
    this.ink = ink;
    getStyleClass().add("shelf-cell");
    setPrefWidth(0);
    chip.getStyleClass().add("chip");
    beyond.getStyleClass().add("beyond-screen");
    StackPane ground = new StackPane(chip, beyond);
    ground.getStyleClass().addAll("swatch-ground", "chip-ground");
    name.getStyleClass().add("paint-name");
    detail.getStyleClass().addAll("soft", "small");
    place.getStyleClass().add("place-mark");
    badge.getStyleClass().addAll("soft", "source-mark");
    StackPane.setAlignment(beyond, Pos.BOTTOM_RIGHT);
    ground.setMaxHeight(Region.USE_PREF_SIZE);
    VBox texts = new VBox(line(name, place), line(detail, badge));
    texts.getStyleClass().add("texts");
    texts.setMinWidth(0);
    HBox.setHgrow(texts, Priority.ALWAYS);
    row = new HBox(ground, texts);
    row.getStyleClass().add("row");
    LateTip.on(this, () -> getItem() == null ? "" : getItem().explained());
  }

  private static HBox line(Label first, Label mark) {
    first.setMinWidth(0);
    first.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(first, Priority.ALWAYS);
    mark.setMinWidth(Region.USE_PREF_SIZE);
    HBox line = new HBox(first, mark);
    line.getStyleClass().add("line");
    return line;
  }

  @Override
  protected void updateItem(ShelfRow item, boolean empty) {
    super.updateItem(item, empty);
    if (empty || item == null) {
      setGraphic(null);
      setAccessibleText(null);
      return;
    }
    chip.setBackground(ink.of(item.tones()));
    beyond.setVisible(!item.tones().isExact());
    name.setText(item.paint().name());
    detail.setText(item.codesAndFamily());
    place.setText(item.place());
    place.setVisible(!item.wells().isEmpty());
    place.setManaged(!item.wells().isEmpty());
    badge.setText(ShelfWords.badge(item.tones().source(), item.tones().expectedError()));
    pseudoClassStateChanged(NOT_OWNED, item.paint().ownership() != Ownership.OWNED);
    setAccessibleText(item.spoken());
    setGraphic(row);
  }
}
