package org.panwright.app.findings;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.analysis.Finding;
import org.panwright.app.fx.Sentence;
import org.panwright.kit.Kit;
import org.panwright.words.FindingListWords;
import org.panwright.words.FindingWords;

/** One finding: what it is, its cure, and the way to mute it. */
final class FindingCard extends VBox {
  private static final double SERIOUS = 0.25;

  private final FindingsModel model;
  private final Finding finding;
  private final FlowPane actions = new FlowPane();

  FindingCard(FindingsModel model, Finding finding, Kit kit) {
    this.model = model;
    this.finding = finding;
    getStyleClass().add("finding");
    if (finding.severity() >= SERIOUS) {
      getStyleClass().add("serious");
    }
    Label heading = Sentence.of(FindingWords.title(finding, kit), "heading");
    Label sentence = Sentence.of(FindingWords.meaning(finding, kit));
    actions.getStyleClass().add("finding-actions");
    actions.setMinWidth(0);
    FindingWords.action(finding, kit).ifPresent(label -> actions.getChildren().add(cure(label)));
    HBox head = new HBox(heading, mute(heading.getText()));
    head.setAlignment(Pos.BASELINE_LEFT);
    heading.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(heading, Priority.ALWAYS);
    getChildren().setAll(head, sentence, actions);
  }

  private Button cure(String label) {
    Button cure = new Button(label);
    cure.setWrapText(true);
    cure.setMinHeight(Region.USE_PREF_SIZE);
    cure.maxWidthProperty().bind(actions.widthProperty());
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

  /** The button that mutes; it stands beside the heading, out of the cure's way. */
  private Button mute(String title) {
    Button mute = new Button(FindingListWords.MUTE);
    mute.getStyleClass().addAll("quiet", "small");
    mute.setMinWidth(Region.USE_PREF_SIZE);
    mute.setTooltip(new Tooltip(FindingListWords.MUTE_HELP));
    mute.setAccessibleText(FindingListWords.mute(title));
    mute.setOnAction(e -> askWhy(mute));
    return mute;
  }

  /** A line for the reason takes the place of the cure. */
  private void askWhy(Button mute) {
    TextField reason = new TextField();
    reason.setPromptText(FindingListWords.WHY);
    reason.setAccessibleText(FindingListWords.WHY);
    HBox.setHgrow(reason, Priority.ALWAYS);
    Button now = new Button(FindingListWords.MUTE_NOW);
    now.disableProperty().bind(reason.textProperty().map(String::isBlank));
    now.setOnAction(e -> model.mute(finding, reason.getText()));
    reason.setOnAction(
        e -> {
          if (!now.isDisabled()) {
            now.fire();
          }
        });
    Button keep = new Button(FindingListWords.KEEP);
    keep.getStyleClass().add("quiet");
    keep.setCancelButton(true);
    HBox buttons = new HBox(now, keep);
    buttons.getStyleClass().add("finding-actions");
    VBox asking = new VBox(reason, buttons);
    asking.getStyleClass().add("finding-actions");
    keep.setOnAction(
        e -> {
          getChildren().set(2, actions);
          mute.requestFocus();
        });
    getChildren().set(2, asking);
    reason.requestFocus();
  }
}
