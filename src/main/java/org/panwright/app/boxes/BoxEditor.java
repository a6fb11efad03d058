package org.panwright.app.boxes;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.beans.value.ObservableValue;
import org.panwright.app.Session;
import org.panwright.app.dialogs.Choice;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.FileKind;
import org.panwright.app.dialogs.Form;
import org.panwright.app.fx.Action;
import org.panwright.app.fx.FreshId;
import org.panwright.kit.Box;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.StockEdit;
import org.panwright.store.BoxFiles;
import org.panwright.store.FileProblemException;
import org.panwright.words.BoxEditorWords;
import org.panwright.words.FileProblemWords;

/** Adds, changes and removes boxes, asking the painter what for. */
public final class BoxEditor {
  private static final FileKind FILE =
      new FileKind(BoxEditorWords.FILE_TITLE, BoxEditorWords.FILE_KIND, BoxFiles.ENDING);

  private final BoxFiles files = new BoxFiles();
  private final Session session;
  private final Dialogs dialogs;
  private final List<Box> plans;

  /**
   * @param plans ready-made boxes to start from, at least one
   */
  public BoxEditor(Session session, Dialogs dialogs, List<Box> plans) {
    this.session = session;
    this.dialogs = dialogs;
    this.plans = List.copyOf(plans);
  }

  /** New box; change, remove and share the box of the lineup looked at; a box from a file. */
  public List<Action> all() {
    ObservableValue<Boolean> some = session.lineupProperty().map(Optional::isPresent);
    return List.of(
        Action.of(BoxEditorWords.NEW_MENU, this::add).on("Shortcut+B"),
        Action.of(BoxEditorWords.CHANGE_MENU, () -> onShown(this::edit)).when(some),
        Action.of(BoxEditorWords.REMOVE_MENU, () -> onShown(this::remove)).when(some),
        Action.of(BoxEditorWords.SAVE_MENU, () -> onShown(this::save)).when(some),
        Action.of(BoxEditorWords.OPEN_MENU, this::open));
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
        .ifPresent(box -> session.perform(new Edit.AddBox(box)));
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

  /** Saves a box of the kit as a file of its own. */
  public void save(String boxId) {
    Optional<Box> box = session.kit().box(boxId);
    Optional<Path> file = box.flatMap(b -> dialogs.chooseToSave(FILE, Optional.empty(), b.name()));
    if (box.isPresent() && file.isPresent()) {
      try {
        files.write(file.get(), box.get(), session.kit().stock().pans());
      } catch (FileProblemException e) {
        dialogs.tell(BoxEditorWords.FILE_TITLE, FileProblemWords.sentence(e.problem()));
      }
    }
  }

  /** Adds the boxes of a file to the kit. */
  public void open() {
    Optional<Path> file = dialogs.chooseToOpen(FILE, Optional.empty());
    if (file.isEmpty()) {
      return;
    }
    try {
      BoxFiles.Shared shared = files.read(file.get());
      List<String> told = new ArrayList<>();
      for (Box box : shared.boxes()) {
        session.perform(new StockEdit.AddSharedBox(box, shared.pans()));
        told.add(BoxEditorWords.added(box.name()));
      }
      shared.notices().forEach(notice -> told.add(FileProblemWords.sentence(notice)));
      dialogs.tell(BoxEditorWords.FILE_TITLE, String.join(" ", told));
    } catch (FileProblemException e) {
      dialogs.tell(BoxEditorWords.FILE_TITLE, FileProblemWords.sentence(e.problem()));
    }
  }

  private void onShown(java.util.function.Consumer<String> work) {
    session.lineup().map(Lineup::boxId).ifPresent(work);
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
