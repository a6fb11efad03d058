package org.panwright.app.box;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import org.panwright.app.Editors;
import org.panwright.app.fx.MenuLine;
import org.panwright.app.hand.Holding;
import org.panwright.kit.Fill;
import org.panwright.kit.Well;
import org.panwright.words.ArrangeWords;
import org.panwright.words.BoxWords;
import org.panwright.words.ShelfWords;

/** The menu of a well; all that a drag can do is here as well. */
final class WellMenu {
  private final BoxModel model;
  private final Editors editors;

  WellMenu(BoxModel model, Editors editors) {
    this.model = model;
    this.editors = editors;
  }

  /** The lines for a well. */
  List<MenuItem> items(WellPicture shown, BoxPicture picture) {
    String id = shown.well().id();
    boolean isFull = shown.content().isPresent();
    List<MenuItem> items = new ArrayList<>();
    items.add(MenuLine.of(BoxWords.PICK_UP, () -> model.pickUp(id, Holding.Means.KEYS), isFull));
    items.add(moves(id, picture, isFull));
    items.add(fills(shown));
    items.add(MenuLine.of(BoxWords.TAKE_OUT, () -> model.empty(id), isFull));
    items.add(new SeparatorMenuItem());
    shown
        .content()
        .ifPresent(
            content ->
                items.add(
                    MenuLine.of(
                        ShelfWords.EDIT, () -> editors.editPaint(content.paint().id()), true)));
    items.add(MenuLine.of(ArrangeWords.LINE, editors::arrangeLineup, picture.filled() > 1));
    items.add(MenuLine.of(BoxWords.EDIT_BOX, () -> editors.editBox(picture.box().id()), true));
    return items;
  }

  private Menu moves(String fromId, BoxPicture picture, boolean isFull) {
    Menu moves = new Menu(BoxWords.MOVE_TO);
    for (Well well : picture.box().wells()) {
      String text = BoxWords.moveChoice(well, model.occupant(well.id()));
      moves
          .getItems()
          .add(MenuLine.of(text, () -> model.move(fromId, well.id()), !well.id().equals(fromId)));
    }
    moves.setDisable(!isFull);
    return moves;
  }

  private Menu fills(WellPicture shown) {
    Menu fills = new Menu(BoxWords.FILL);
    for (Fill fill : Fill.values()) {
      RadioMenuItem choice = new RadioMenuItem(BoxWords.label(fill));
      choice.setSelected(shown.content().filter(c -> c.fill() == fill).isPresent());
      choice.setOnAction(event -> model.fill(shown.well().id(), fill));
      fills.getItems().add(choice);
    }
    fills.setDisable(shown.content().isEmpty());
    return fills;
  }
}
