package org.panwright.app.swatches;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.ComboBox;
import org.panwright.app.fx.ByLabel;
import org.panwright.paint.Paint;

/** Chooses a paint of the shelf, or none where that is offered. */
public final class PaintChoice extends ComboBox<Optional<Paint>> {
  private static final int ROWS_SHOWN = 16;

  /**
   * The toolkit's own key for how many rows it measures to find the width of the list; without it
   * all are, which takes long for the paints of a large shelf.
   */
  private static final String ROWS_MEASURED = "comboBoxRowsToMeasureWidth";

  private final Optional<String> none;
  private boolean filling;

  /**
   * @param none what is shown in place of a paint; empty if there must be one
   * @param chosen told the paint's id when the painter chooses
   */
  public PaintChoice(Optional<String> none, Consumer<Optional<String>> chosen) {
    this.none = none;
    setConverter(
        new ByLabel<>(
            paint -> paint.map(p -> p.name() + "  " + p.codes()).orElse(none.orElse(""))));
    setVisibleRowCount(ROWS_SHOWN);
    setMaxWidth(Double.MAX_VALUE);
    getProperties().put(ROWS_MEASURED, ROWS_SHOWN);
    valueProperty()
        .addListener(
            (property, before, now) -> {
              if (!filling && now != null) {
                chosen.accept(now.map(Paint::id));
              }
            });
  }

  /** Offers paints and shows one of them as chosen, or none. */
  public void show(List<Paint> paints, Optional<String> id) {
    List<Optional<Paint>> all = new ArrayList<>();
    none.ifPresent(words -> all.add(Optional.empty()));
    paints.forEach(paint -> all.add(Optional.of(paint)));
    filling = true;
    if (!getItems().equals(all)) {
      getItems().setAll(all);
    }
    setValue(
        all.stream()
            .filter(paint -> paint.map(Paint::id).equals(id))
            .findFirst()
            .orElse(Optional.empty()));
    filling = false;
  }
}
