package org.panwright.app.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.panwright.app.Session;
import org.panwright.app.fx.Action;
import org.panwright.app.theme.Looks;
import org.panwright.words.WindowWords;

/** The frame round the views: menus, bar, notices, and the view chosen. */
public final class MainWindow {
  /** The smallest size at which everything can be used. */
  public static final double LEAST_WIDTH = 1100;

  /** See {@link #LEAST_WIDTH}. */
  public static final double LEAST_HEIGHT = 700;

  private final BorderPane frame;
  private final Looks looks;
  private final Action undo;
  private final Action redo;
  private final Places places;
  private final TopBar bar;
  private final Node notices;

  /**
   * @param name the kit's name with its mark
   * @param file where the kit is kept
   * @param lineups the choice of lineup
   * @param notices what has to be told without a question, above the views
   * @param views the views in their order, at least one
   * @param menus the menus, to which undo, redo and the views are added
   */
  public MainWindow(
      Session session,
      Looks looks,
      ObservableValue<String> name,
      ObservableValue<String> file,
      Node lineups,
      Node notices,
      List<Place> views,
      MenuPlan menus) {
    this.looks = looks;
    undo = UndoModel.undo(session);
    redo = UndoModel.redo(session);
    places = new Places(views);
    List<Menu> all = new ArrayList<>();
    all.add(menus.kit());
    all.add(Menus.of(WindowWords.EDIT_MENU, List.of(List.of(undo, redo))));
    all.addAll(menus.things());
    all.add(viewMenu(menus));
    all.add(menus.help());
    bar = new TopBar(name, file, lineups, undo, redo);
    this.notices = notices;
    frame = new BorderPane(places.ground());
    frame.setTop(new VBox(menusAndViews(Menus.bar(all.toArray(Menu[]::new))), bar, notices));
  }

  /** Shows a view by its number from 0. */
  public void showPlace(int place) {
    places.show(place);
  }

  /** Shows a view by the name on its button. */
  public void showPlace(String name) {
    places.show(name);
  }

  /**
   * Gives the keyboard to the next part of the window, or with {@code by} −1 to the one before: the
   * parts of the view, the bar above it, a notice.
   */
  public void stepPart(int by) {
    List<Node> parts = new ArrayList<>(PartSteps.of(places.view()));
    parts.add(bar);
    parts.add(notices);
    PartSteps.step(parts, Optional.ofNullable(frame.getScene().getFocusOwner()), by)
        .ifPresent(PartSteps::enter);
  }

  /**
   * Puts the window on a stage that has its size already.
   *
   * <p>The scene starts at that size: panes that keep their width through a change of the window's
   * would otherwise keep that of a first layout nobody sees.
   */
  public void on(Stage stage) {
    Scene scene = new Scene(frame, stage.getWidth(), stage.getHeight());
    looks.dress(scene.getStylesheets(), frame);
    FieldKeys.passOn(scene, undo, redo);
    stage.setScene(scene);
    stage.setMinWidth(LEAST_WIDTH);
    stage.setMinHeight(LEAST_HEIGHT);
  }

  private HBox menusAndViews(MenuBar bar) {
    HBox row = new HBox(bar, places.strip());
    row.getStyleClass().add("menu-row");
    HBox.setHgrow(bar, Priority.ALWAYS);
    return row;
  }

  private Menu viewMenu(MenuPlan menus) {
    List<List<Action>> groups = new ArrayList<>();
    groups.add(places.actions());
    groups.addAll(menus.view());
    return Menus.of(WindowWords.VIEW_MENU, groups);
  }
}
