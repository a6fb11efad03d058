package org.panwright.app.theme;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.ObservableList;
import javafx.scene.Node;

/** Dresses every scene and dialog of the program in the theme chosen now. */
public final class Looks {
  private final ObjectProperty<Theme> theme = new SimpleObjectProperty<>(Theme.LIGHT);
  private final List<Node> dressed = new ArrayList<>();

  /** Starts with a theme. */
  public Looks(Theme first) {
    theme.set(first);
    theme.addListener((property, before, after) -> dressed.forEach(after::putOn));
  }

  /** The theme now; setting it changes everything that is dressed. */
  public ObjectProperty<Theme> themeProperty() {
    return theme;
  }

  /**
   * Dresses a scene or dialog pane, until {@link #undress}.
   *
   * @param sheets its list of style sheets
   * @param root the root of the scene, or the dialog pane
   */
  public void dress(ObservableList<String> sheets, Node root) {
    sheets.setAll(theme.get().sheets());
    theme.get().putOn(root);
    undress(root);
    dressed.add(root);
  }

  /** Lets go of a dialog pane or scene that is no longer shown. */
  public void undress(Node root) {
    dressed.removeIf(each -> each == root);
  }
}
