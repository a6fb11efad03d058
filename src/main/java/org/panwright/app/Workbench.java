package org.panwright.app;

import java.util.List;
import javafx.application.Platform;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.panwright.analysis.Judge;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.faults.Faults;
import org.panwright.app.fx.Action;
import org.panwright.app.lineup.LineupActions;
import org.panwright.app.lineup.LineupBar;
import org.panwright.app.lineup.LineupModel;
import org.panwright.app.theme.Looks;
import org.panwright.app.theme.Theme;
import org.panwright.app.window.MainWindow;
import org.panwright.app.window.MenuPlan;
import org.panwright.app.window.Menus;
import org.panwright.app.window.Place;
import org.panwright.app.window.PlanView;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;
import org.panwright.words.WindowWords;

/** Builds the window out of its parts, by constructors, and knows which view sits where. */
public final class Workbench {
  private final Stage stage;
  private final Looks looks;
  private final Session session;
  private final Dialogs dialogs;

  public Workbench(
      Stage stage,
      Looks looks,
      Dialogs dialogs,
      PigmentLibrary library,
      Workers workers,
      Faults faults) {
    this.stage = stage;
    this.looks = looks;
    this.dialogs = dialogs;
    session =
        new Session(
            new Judge(library),
            workers.judging(),
            Platform::runLater,
            faults::take,
            Kit.empty("New kit"));
  }

  /** Shows the window. */
  public void show() {
    LineupModel lineups = new LineupModel(session);
    LineupActions lineupActions = new LineupActions(session, lineups, dialogs);
    ObservableValue<String> name = session.historyProperty().map(h -> h.kit().name());
    MainWindow window =
        new MainWindow(
            session,
            looks,
            name,
            name,
            new LineupBar(session, lineups, lineupActions.all()),
            new HBox(),
            List.of(
                new Place(WindowWords.PLAN, "Shortcut+1", this::plan),
                new Place(WindowWords.KEY_CARD, "Shortcut+2", () -> empty(WindowWords.KEY_CARD))),
            new MenuPlan(
                Menus.of(WindowWords.KIT_MENU, List.of()),
                List.of(Menus.of(WindowWords.BOX_MENU, List.of(lineupActions.all()))),
                List.of(
                    List.of(
                        Action.of(WindowWords.LIGHT, () -> looks.themeProperty().set(Theme.LIGHT)),
                        Action.of(WindowWords.DARK, () -> looks.themeProperty().set(Theme.DARK)))),
                Menus.of(WindowWords.HELP_MENU, List.of())));
    window.on(stage);
    stage.setWidth(1280);
    stage.setHeight(800);
    stage.show();
  }

  private PlanView plan() {
    return new PlanView(
        empty(WindowWords.SHELF),
        empty(WindowWords.BOX),
        empty(WindowWords.GRID),
        empty(WindowWords.RING),
        empty(WindowWords.FINDINGS),
        PlanView.USUAL);
  }

  private static Region empty(String heading) {
    Label label = new Label(heading);
    label.getStyleClass().add("pane-title");
    VBox pane = new VBox(label);
    pane.getStyleClass().add("pane");
    return pane;
  }
}
