package org.panwright.app.findings;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.panwright.app.fx.Sentence;
import org.panwright.words.FindingListWords;

/** The list of findings; pointing at a cure shows in grid and ring what it would bring. */
public final class FindingsView extends VBox {
  private final FindingsModel model;
  private final VBox list = new VBox();
  private final Label count = new Label();
  private final FiguresFolds figures = new FiguresFolds();
  private final BooleanProperty mutedOpen = new SimpleBooleanProperty();

  public FindingsView(FindingsModel model) {
    this.model = model;
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
    List<Node> rows = new ArrayList<>();
    if (shown.findings().isEmpty()) {
      rows.add(Sentence.of(model.nothing(), "soft"));
    }
    shown.findings().forEach(finding -> rows.add(new FindingCard(model, finding, shown.kit())));
    if (!shown.muted().isEmpty()) {
      rows.add(
          new Fold(
              FindingListWords.muted(shown.muted().size()),
              shown.muted().stream().map(m -> new MutedCard(model, m, shown.kit())).toList(),
              mutedOpen));
    }
    model.judgement().ifPresent(judgement -> rows.addAll(figures.of(judgement)));
    list.getChildren().setAll(rows);
  }
}
