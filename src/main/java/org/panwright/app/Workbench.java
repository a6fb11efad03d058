package org.panwright.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Menu;
import javafx.stage.Stage;
import org.panwright.analysis.judge.Judge;
import org.panwright.app.arrange.LineupArranger;
import org.panwright.app.boxes.BoxEditor;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.faults.Faults;
import org.panwright.app.files.FileActions;
import org.panwright.app.files.FileFlow;
import org.panwright.app.files.FirstKit;
import org.panwright.app.files.KitDocument;
import org.panwright.app.files.NoticeBar;
import org.panwright.app.fx.Action;
import org.panwright.app.ground.GroundEditor;
import org.panwright.app.lineup.LineupActions;
import org.panwright.app.lineup.LineupBar;
import org.panwright.app.lineup.LineupModel;
import org.panwright.app.paint.PaintActions;
import org.panwright.app.paint.PaintEditor;
import org.panwright.app.recipes.Wanted;
import org.panwright.app.settings.Remembered;
import org.panwright.app.share.ShareActions;
import org.panwright.app.theme.Looks;
import org.panwright.app.theme.Theme;
import org.panwright.app.window.MainWindow;
import org.panwright.app.window.MenuPlan;
import org.panwright.app.window.Menus;
import org.panwright.app.window.Place;
import org.panwright.kit.Box;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;
import org.panwright.store.KitFiles;
import org.panwright.words.ArrangeWords;
import org.panwright.words.FileWords;
import org.panwright.words.GroundWords;
import org.panwright.words.PaintPageWords;
import org.panwright.words.RecipeViewWords;
import org.panwright.words.SubjectWords;
import org.panwright.words.WindowWords;

/** Builds one window out of its parts, by constructors, and knows what belongs where. */
public final class Workbench {
  private final Stage stage;
  private final Looks looks;
  private final Dialogs dialogs;
  private final Remembered remembered;
  private final ToneBook tones;
  private final Session session;
  private final KitDocument document;
  private final FileFlow files;
  private final LineupActions lineups;
  private final PaintEditor paints;
  private final BoxEditor boxes;
  private final GroundEditor ground;
  private final LineupArranger arranger;
  private final FirstKit first;
  private final MainWindow window;
  private final PlanPlace plan;
  private final ShareActions share;
  private final FurtherViews further;

  /**
   * @param remembered the settings
   * @param library the pigments
   * @param plans ready-made boxes to start from
   * @param demo the kit to learn with
   * @param first what is open at first
   */
  public Workbench(
      Stage stage,
      Looks looks,
      Dialogs dialogs,
      Workers workers,
      Faults faults,
      Remembered remembered,
      PigmentLibrary library,
      List<Box> plans,
      Kit demo,
      FirstKit first) {
    this.stage = stage;
    this.looks = looks;
    this.dialogs = dialogs;
    this.remembered = remembered;
    this.first = first;
    tones = new ToneBook(library);
    Judge judge = new Judge(library);
    session =
        new Session(
            judge, workers.judging(), Platform::runLater, faults::take, first.opened().kit());
    document =
        new KitDocument(
            session,
            first.opened(),
            new KitFiles(library),
            workers.files(),
            Platform::runLater,
            faults::take);
    files = new FileFlow(session, document, dialogs, remembered, demo);
    files.lookAgain();
    LineupModel lineupModel = new LineupModel(session);
    lineups = new LineupActions(session, lineupModel, dialogs, this::makeBox);
    paints = new PaintEditor(session, tones, dialogs);
    boxes =
        new BoxEditor(
            session,
            dialogs,
            plans,
            lineups::startWith,
            workers.files(),
            Platform::runLater,
            faults::take);
    ground = new GroundEditor(session, dialogs);
    arranger =
        new LineupArranger(
            session, tones, dialogs, workers.searching(), Platform::runLater, faults::take);
    plan = new PlanPlace(session, tones, editors(), workers, faults, remembered);
    further =
        new FurtherViews(
            new Means(
                session, library, judge, tones, dialogs, editors(), workers, faults, remembered));
    share =
        new ShareActions(
            session,
            document,
            tones,
            dialogs,
            workers.files(),
            Platform::runLater,
            faults::take,
            plan::figures);
    List<Place> views = new ArrayList<>();
    views.add(new Place(WindowWords.PLAN, plan::build));
    views.addAll(further.all());
    window =
        new MainWindow(
            session,
            looks,
            name(),
            document
                .openedProperty()
                .map(o -> o.file().map(Path::toString).orElse(FileWords.NO_FILE)),
            new LineupBar(session, lineupModel, lineups.all()),
            new NoticeBar(document, dialogs),
            views,
            menus());
  }

  private void makeBox() {
    boxes.add();
  }

