package org.panwright.app.findings;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.panwright.analysis.finding.Muted;
import org.panwright.app.fx.Sentence;
import org.panwright.kit.Kit;
import org.panwright.words.FindingListWords;
import org.panwright.words.FindingWords;

/** A muted finding with its reason and the way to have it told again. */
final class MutedCard extends VBox {
  MutedCard(FindingsModel model, Muted muted, Kit kit) {
    Label heading = Sentence.of(FindingWords.title(muted.finding(), kit));
    Label reason = Sentence.of(FindingListWords.reason(muted.reason()), "soft", "small");
    Button again = new Button(FindingListWords.TELL_AGAIN);
    again.getStyleClass().addAll("quiet", "small");
    again.setAccessibleText(FindingListWords.tellAgain(heading.getText()));
    again.setOnAction(e -> model.tellAgain(muted.finding()));
    getStyleClass().addAll("finding", "muted");
    getChildren().setAll(heading, reason, again);
  }
}
