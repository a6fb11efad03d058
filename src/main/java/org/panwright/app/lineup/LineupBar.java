package org.panwright.app.lineup;

import java.util.List;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.MenuButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import org.panwright.app.Session;
import org.panwright.app.fx.Action;
import org.panwright.app.fx.ByLabel;
import org.panwright.words.LineupWords;

/** The choice of the lineup looked at, with what can be done with lineups beside it. */
public final class LineupBar extends HBox {
  private final LineupModel model;
  private final ComboBox<LineupModel.Entry> choice = new ComboBox<>();
  private boolean following;

  /**
   * @param actions what can be done with lineups, for the button beside the choice
   */
  public LineupBar(Session session, LineupModel model, List<Action> actions) {
    this.model = model;
    getStyleClass().add("lineup-bar");
    Label label = new Label(LineupWords.LINEUP);
    label.getStyleClass().add("soft");
    label.setLabelFor(choice);
    choice.setAccessibleText(LineupWords.LINEUP);
    choice.setPrefWidth(270);
    choice.setConverter(new ByLabel<>(LineupModel.Entry::label));
    choice.setButtonCell(new Chosen());
    choice
        .valueProperty()
        .addListener(
            (property, before, now) -> {
              if (!following && now != null) {
                model.choose(now);
              }
            });
    MenuButton more = new MenuButton("⋯");
    more.setTooltip(new Tooltip(LineupWords.MORE));
    more.setAccessibleText(LineupWords.MORE);
    actions.forEach(action -> more.getItems().add(action.menuItem()));
    getChildren().setAll(label, choice, more);
    session.lineupProperty().addListener(changed -> follow());
    session.historyProperty().addListener(changed -> follow());
    follow();
  }

  /** The lineup looked at; the toolkit's own cell stays blank once a lineup was shown in it. */
  private static final class Chosen extends ListCell<LineupModel.Entry> {
    @Override
    protected void updateItem(LineupModel.Entry entry, boolean empty) {
      super.updateItem(entry, empty);
      setText(empty || entry == null ? LineupWords.NONE : entry.label());
    }
  }

  private void follow() {
    following = true;
    List<LineupModel.Entry> entries = model.entries();
    if (!entries.equals(choice.getItems())) {
      choice.getItems().setAll(entries);
    }
    choice.setValue(model.chosen().orElse(null));
    following = false;
  }
}
