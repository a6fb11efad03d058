package org.panwright.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import org.panwright.app.box.BoxModel;
import org.panwright.app.box.BoxView;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.faults.Faults;
import org.panwright.app.findings.FindingsModel;
import org.panwright.app.findings.FindingsView;
import org.panwright.app.findings.SideView;
import org.panwright.app.fx.BuiltLater;
import org.panwright.app.grid.GridModel;
import org.panwright.app.grid.GridView;
import org.panwright.app.hand.Hand;
import org.panwright.app.mix.MixModel;
import org.panwright.app.mix.MixView;
import org.panwright.app.recipes.RecipesModel;
import org.panwright.app.recipes.RecipesView;
import org.panwright.app.ring.RingModel;
import org.panwright.app.ring.RingView;
import org.panwright.app.settings.Remembered;
import org.panwright.app.share.Figures;
import org.panwright.app.shelf.ShelfModel;
import org.panwright.app.shelf.ShelfView;
import org.panwright.app.window.PlanView;
import org.panwright.words.RecipeViewWords;

/** The view of shelf, box, mix grid, hue ring and findings, put together. */
final class PlanPlace {
  private final Session session;
  private final ToneBook tones;
  private final Editors editors;
  private final Workers workers;
  private final Faults faults;
  private final Remembered remembered;
  private final List<BooleanSupplier> settled = new ArrayList<>();
  private PlanView view;
  private Optional<Figures> figures = Optional.empty();

  PlanPlace(
      Session session,
      ToneBook tones,
      Editors editors,
      Workers workers,
      Faults faults,
      Remembered remembered) {
    this.session = session;
    this.tones = tones;
    this.editors = editors;
    this.workers = workers;
    this.faults = faults;
    this.remembered = remembered;
  }

  /** Builds the view, with its dividers where they were last. */
  PlanView build() {
    Hand hand = new Hand(session);
    ShelfModel shelf = new ShelfModel(session, tones, hand, workers.painting(), Platform::runLater);
    view =
        new PlanView(
            new ShelfView(shelf, editors),
            new BoxView(new BoxModel(session, tones, hand), editors),
            new BuiltLater(workers.later(), this::grid),
            new BuiltLater(workers.later(), () -> new RingView(new RingModel(session))),
            new BuiltLater(workers.later(), this::findingsOrMix),
            remembered.settings().dividers());
    view.onMoved(places -> remembered.change(settings -> settings.withDividers(places)));
    return view;
  }

  private GridView grid() {
    GridModel model = new GridModel(session, workers.painting(), Platform::runLater, faults::take);
    settled.add(model::isSettled);
    return new GridView(model, () -> view.enterFindings());
  }

  /** Whether every pane built so far shows the kit as it is now, once the kit is judged. */
  boolean isSettled() {
    return settled.stream().allMatch(BooleanSupplier::getAsBoolean);
  }

  /** What can be taken a picture of, once the view is built. */
  Optional<Figures> figures() {
    return figures;
  }

  /** Puts the dividers back where they stand at first. */
  void evenOut() {
    if (view != null) {
      view.place(PlanView.USUAL);
    }
  }

  /**
   * The findings; a mix picked in the grid or a colour to be met takes their place. A well or a
   * paint picked does not: findings are what one works by while paints go in and out.
   */
  private SideView findingsOrMix() {
    RecipesModel recipes =
        new RecipesModel(session, workers.painting(), Platform::runLater, faults::take);
    SideView mixOrColour =
        new SideView(
            new MixView(new MixModel(session)),
            new RecipesView(recipes, Optional.of(RecipeViewWords.BACK)),
            recipes.shownProperty());
    return new SideView(
        new FindingsView(new FindingsModel(session)),
        mixOrColour,
        session
            .selectionProperty()
            .map(s -> s instanceof Selection.OfMix || s instanceof Selection.OfColour));
  }
}
