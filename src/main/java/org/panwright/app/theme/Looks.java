package org.panwright.app.theme;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.ObservableList;

/** Dresses every scene and dialog of the program in the theme chosen now. */
public final class Looks {
  private final ObjectProperty<Theme> theme = new SimpleObjectProperty<>(Theme.LIGHT);
  private final List<ObservableList<String>> dressed = new ArrayList<>();

  /** Starts with a theme. */
  public Looks(Theme first) {
    theme.set(first);
    theme.addListener((property, before, after) -> dressed.forEach(this::put));
  }

  /** The theme now; setting it changes everything that is dressed. */
  public ObjectProperty<Theme> themeProperty() {
    return theme;
  }

  /** Dresses a scene or dialog pane by its list of style sheets, until {@link #undress}. */
  public void dress(ObservableList<String> sheets) {
    put(sheets);
    dressed.removeIf(each -> each == sheets);
    dressed.add(sheets);
  }

  /** Lets go of a dialog pane or scene that is no longer shown. */
  public void undress(ObservableList<String> sheets) {
    dressed.removeIf(each -> each == sheets);
  }

  private void put(ObservableList<String> sheets) {
    sheets.setAll(theme.get().sheets());
  }
}
