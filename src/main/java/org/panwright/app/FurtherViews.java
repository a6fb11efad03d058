package org.panwright.app;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import org.panwright.app.papers.CardModel;
import org.panwright.app.papers.CardView;
import org.panwright.app.window.Place;
import org.panwright.words.WindowWords;

/** The views beside the plan, each built when it is first looked at. */
final class FurtherViews {
  private final Means means;
  private final List<BooleanSupplier> settled = new ArrayList<>();

  FurtherViews(Means means) {
    this.means = means;
  }

  /** The views in the order of their buttons. */
  List<Place> all() {
    return List.of(new Place(WindowWords.KEY_CARD, this::card));
  }

  /** Whether every view built so far shows the kit as it is now. */
  boolean areSettled() {
    return settled.stream().allMatch(BooleanSupplier::getAsBoolean);
  }

  private CardView card() {
    CardModel model =
        new CardModel(
            means.session(),
            means.library(),
            LocalDate::now,
            means.workers().painting(),
            Platform::runLater,
            means.faults()::take);
    settled.add(model::isSettled);
    return new CardView(model, means.dialogs());
  }
}
