package org.panwright.app.window;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import org.panwright.app.fx.Action;
import org.panwright.words.WindowWords;

/**
 * The views of the window, of which one is shown; each is built when first asked for and then kept.
 */
final class Places {
  private final List<Place> places;
  private final ObjectProperty<Place> shown = new SimpleObjectProperty<>();
  private final Map<Place, Parent> built = new HashMap<>();
  private final StackPane ground = new StackPane();
  private final HBox strip = new HBox();
  private final Runnable enter = this::enter;

  Places(List<Place> places) {
    this.places = List.copyOf(places);
    shown.addListener((property, before, now) -> show(now));
    strip.getStyleClass().add("joined");
    strip.setAccessibleText(WindowWords.VIEWS);
    ToggleGroup group = new ToggleGroup();
    for (Place place : this.places) {
      strip.getChildren().add(button(place, group));
    }
    strip.getChildren().get(0).getStyleClass().add("first");
    strip.getChildren().get(places.size() - 1).getStyleClass().add("last");
    shown.set(this.places.get(0));
  }

  /** The row of buttons that chooses. */
  HBox strip() {
    return strip;
  }

  /** Shows a view by its number from 0. */
  void show(int place) {
    shown.set(places.get(place));
  }

  /** Shows a view by the name on its button; the view shown stays if there is none. */
  void show(String name) {
    places.stream().filter(place -> place.name().equals(name)).findFirst().ifPresent(shown::set);
  }

  /** Where the view chosen is shown. */
  StackPane ground() {
    return ground;
  }

  /** The view shown. */
  Parent view() {
    return built.get(shown.get());
  }

  /** The choices once more, for the menu. */
  List<Action> actions() {
    List<Action> actions = new ArrayList<>();
    for (Place place : places) {
      actions.add(
          Action.of(place.name(), () -> shown.set(place))
              .on(key(place))
              .chosenWhen(shown.map(place::equals)));
    }
    return actions;
  }

  private ToggleButton button(Place place, ToggleGroup group) {
    ToggleButton button = new ToggleButton(place.name());
    button.setToggleGroup(group);
    button.setTooltip(new Tooltip(KeyCombination.valueOf(key(place)).getDisplayText()));
    button.setOnAction(
        event -> {
          button.setSelected(true);
          shown.set(place);
        });
    shown.addListener((property, before, now) -> button.setSelected(place.equals(now)));
    return button;
  }

  private String key(Place place) {
    return "Shortcut+" + (places.indexOf(place) + 1);
  }

  /** The keyboard goes with the view if it was in the one before. */
  private void show(Place place) {
    boolean takesKeyboard =
        ground.getScene() != null
            && ground.getScene().getFocusOwner() != null
            && FirstField.isWithin(ground.getScene().getFocusOwner(), ground);
    if (takesKeyboard) {
      ground.requestFocus();
      ground.getScene().addPostLayoutPulseListener(enter);
    }
    ground.getChildren().setAll(built.computeIfAbsent(place, p -> p.build().get()));
  }

  /**
   * Gives the keyboard, kept by the ground until now, to the first field of the view shown. A view
   * has its fields only once a pulse has given it its style; styling it earlier would be done
   * twice.
   */
  private void enter() {
    Scene scene = ground.getScene();
    scene.removePostLayoutPulseListener(enter);
    if (ground.equals(scene.getFocusOwner())) {
      FirstField.of(built.get(shown.get())).ifPresent(Node::requestFocus);
    }
  }
}
