package org.panwright.app.shelf;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.paint.Granulation;
import org.panwright.paint.Ownership;
import org.panwright.paint.Staining;
import org.panwright.paint.Transparency;
import org.panwright.words.PaintWords;
import org.panwright.words.ShelfWords;

/** The traits a shelf can be narrowed to, as rows of buttons that stay pressed. */
final class ShelfFilters extends VBox {
  private final ShelfModel model;
  private final Map<Enum<?>, ToggleButton> buttons = new LinkedHashMap<>();

  ShelfFilters(ShelfModel model) {
    this.model = model;
    getStyleClass().add("shelf-filters");
    addGroup(ShelfWords.OWNERSHIP, Ownership.values(), PaintWords::label);
    addGroup(ShelfWords.PRESENCE, Presence.values(), ShelfFilters::label);
    addGroup(ShelfWords.TRANSPARENCY, Transparency.values(), PaintWords::label);
    addGroup(ShelfWords.STAINING, Staining.values(), PaintWords::label);
    addGroup(ShelfWords.GRANULATION, Granulation.values(), PaintWords::label);
    model.queryProperty().addListener((o, before, now) -> reflect(now));
    reflect(model.queryProperty().get());
  }

  private <E extends Enum<E>> void addGroup(
      String title, E[] traits, Function<? super E, String> label) {
    Label heading = new Label(title);
    heading.getStyleClass().addAll("soft", "small", "filter-heading");
    heading.setMinWidth(Region.USE_PREF_SIZE);
    FlowPane choices = new FlowPane();
    choices.getStyleClass().add("filter-choices");
    HBox.setHgrow(choices, Priority.ALWAYS);
    Arrays.stream(traits).forEach(t -> choices.getChildren().add(button(t, label.apply(t))));
    HBox group = new HBox(heading, choices);
    group.getStyleClass().add("filter-group");
    getChildren().add(group);
  }

  private ToggleButton button(Enum<?> trait, String text) {
    ToggleButton button = new ToggleButton(text);
    button.getStyleClass().add("filter");
    button.setOnAction(
        pressed ->
            model
                .queryProperty()
                .set(model.queryProperty().get().wanting(trait, button.isSelected())));
    buttons.put(trait, button);
    return button;
  }

  private void reflect(ShelfQuery query) {
    buttons.forEach((trait, button) -> button.setSelected(query.wanted().contains(trait)));
  }

  private static String label(Presence presence) {
    return presence == Presence.IN_LINEUP ? ShelfWords.IN_LINEUP : ShelfWords.NOT_IN_LINEUP;
  }
}
