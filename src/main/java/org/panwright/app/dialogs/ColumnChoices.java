package org.panwright.app.dialogs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.IntFunction;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import org.panwright.app.fx.ByLabel;
import org.panwright.words.ShareWords;

/**
 * For each thing that can be read from a table, a choice of the column it is read from, or none.
 *
 * @param <F> the things
 */
public final class ColumnChoices<F> extends GridPane {
  private static final int ABREAST = 2;
  private static final double LABEL_WIDTH = 92;
  private static final double CHOICE_WIDTH = 280;

  /**
   * @param fields the things, row by row
   * @param label the words for a thing
   * @param place the words for a column by its number from 0
   * @param columns how many columns the table has
   * @param read where a thing is read from now
   * @param change told of another choice
   */
  public ColumnChoices(
      List<F> fields,
      Function<F, String> label,
      IntFunction<String> place,
      int columns,
      Function<F, Optional<Integer>> read,
      BiConsumer<F, Optional<Integer>> change) {
    getStyleClass().add("form");
    List<Optional<Integer>> all = new ArrayList<>(List.of(Optional.empty()));
    for (int column = 0; column < columns; column++) {
      all.add(Optional.of(column));
    }
    for (int i = 0; i < fields.size(); i++) {
      F field = fields.get(i);
      ChoiceBox<Optional<Integer>> places = new ChoiceBox<>();
      places.setConverter(new ByLabel<>(at -> at.map(place::apply).orElse(ShareWords.NOT_READ)));
      places.getItems().setAll(all);
      places.setValue(read.apply(field));
      places.setPrefWidth(CHOICE_WIDTH);
      places.setAccessibleText(label.apply(field));
      places.valueProperty().addListener((property, before, now) -> change.accept(field, now));
      Label name = new Label(label.apply(field));
      name.getStyleClass().add("soft");
      name.setMinWidth(LABEL_WIDTH);
      name.setLabelFor(places);
      add(name, 2 * (i % ABREAST), i / ABREAST);
      add(places, 2 * (i % ABREAST) + 1, i / ABREAST);
    }
  }
}
