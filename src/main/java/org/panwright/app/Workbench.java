package org.panwright.app;

import java.util.List;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.panwright.analysis.Judge;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.faults.Faults;
import org.panwright.app.fx.Action;
import org.panwright.app.grid.GridModel;
import org.panwright.app.grid.GridView;
import org.panwright.app.ground.GroundEditor;
import org.panwright.app.lineup.LineupActions;
import org.panwright.app.lineup.LineupBar;
import org.panwright.app.lineup.LineupModel;
import org.panwright.app.mix.MixModel;
import org.panwright.app.mix.MixView;
import org.panwright.app.ring.RingModel;
import org.panwright.app.ring.RingView;
import org.panwright.app.theme.Looks;
import org.panwright.app.theme.Theme;
import org.panwright.app.window.MainWindow;
import org.panwright.app.window.MenuPlan;
import org.panwright.app.window.Menus;
import org.panwright.app.window.Place;
import org.panwright.app.window.PlanView;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;
import org.panwright.words.GroundWords;
import org.panwright.words.WindowWords;

/** Builds the window out of its parts, by constructors, and knows which view sits where. */
public final class Workbench {
  private final Stage stage;
  private final Looks looks;
  private final Session session;
  private final Dialogs dialogs;
  private final Workers workers;
  private final Faults faults;

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
    this.workers = workers;
    this.faults = faults;
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
    GroundEditor ground = new GroundEditor(session, dialogs);
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
                List.of(
                    Menus.of(
                        WindowWords.BOX_MENU,
                        List.of(
                            lineupActions.all(),
                            List.of(Action.of(GroundWords.MENU, ground::open))))),
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
    GridModel grid = new GridModel(session, workers.painting(), Platform::runLater, faults::take);
    return new PlanView(
        empty(WindowWords.SHELF),
        empty(WindowWords.BOX),
        new GridView(grid),
        new RingView(new RingModel(session)),
        findingsOrMix(),
        PlanView.USUAL);
  }

  /** The findings; while a mix of the grid is picked, that mix in their place. */
  private Region findingsOrMix() {
    MixView mix = new MixView(new MixModel(session));
    Region findings = empty(WindowWords.FINDINGS);
    ObservableValue<Boolean> picked =
        session.selectionProperty().map(s -> s instanceof Selection.OfMix);
    showWhen(mix, picked);
    showWhen(findings, picked.map(is -> !is));
    return new StackPane(findings, mix);
  }

  private static void showWhen(Node node, ObservableValue<Boolean> shown) {
    node.visibleProperty().bind(Bindings.createBooleanBinding(shown::getValue, shown));
  }

  private static Region empty(String heading) {
    Label label = new Label(heading);
    label.getStyleClass().add("pane-title");
    VBox pane = new VBox(label);
    pane.getStyleClass().add("pane");
    return pane;
  }
}
