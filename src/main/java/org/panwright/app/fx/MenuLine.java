package org.panwright.app.fx;

import javafx.scene.control.MenuItem;

/** Lines of menus whose words hold names, in which an underscore is a letter and no mnemonic. */
public final class MenuLine {
  private MenuLine() {}

  /** A line that does something, shown but dimmed where that is not possible. */
  public static MenuItem of(String text, Runnable action, boolean isPossible) {
    MenuItem line = new MenuItem(text);
    line.setMnemonicParsing(false);
    line.setOnAction(event -> action.run());
    line.setDisable(!isPossible);
    return line;
  }
}
