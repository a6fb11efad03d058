package org.panwright.app.window;

import java.util.List;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.SeparatorMenuItem;
import org.panwright.app.fx.Action;

/** Menus made of actions. */
public final class Menus {
  private Menus() {}

  /** The bar of these menus, at the place the system wants it. */
  static MenuBar bar(Menu... menus) {
    MenuBar bar = new MenuBar(menus);
    bar.setUseSystemMenuBar(true);
    return bar;
  }

  /** A menu of groups of actions with a line between groups. */
  public static Menu of(String name, List<List<Action>> groups) {
    Menu menu = new Menu(name);
    for (List<Action> group : groups) {
      if (!menu.getItems().isEmpty()) {
        menu.getItems().add(new SeparatorMenuItem());
      }
      for (Action action : group) {
        menu.getItems().add(action.menuItem());
      }
    }
    return menu;
  }
}
