package org.panwright.app.boxes;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.ComboBox;
import org.panwright.app.Session;
import org.panwright.app.dialogs.Choice;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.Form;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.Action;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.FreshId;
import org.panwright.kit.Box;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.words.BoxEditorWords;

/** Adds, changes and removes boxes, asking the painter what for. */
public final class BoxEditor {
  private final Session session;
  private final Dialogs dialogs;
  private final List<Box> plans;
  private final Consumer<Box> added;
  private final BoxSharing sharing;

  /**
   * @param plans ready-made boxes to start from, at least one
   * @param added told of a new box once it is in the kit
   * @param away where files are read and written
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public BoxEditor(
      Session session,
      Dialogs dialogs,
      List<Box> plans,
      Consumer<Box> added,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.session = session;
    this.dialogs = dialogs;
    this.plans = List.copyOf(plans);
    this.added = added;
    sharing = new BoxSharing(session, dialogs, away, home, failures);
  }

  /** New box; change, remove and share a box; a box from a file. */
  public List<Action> all() {
    ObservableValue<Boolean> some =
        session.historyProperty().map(now -> !now.kit().boxes().isEmpty());
    return List.of(
        Action.of(BoxEditorWords.NEW_MENU, this::add).on("Shortcut+B"),
        Action.of(BoxEditorWords.CHANGE_MENU, () -> onOne(this::edit)).when(some),
        Action.of(BoxEditorWords.REMOVE_MENU, () -> onOne(this::remove)).when(some),
        Action.of(BoxEditorWords.SAVE_MENU, () -> onOne(sharing::save)).when(some),
        Action.of(BoxEditorWords.OPEN_MENU, sharing::open));
  }

  /** Opens on a new box. */
  public void add() {
    Kit kit = session.kit();
    Set<String> taken = kit.boxes().stream().map(Box::id).collect(Collectors.toSet());
    Box plan = plans.get(0);
    BoxDraft start =
        new BoxDraft(
            FreshId.of("box", taken),
            BoxEditorWords.newName(kit.boxes().size() + 1),
            plan.widthMm(),
            plan.heightMm(),
            plan.lidWidthMm(),
            plan.lidHeightMm(),
            BoxDraft.of(plan).wells(),
            OptionalDouble.empty(),
            List.of());
    ask(BoxEditorWords.NEW_TITLE, BoxEditorWords.ADD, start)
        .ifPresent(
            box -> {
              session.perform(new Edit.AddBox(box));
              added.accept(box);
            });
  }

  /** Opens on a box of the kit. */
  public void edit(String boxId) {
    session
        .kit()
        .box(boxId)
        .flatMap(box -> ask(BoxEditorWords.CHANGE_TITLE, BoxEditorWords.CHANGE, BoxDraft.of(box)))
        .ifPresent(box -> session.perform(new Edit.ChangeBox(box)));
  }

  /** Removes a box with its lineups, asking first. */
  public void remove(String boxId) {
    Kit kit = session.kit();
    Optional<Box> box = kit.box(boxId);
    List<String> lineups =
        kit.lineups().stream().filter(l -> l.boxId().equals(boxId)).map(Lineup::name).toList();
    boolean sure =
        box.isPresent()
            && dialogs.ask(
                BoxEditorWords.REMOVE_TITLE,
                BoxEditorWords.removeSentence(box.get().name(), lineups),
                List.of(
                    Choice.usual(BoxEditorWords.REMOVE, true),
                    Choice.leave(BoxEditorWords.KEEP, false)));
    if (sure) {
      session.perform(new Edit.RemoveBox(boxId));
    }
  }

  /**
   * Does work on the box of the lineup looked at. Where the kit has a box without a lineup, which
   * could not be looked at, the painter is asked which box is meant.
   */
  private void onOne(Consumer<String> work) {
    Kit kit = session.kit();
    Optional<Box> shown = session.lineup().map(kit::boxOf);
    Set<String> inUse = kit.lineups().stream().map(Lineup::boxId).collect(Collectors.toSet());
    boolean clear = kit.boxes().stream().allMatch(box -> inUse.contains(box.id()));
    Optional<Box> meant =
        clear
            ? shown
            : kit.boxes().size() == 1
                ? Optional.of(kit.boxes().get(0))
                : which(kit.boxes(), shown.orElse(kit.boxes().get(0)));
    meant.map(Box::id).ifPresent(work);
  }

  private Optional<Box> which(List<Box> boxes, Box first) {
    ComboBox<Box> box = new ComboBox<>();
    box.setConverter(new ByLabel<>(Box::name));
    box.getItems().setAll(boxes);
    box.setValue(first);
    FormGrid grid = new FormGrid();
    grid.row(BoxEditorWords.BOX, box);
    return dialogs.fillIn(
        new Form<>(
            BoxEditorWords.WHICH,
            grid,
            BoxEditorWords.GO_ON,
            box.valueProperty().isNotNull(),
            box::getValue,
            box));
  }

  private Optional<Box> ask(String title, String accept, BoxDraft start) {
    BoxEditorModel model = new BoxEditorModel(session.kit(), start);
    BoxEditorView view = new BoxEditorView(model, plans);
    return dialogs.fillIn(
        new Form<>(
            title,
            view,
            accept,
            model.problemProperty().map(String::isEmpty),
            () -> model.draft().toBox().orElseThrow(),
            view.firstField()));
  }
}
