package org.panwright.app.files;

import java.nio.file.Path;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import org.panwright.app.fx.Action;
import org.panwright.app.settings.Remembered;
import org.panwright.words.FileWords;

/** The menu of files. */
public final class FileActions {
  private final FileFlow flow;
  private final KitDocument document;
  private final Remembered remembered;

  public FileActions(FileFlow flow, KitDocument document, Remembered remembered) {
    this.flow = flow;
    this.document = document;
    this.remembered = remembered;
  }

  /** New, open, demo. */
  public List<Action> opening() {
    return List.of(
        Action.of(FileWords.NEW, flow::startNew).on("Shortcut+N"),
        Action.of(FileWords.OPEN, flow::open).on("Shortcut+O"),
        Action.of(FileWords.DEMO, flow::openDemo));
  }

  /** Save, save as, rename. */
  public List<Action> saving() {
    ObservableValue<Boolean> free =
        Bindings.createObjectBinding(() -> !document.busyProperty().get(), document.busyProperty());
    return List.of(
        Action.of(FileWords.SAVE, flow::save).on("Shortcut+S").when(free),
        Action.of(FileWords.SAVE_AS, flow::saveAs).on("Shortcut+Shift+S").when(free),
        Action.of(FileWords.RENAME, flow::rename));
  }

  /** The kits opened last, newest first. */
  public Menu recent() {
    Menu menu = new Menu(FileWords.RECENT);
    remembered.settingsProperty().addListener(changed -> fill(menu));
    fill(menu);
    return menu;
  }

  private void fill(Menu menu) {
    List<Path> recent = remembered.settings().recent();
    menu.getItems().clear();
    for (Path file : recent) {
      MenuItem item = new MenuItem(file.getFileName() + "   –   " + file.getParent());
      item.setMnemonicParsing(false);
      item.setOnAction(event -> flow.open(file));
      menu.getItems().add(item);
    }
    if (recent.isEmpty()) {
      MenuItem none = new MenuItem(FileWords.NO_RECENT);
      none.setDisable(true);
      menu.getItems().add(none);
    }
  }
}
