package org.panwright.app.lineup;

import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import org.panwright.app.Session;
import org.panwright.app.dialogs.Choice;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.Form;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.Action;
import org.panwright.app.fx.ByLabel;
import org.panwright.kit.Box;
import org.panwright.kit.Lineup;
import org.panwright.words.DialogWords;
import org.panwright.words.LineupWords;

/** What can be done with whole lineups. */
public final class LineupActions {
  private final Session session;
  private final LineupModel model;
  private final Dialogs dialogs;
  private final Runnable makeBox;

  /**
   * @param makeBox lets the painter make a box, for a kit that has none
   */
  public LineupActions(Session session, LineupModel model, Dialogs dialogs, Runnable makeBox) {
    this.session = session;
    this.model = model;
    this.dialogs = dialogs;
    this.makeBox = makeBox;
  }

  /** New, duplicate, rename, remove. */
  public List<Action> all() {
    ObservableValue<Boolean> some = session.lineupProperty().map(l -> l.isPresent());
    return List.of(
        Action.of(LineupWords.NEW, this::add).on("Shortcut+L"),
        Action.of(LineupWords.DUPLICATE, model::duplicate).on("Shortcut+Shift+L").when(some),
        Action.of(LineupWords.RENAME, this::rename).when(some),
        Action.of(LineupWords.REMOVE, model::remove).when(some));
  }

  /** Gives a kit without lineups its first one, for a box just made: so it is seen and filled. */
  public void startWith(Box box) {
    if (session.kit().lineups().isEmpty()) {
      model.add(LineupWords.newName(1), box);
    }
  }

  /** Asks for name and box of a new lineup, or for a box if there is none. */
  public void add() {
    if (session.kit().boxes().isEmpty()) {
      boolean make =
          dialogs.ask(
              LineupWords.NO_BOX_TITLE,
              LineupWords.NO_BOX,
              List.of(
                  Choice.usual(LineupWords.MAKE_BOX, true),
                  Choice.leave(DialogWords.LEAVE, false)));
      if (make) {
        makeBox.run();
      }
      return;
    }
    TextField name = new TextField(LineupWords.newName(session.kit().lineups().size() + 1));
    ComboBox<Box> box = new ComboBox<>();
    box.setConverter(new ByLabel<>(Box::name));
    box.getItems().setAll(session.kit().boxes());
    box.setValue(session.lineup().map(session.kit()::boxOf).orElse(session.kit().boxes().get(0)));
    FormGrid grid = new FormGrid();
    grid.row(LineupWords.NAME, name);
    grid.row(LineupWords.FOR_BOX, box);
    dialogs
        .fillIn(
            new Form<>(
                LineupWords.NEW_TITLE,
                grid,
                LineupWords.NEW_ACCEPT,
                name.textProperty().map(text -> !text.isBlank()),
                () -> new Wanted(name.getText(), box.getValue()),
                name))
        .ifPresent(wanted -> model.add(wanted.name(), wanted.box()));
  }

  private record Wanted(String name, Box box) {}

  private void rename() {
    TextField name = new TextField(session.lineup().map(Lineup::name).orElse(""));
    FormGrid grid = new FormGrid();
    grid.row(LineupWords.NAME, name);
    dialogs
        .fillIn(
            new Form<>(
                LineupWords.RENAME_TITLE,
                grid,
                LineupWords.RENAME_ACCEPT,
                name.textProperty().map(text -> !text.isBlank()),
                name::getText,
                name))
        .ifPresent(model::rename);
  }
}
