package org.panwright.app.findings;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.panwright.app.fx.InPlace;
import org.panwright.app.fx.Sentence;
import org.panwright.words.FindingListWords;

/** The list of findings; pointing at a cure shows in grid and ring what it would bring. */
public final class FindingsView extends VBox {
  private final FindingsModel model;
  private final VBox list = new VBox();
  private final Label count = new Label();
  private final Label nothing = Sentence.of("", "soft");
  private final FindingCards cards;
  private final Fold muted = new Fold();
  private final FiguresFolds figures = new FiguresFolds();

  public FindingsView(FindingsModel model) {
    this.model = model;
    cards = new FindingCards(model);
    getStyleClass().addAll("pane", "findings-view");
    Label title = new Label(FindingListWords.TITLE);
    title.getStyleClass().add("pane-title");
    count.getStyleClass().add("soft");
    HBox head = new HBox(title, count);
    head.getStyleClass().add("pane-head");
    list.getStyleClass().add("findings-list");
    ScrollPane scroll = new ScrollPane(list);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setFocusTraversable(false);
    getChildren().addAll(head, MoreBelow.under(scroll));
    model.shownProperty().addListener((o, before, now) -> show(now));
    show(model.shownProperty().getValue());
  }

  private void show(FindingsModel.Shown shown) {
    count.setText(FindingListWords.count(shown.findings().size()));
    int focused = placeOfFocus();
    cards.show(shown);
    List<Node> rows = new ArrayList<>();
    if (shown.findings().isEmpty()) {
      nothing.setText(model.nothing());
      rows.add(nothing);
    }
    rows.addAll(cards.cards());
    if (!shown.muted().isEmpty()) {
      muted.hold(
          FindingListWords.muted(shown.muted().size()),
          () -> shown.muted().stream().map(m -> new MutedCard(model, m, shown.kit())).toList());
      rows.add(muted);
    }
    model.judgement().ifPresent(judgement -> rows.addAll(figures.of(judgement)));
    InPlace.arrange(list.getChildren(), rows);
    keepFocus(focused);
  }

  /** The place of the row that has the keyboard, or −1. */
  private int placeOfFocus() {
    for (int i = 0; i < list.getChildren().size(); i++) {
      if (list.getChildren().get(i).isFocusWithin()) {
        return i;
      }
    }
    return -1;
  }

  /** If the card with the keyboard is gone, the one now in its place takes it, or else a fold. */
  private void keepFocus(int place) {
    if (place < 0 || placeOfFocus() >= 0) {
      return;
    }
    if (cards.cards().isEmpty()) {
      list.getChildren().stream()
          .filter(Fold.class::isInstance)
          .findFirst()
          .ifPresent(fold -> ((Fold) fold).takeFocus());
    } else {
      cards.cards().get(Math.min(place, cards.cards().size() - 1)).takeFocus();
    }
  }
}
