package org.panwright.app;

import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.panwright.app.box.BoxModel;
import org.panwright.app.box.BoxView;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.faults.Faults;
import org.panwright.app.grid.GridModel;
import org.panwright.app.grid.GridView;
import org.panwright.app.hand.Hand;
import org.panwright.app.mix.MixModel;
import org.panwright.app.mix.MixView;
import org.panwright.app.ring.RingModel;
import org.panwright.app.ring.RingView;
import org.panwright.app.settings.Remembered;
import org.panwright.app.shelf.ShelfModel;
import org.panwright.app.shelf.ShelfView;
import org.panwright.app.window.PlanView;
import org.panwright.words.WindowWords;

/** The view of shelf, box, mix grid, hue ring and findings, put together. */
final class PlanPlace {
  private final Session session;
  private final ToneBook tones;
  private final Editors editors;
  private final Workers workers;
  private final Faults faults;
  private final Remembered remembered;
  private PlanView view;

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
    GridModel grid = new GridModel(session, workers.painting(), Platform::runLater, faults::take);
    view =
        new PlanView(
            new ShelfView(shelf, editors),
            new BoxView(new BoxModel(session, tones, hand), editors),
            new GridView(grid),
            new RingView(new RingModel(session)),
            findingsOrMix(),
            remembered.settings().dividers());
    view.onMoved(places -> remembered.change(settings -> settings.withDividers(places)));
    return view;
  }

  /** Puts the dividers back where they stand at first. */
  void evenOut() {
    if (view != null) {
      view.place(PlanView.USUAL);
    }
  }

  /** The findings; while a mix of the grid is picked, that mix in their place. */
  private Region findingsOrMix() {
    MixView mix = new MixView(new MixModel(session));
    Region findings = findings();
    ObservableValue<Boolean> picked =
        session.selectionProperty().map(selection -> selection instanceof Selection.OfMix);
    showWhen(mix, picked);
    showWhen(findings, picked.map(is -> !is));
    return new StackPane(findings, mix);
  }

  private static Region findings() {
    Label label = new Label(WindowWords.FINDINGS);
    label.getStyleClass().add("pane-title");
    VBox pane = new VBox(label);
    pane.getStyleClass().add("pane");
    return pane;
  }

  private static void showWhen(Node node, ObservableValue<Boolean> shown) {
    node.visibleProperty().bind(Bindings.createBooleanBinding(shown::getValue, shown));
  }
}
