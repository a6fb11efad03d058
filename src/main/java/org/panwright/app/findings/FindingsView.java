package org.panwright.app.findings;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.analysis.Finding;
import org.panwright.kit.Kit;
import org.panwright.words.FindingListWords;
import org.panwright.words.FindingWords;

/** The list of findings; pointing at a cure shows in grid and ring what it would bring. */
public final class FindingsView extends VBox {
  private static final double SERIOUS = 0.25;

  private final FindingsModel model;
  private final VBox list = new VBox();
  private final Label count = new Label();

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
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(head, scroll);
    model.shownProperty().addListener((o, before, now) -> show(now));
    show(model.shownProperty().getValue());
  }

  private void show(FindingsModel.Shown shown) {
    count.setText(FindingListWords.count(shown.findings().size()));
    if (shown.findings().isEmpty()) {
      Label nothing = new Label(FindingWords.NOTHING_FOUND);
      nothing.setWrapText(true);
      nothing.getStyleClass().add("soft");
      list.getChildren().setAll(nothing);
    } else {
      list.getChildren().setAll(shown.findings().stream().map(f -> card(f, shown.kit())).toList());
    }
  }

  private Region card(Finding finding, Kit kit) {
    Label heading = new Label(FindingWords.title(finding, kit));
    heading.getStyleClass().add("heading");
    heading.setWrapText(true);
    Label sentence = new Label(FindingWords.meaning(finding, kit));
    sentence.setWrapText(true);
    sentence.setMinHeight(Region.USE_PREF_SIZE);
    VBox card = new VBox(heading, sentence);
    card.getStyleClass().add("finding");
    if (finding.severity() >= SERIOUS) {
      card.getStyleClass().add("serious");
    }
    FindingWords.action(finding, kit)
        .ifPresent(label -> card.getChildren().add(cure(finding, label)));
    return card;
  }

  private Button cure(Finding finding, String label) {
    Button cure = new Button(label);
    cure.setWrapText(true);
    cure.setMinHeight(Region.USE_PREF_SIZE);
    cure.setAccessibleHelp(FindingListWords.CURE_HELP);
    cure.setOnMouseEntered(e -> model.tryCure(finding));
    cure.setOnMouseExited(e -> model.endTrial());
    cure.focusedProperty()
        .addListener(
            (o, was, focused) -> {
              if (focused) {
                model.tryCure(finding);
              } else {
                model.endTrial();
              }
            });
    cure.setOnAction(e -> model.cure(finding));
    return cure;
  }
}
