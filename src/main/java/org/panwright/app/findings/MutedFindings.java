package org.panwright.app.findings;

import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.analysis.Muted;
import org.panwright.kit.Kit;
import org.panwright.words.FindingListWords;
import org.panwright.words.FindingWords;

/** The muted findings, folded up at the end of the list. */
final class MutedFindings extends VBox {
  /**
   * @param open whether they are unfolded; outlives the list
   */
  MutedFindings(FindingsModel model, List<Muted> muted, Kit kit, BooleanProperty open) {
    getStyleClass().add("muted-findings");
    ToggleButton fold = new ToggleButton();
    fold.getStyleClass().addAll("quiet", "small");
    fold.setSelected(open.get());
    VBox rows = new VBox();
    rows.getStyleClass().add("muted-findings");
    muted.forEach(mute -> rows.getChildren().add(row(model, mute, kit)));
    open.bind(fold.selectedProperty());
    fold.textProperty()
        .bind(
            fold.selectedProperty()
                .map(shown -> (shown ? "▾  " : "▸  ") + FindingListWords.muted(muted.size())));
    rows.visibleProperty().bind(fold.selectedProperty());
    rows.managedProperty().bind(fold.selectedProperty());
    getChildren().setAll(fold, rows);
  }

  private static VBox row(FindingsModel model, Muted muted, Kit kit) {
    Label heading = new Label(FindingWords.title(muted.finding(), kit));
    heading.setWrapText(true);
    Label reason = new Label(FindingListWords.reason(muted.reason()));
    reason.setWrapText(true);
    reason.setMinHeight(Region.USE_PREF_SIZE);
    reason.getStyleClass().addAll("soft", "small");
    Button again = new Button(FindingListWords.TELL_AGAIN);
    again.getStyleClass().addAll("quiet", "small");
    again.setAccessibleText(FindingListWords.tellAgain(heading.getText()));
    again.setOnAction(e -> model.tellAgain(muted.finding()));
    VBox row = new VBox(heading, reason, again);
    row.getStyleClass().addAll("finding", "muted");
    return row;
  }
}
