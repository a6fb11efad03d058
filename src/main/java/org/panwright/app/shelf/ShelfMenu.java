package org.panwright.app.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import org.panwright.app.Editors;
import org.panwright.app.fx.MenuLine;
import org.panwright.app.hand.Holding;
import org.panwright.kit.Well;
import org.panwright.words.PaintPageWords;
import org.panwright.words.RecipeViewWords;
import org.panwright.words.ShelfWords;

/** The menu of a paint on the shelf; all that a drag can do is here as well. */
final class ShelfMenu {
  private final ShelfModel model;
  private final Editors editors;

  ShelfMenu(ShelfModel model, Editors editors) {
    this.model = model;
    this.editors = editors;
  }

  /** The lines for a row, or for no row. */
  List<MenuItem> items(Optional<ShelfRow> row) {
    List<MenuItem> items = new ArrayList<>();
    row.ifPresent(
        shown -> {
          String id = shown.paint().id();
          items.add(
              MenuLine.of(
                  ShelfWords.PICK_UP, () -> model.pickUp(id, Holding.Means.KEYS), hasWells()));
          items.add(next(id));
          items.add(wells(id));
          items.add(
              MenuLine.of(ShelfWords.TAKE_OUT, () -> model.takeOut(id), !shown.wells().isEmpty()));
          items.add(MenuLine.of(RecipeViewWords.MIX_IT, () -> model.mixFromBox(id), hasWells()));
          items.add(new SeparatorMenuItem());
          items.add(MenuLine.of(PaintPageWords.OPEN_PAGE, () -> editors.openPage(id), true));
          items.add(MenuLine.of(ShelfWords.EDIT, () -> editors.editPaint(id), true));
          items.add(MenuLine.of(ShelfWords.DUPLICATE, () -> editors.duplicatePaint(id), true));
          items.add(MenuLine.of(ShelfWords.REMOVE, () -> editors.removePaint(id), true));
          items.add(new SeparatorMenuItem());
        });
    items.add(MenuLine.of(ShelfWords.ADD, editors::addPaint, true));
    return items;
  }

  private MenuItem next(String paintId) {
    Optional<Well> next = model.nextEmpty();
    String text = next.map(ShelfWords::putInto).orElse(ShelfWords.NO_EMPTY_WELL);
    return MenuLine.of(text, () -> model.placeInNextEmpty(paintId), next.isPresent());
  }

  private Menu wells(String paintId) {
    Menu wells = new Menu(ShelfWords.PUT_INTO);
    for (Well well : model.wells()) {
      String text = ShelfWords.wellChoice(well, model.occupant(well.id()));
      wells.getItems().add(MenuLine.of(text, () -> model.place(paintId, well.id()), true));
    }
    wells.setDisable(wells.getItems().isEmpty());
    return wells;
  }

  private boolean hasWells() {
    return !model.wells().isEmpty();
  }
}
