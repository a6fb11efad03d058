package org.panwright.app.shelf;

import java.util.List;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.geometry.Orientation;
import javafx.scene.control.ListView;
import javafx.scene.control.skin.VirtualFlow;
import javafx.scene.input.Dragboard;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.TransferMode;
import org.panwright.app.chip.ChipInk;
import org.panwright.app.chip.DragPicture;
import org.panwright.app.hand.Held;
import org.panwright.app.hand.HeldOnDragboard;
import org.panwright.app.hand.Holding;

/** The list of the shelf: shows rows, tells the model what was picked, dragged or keyed. */
final class ShelfList extends ListView<ShelfRow> {
  private static final double CHIP_RADIUS = 2;

  private final ShelfModel model;
  private final ObservableList<ShelfRow> shown = FXCollections.observableArrayList();
  private boolean isReflecting;

  ShelfList(ShelfModel model) {
    this.model = model;
    getStyleClass().add("shelf-list");
    setItems(shown);
    ChipInk ink = new ChipInk(Orientation.HORIZONTAL, CHIP_RADIUS);
    setCellFactory(list -> cell(ink));
    getSelectionModel().selectedItemProperty().addListener((o, before, now) -> tellPicked(now));
    model.rowsProperty().addListener((o, before, now) -> show(now));
    model.pickedProperty().addListener((o, before, now) -> reflectPicked());
    addEventFilter(KeyEvent.KEY_PRESSED, this::act);
    show(model.rowsProperty().get());
  }

  /** The row picked in this list. */
  Optional<ShelfRow> picked() {
    return Optional.ofNullable(getSelectionModel().getSelectedItem());
  }

  /** Takes the focus, and picks the first row if none is. */
  void enter() {
    requestFocus();
    if (picked().isEmpty() && !shown.isEmpty()) {
      getSelectionModel().select(0);
      scrollTo(0);
    }
  }

  private ShelfCell cell(ChipInk ink) {
    ShelfCell cell = new ShelfCell(ink);
    cell.setOnDragDetected(event -> drag(cell, event));
    cell.setOnDragDone(event -> model.hand().cancel());
    cell.setOnMouseClicked(
        event -> {
          boolean isDouble = event.getButton() == MouseButton.PRIMARY && event.getClickCount() == 2;
          if (isDouble && cell.getItem() != null) {
            model.placeInNextEmpty(cell.getItem().paint().id());
          }
        });
    return cell;
  }

  private void drag(ShelfCell cell, MouseEvent event) {
    if (cell.getItem() == null || event.getButton() != MouseButton.PRIMARY) {
      return;
    }
    String paintId = cell.getItem().paint().id();
    Dragboard board = cell.startDragAndDrop(TransferMode.COPY_OR_MOVE);
    board.setContent(HeldOnDragboard.content(new Held.FromShelf(paintId)));
    board.setDragView(DragPicture.of(cell.getItem().tones()));
    model.pickUp(paintId, Holding.Means.POINTER);
    event.consume();
  }

  private void act(KeyEvent event) {
    Optional<String> id = picked().map(row -> row.paint().id());
    if (id.isEmpty() || event.isShortcutDown() || event.isAltDown()) {
      return;
    }
    switch (event.getCode()) {
      case ENTER, SPACE -> model.pickUp(id.get(), Holding.Means.KEYS);
      case DELETE, BACK_SPACE -> model.takeOut(id.get());
      default -> {
        return;
      }
    }
    event.consume();
  }

  private void tellPicked(ShelfRow row) {
    if (!isReflecting && row != null) {
      model.pick(row.paint().id());
    }
  }

  /** Exchanges only the rows that differ when the order stays, so that nothing jumps. */
  private void show(List<ShelfRow> rows) {
    isReflecting = true;
    try {
      if (hasSameOrder(rows)) {
        for (int i = 0; i < rows.size(); i++) {
          if (!shown.get(i).equals(rows.get(i))) {
            shown.set(i, rows.get(i));
          }
        }
      } else {
        shown.setAll(rows);
      }
    } finally {
      isReflecting = false;
    }
    reflectPicked();
  }

  private boolean hasSameOrder(List<ShelfRow> rows) {
    if (rows.size() != shown.size()) {
      return false;
    }
    for (int i = 0; i < rows.size(); i++) {
      if (!rows.get(i).paint().id().equals(shown.get(i).paint().id())) {
        return false;
      }
    }
    return true;
  }

  private void reflectPicked() {
    int wanted = model.pickedProperty().get().map(this::indexOf).orElse(-1);
    if (wanted == getSelectionModel().getSelectedIndex() && wanted >= 0) {
      return;
    }
    isReflecting = true;
    try {
      if (wanted < 0) {
        getSelectionModel().clearSelection();
      } else {
        getSelectionModel().clearAndSelect(wanted);
        reveal(wanted);
      }
    } finally {
      isReflecting = false;
    }
  }

  private int indexOf(String paintId) {
    for (int i = 0; i < shown.size(); i++) {
      if (shown.get(i).paint().id().equals(paintId)) {
        return i;
      }
    }
    return -1;
  }

  /** Scrolls only if the row is out of sight. */
  private void reveal(int index) {
    if (lookup(".virtual-flow") instanceof VirtualFlow<?> flow
        && flow.getFirstVisibleCell() != null
        && flow.getFirstVisibleCell().getIndex() <= index
        && index <= flow.getLastVisibleCell().getIndex()) {
      return;
    }
    scrollTo(index);
  }
}
