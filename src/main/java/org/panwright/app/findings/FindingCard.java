package org.panwright.app.findings;

import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.analysis.finding.Finding;
import org.panwright.app.fx.LateTip;
import org.panwright.app.fx.Sentence;
import org.panwright.app.fx.SteadyColumn;
import org.panwright.kit.Kit;
import org.panwright.words.FindingListWords;
import org.panwright.words.FindingWords;

/**
 * One finding: what it is, its cure, and the way to mute it. A card may be given another finding.
 */
final class FindingCard extends SteadyColumn {
  private static final PseudoClass SERIOUS = PseudoClass.getPseudoClass("serious");
  private static final double SERIOUS_SEVERITY = 0.25;

  /** The place of the cure, or of the line that asks why to mute. */
  private static final int ACTION = 2;

  private final FindingsModel model;
  private final Label heading = Sentence.of("", "heading");
  private final Label sentence = Sentence.of("");
  private final Button mute = mute();
  private final Button cure = cure();
  private Finding finding;
  private boolean isCurable;

  FindingCard(FindingsModel model, Finding finding, Kit kit) {
    this.model = model;
    getStyleClass().add("finding");
    heading.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(heading, Priority.ALWAYS);
    HBox head = new HBox(heading, mute);
    head.setAlignment(Pos.BASELINE_LEFT);
    getChildren().setAll(head, sentence);
    say(finding, kit);
    offerCure();
  }

  /** By what its finding is known from one judgement to the next. */
  String key() {
    return finding.key();
  }

  /** Shows its finding with newer figures; a reason being typed is left alone. */
  void renew(Finding newer, Kit kit) {
    boolean isAsking = getChildren().size() > ACTION && getChildren().get(ACTION) != cure;
    say(newer, kit);
    if (!isAsking) {
      offerCure();
    }
  }

  /** Shows another finding. The keyboard does not stay on a cure that is another one now. */
  void turnTo(Finding other, Kit kit) {
    boolean hasFocus = isFocusWithin();
    say(other, kit);
    offerCure();
    if (hasFocus) {
      takeFocus();
    }
  }

  /** Takes the keyboard, on the button that does nothing by itself. */
  void takeFocus() {
    mute.requestFocus();
  }

  private void say(Finding said, Kit kit) {
    finding = said;
    heading.setText(FindingWords.title(said, kit));
    sentence.setText(FindingWords.meaning(said, kit));
    mute.setAccessibleText(FindingListWords.mute(heading.getText()));
    pseudoClassStateChanged(SERIOUS, said.severity() >= SERIOUS_SEVERITY);
    Optional<String> action = FindingWords.action(said, kit);
    isCurable = action.isPresent();
    action.ifPresent(cure::setText);
  }

  private void offerCure() {
    if (isCurable) {
      setAction(cure);
    } else if (getChildren().size() > ACTION) {
      getChildren().remove(ACTION);
    }
  }

  private void setAction(Node action) {
    if (getChildren().size() == ACTION) {
      getChildren().add(action);
    } else if (getChildren().get(ACTION) != action) {
      getChildren().set(ACTION, action);
    }
  }

  private Button cure() {
    Button button = new Button();
    button.setWrapText(true);
    button.setMinHeight(Region.USE_PREF_SIZE);
    button.setMaxWidth(Region.USE_PREF_SIZE);
    button.setAccessibleHelp(FindingListWords.CURE_HELP);
    button.setOnMouseEntered(e -> model.tryCure(finding));
    button.setOnMouseExited(e -> model.endTrial());
    button
        .focusedProperty()
        .addListener(
            (o, was, focused) -> {
              if (focused) {
                model.tryCure(finding);
              } else {
                model.endTrial();
              }
            });
    button.setOnAction(e -> model.cure(finding));
    return button;
  }

  /** The button that mutes; it stands beside the heading, out of the cure's way. */
  private Button mute() {
    Button button = new Button(FindingListWords.MUTE);
    button.getStyleClass().addAll("quiet", "small");
    button.setMinWidth(Region.USE_PREF_SIZE);
    LateTip.on(button, () -> FindingListWords.MUTE_HELP);
    button.setAccessibleHelp(FindingListWords.MUTE_HELP);
    button.setOnAction(e -> askWhy());
    return button;
  }

  /** A line for the reason takes the place of the cure. */
  private void askWhy() {
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
          offerCure();
          mute.requestFocus();
        });
    setAction(asking);
    reason.requestFocus();
  }
}
