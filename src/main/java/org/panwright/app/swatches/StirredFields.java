package org.panwright.app.swatches;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.paint.Paint;
import org.panwright.words.SwatchesWords;

/** Which white and which black of the shelf were stirred into tints and tones. */
public final class StirredFields {
  private final ObjectProperty<SheetChoices> choices;
  private final Supplier<List<Paint>> paints;
  private final PaintChoice white;
  private final PaintChoice black;

  public StirredFields(ObjectProperty<SheetChoices> choices, Supplier<List<Paint>> paints) {
    this.choices = choices;
    this.paints = paints;
    white = field(SheetChoices::withWhite);
    black = field(SheetChoices::withBlack);
    show();
  }

  private PaintChoice field(BiFunction<SheetChoices, Optional<String>, SheetChoices> write) {
    return new PaintChoice(
        Optional.of(SwatchesWords.ANY), id -> choices.set(write.apply(choices.get(), id)));
  }

  /** Adds them to a form. */
  public void addTo(FormGrid form) {
    form.row(SwatchesWords.WHITE, white);
    form.row(SwatchesWords.BLACK, black);
  }

  /** Shows what is chosen, from the shelf as it is now. */
  public void show() {
    white.show(paints.get(), choices.get().whiteId());
    black.show(paints.get(), choices.get().blackId());
  }
}