  /** Shows the window where it was last. */
  public void show() {
    looks.themeProperty().set(remembered.settings().dark() ? Theme.DARK : Theme.LIGHT);
    stage.getIcons().setAll(Emblem.sizes());
    stage.titleProperty().bind(title());
    WindowPlaceKeeper.of(stage, remembered);
    window.on(stage);
    stage.setOnCloseRequest(
        event -> {
          event.consume();
          close();
        });
    stage.show();
    Platform.runLater(() -> files.started(first));
  }

  /** What is open. */
  public Session session() {
    return session;
  }

  /** The light and the dark look. */
  public Looks looks() {
    return looks;
  }

  /** The editors of the things in the kit. */
  public Editors editors() {
    return new EditorDesk(
        paints, boxes, lineups, arranger, ground, this::openPage, () -> showPlace(0));
  }

  /** Shows a view by its number from 0. */
  public void showPlace(int place) {
    window.showPlace(place);
  }

  /** Shows a view by the name on its button. */
  public void showPlace(String name) {
    window.showPlace(name);
  }

  /** A part of the window by its style, for pictures of it. */
  Optional<Node> part(String style) {
    return Optional.ofNullable(stage.getScene().lookup(style));
  }

  /** Shows a photo in the view of the subject, beside what the lineup makes of it. */
  void paint(Path photo) {
    showPlace(SubjectWords.PLACE);
    further.paint(photo);
  }

  /** Whether all that is shown is of the kit as it is now. */
  public boolean isSettled() {
    boolean judged =
        session.lineup().isEmpty()
            || session
                .judgementProperty()
                .get()
                .filter(judgement -> judgement.kit().equals(session.kit()))
                .isPresent();
    return judged && plan.isSettled() && further.areSettled();
  }

  private void close() {
    files.leaving(
        () -> {
          remembered.writeNow();
          stage.close();
        });
  }

  private MenuPlan menus() {
    FileActions fileActions = new FileActions(files, document, remembered);
    Menu kit =
        Menus.of(
            WindowWords.KIT_MENU,
            List.of(
                fileActions.opening(),
                fileActions.saving(),
                List.of(Action.of(FileWords.CLOSE, this::close).on("Shortcut+W"))));
    kit.getItems().add(2, fileActions.recent());
    kit.getItems().add(kit.getItems().size() - 2, share.menu());
    Menu shelf = Menus.of(WindowWords.SHELF_MENU, List.of(new PaintActions(session, paints).all()));
    Menu box =
        Menus.of(
            WindowWords.BOX_MENU,
            List.of(
                lineups.all(),
                List.of(
                    Action.of(ArrangeWords.MENU, arranger::open)
                        .when(session.lineupProperty().map(Optional::isPresent))),
                boxes.all(),
                List.of(
                    Action.of(RecipeViewWords.MENU, this::mixAColour).on("Shortcut+M"),
                    Action.of(GroundWords.MENU, ground::open))));
    Menu help =
        Menus.of(
            WindowWords.HELP_MENU,
            List.of(
                List.of(
                    Action.of(
                        WindowWords.ABOUT,
                        () -> dialogs.tell(WindowWords.PROGRAM, WindowWords.about(version()))))));
    return new MenuPlan(
        kit,
        List.of(shelf, box),
        List.of(
            List.of(
                dressing(WindowWords.LIGHT, Theme.LIGHT), dressing(WindowWords.DARK, Theme.DARK)),
            List.of(
                Action.of(WindowWords.NEXT_PANE, () -> window.stepPart(1)).on("F6"),
                Action.of(WindowWords.PREVIOUS_PANE, () -> window.stepPart(-1)).on("Shift+F6"),
                Action.of(WindowWords.EVEN_OUT, plan::evenOut))),
        help);
  }

  private void openPage(String paintId) {
    session.selectionProperty().set(new Selection.OfPaint(paintId));
    showPlace(PaintPageWords.VIEW);
  }

  private void mixAColour() {
    showPlace(0);
    session.selectionProperty().set(Wanted.middleGrey());
  }

  private Action dressing(String words, Theme theme) {
    return Action.of(
            words,
            () -> {
              looks.themeProperty().set(theme);
              remembered.change(settings -> settings.withDark(theme == Theme.DARK));
            })
        .chosenWhen(looks.themeProperty().map(theme::equals));
  }

  private ObservableValue<String> name() {
    return Bindings.createStringBinding(
        () ->
            FileWords.name(
                session.kit().name(),
                document.unsavedProperty().get(),
                document.openedProperty().get().forLooking()),
        session.historyProperty(),
        document.unsavedProperty(),
        document.openedProperty());
  }

  private ObservableValue<String> title() {
    return Bindings.createStringBinding(
        () ->
            WindowWords.title(
                session.kit().name(),
                document.file().map(file -> file.getFileName().toString()).orElse(""),
                document.unsavedProperty().get()),
        session.historyProperty(),
        document.unsavedProperty(),
        document.openedProperty());
  }

  private static String version() {
    return Optional.ofNullable(Workbench.class.getPackage().getImplementationVersion())
        .orElse(WindowWords.UNBUILT);
  }
}
