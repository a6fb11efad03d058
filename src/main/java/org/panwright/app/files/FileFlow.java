package org.panwright.app.files;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.TextField;
import org.panwright.app.Session;
import org.panwright.app.dialogs.Choice;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.FileKind;
import org.panwright.app.dialogs.Form;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.settings.Remembered;
import org.panwright.kit.Edit;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Kit;
import org.panwright.store.KitFiles;
import org.panwright.words.FileProblemWords;
import org.panwright.words.FileWords;

/** Opening, saving and leaving kits, with the questions that keep anything from being lost. */
public final class FileFlow {
  private static final FileKind TO_OPEN =
      new FileKind(FileWords.OPEN_TITLE, FileWords.KIND, KitFiles.ENDING);
  private static final FileKind TO_SAVE =
      new FileKind(FileWords.SAVE_TITLE, FileWords.KIND, KitFiles.ENDING);

  private enum Leaving {
    SAVE,
    DISCARD,
    STAY
  }

  private final Session session;
  private final KitDocument document;
  private final Dialogs dialogs;
  private final Remembered remembered;
  private final Kit demo;

  /**
   * @param demo the kit to learn with
   */
  public FileFlow(
      Session session, KitDocument document, Dialogs dialogs, Remembered remembered, Kit demo) {
    this.session = session;
    this.document = document;
    this.dialogs = dialogs;
    this.remembered = remembered;
    this.demo = demo;
  }

  /** Leaves the kit for an empty one. */
  public void startNew() {
    leaving(() -> document.startWith(Kit.empty(FileWords.NEW_NAME)));
  }

  /** Leaves the kit for the demo kit. */
  public void openDemo() {
    leaving(() -> document.startWith(demo));
  }

  /** Leaves the kit for one the painter chooses. */
  public void open() {
    leaving(() -> dialogs.chooseToOpen(TO_OPEN, folder()).ifPresent(this::openNow));
  }

  /** Leaves the kit for the one in a file. */
  public void open(Path file) {
    leaving(() -> openNow(file));
  }

  /** After the start: remembers the kit that was opened, or tells why it was not. */
  public void started(FirstKit first) {
    Optional<Path> file = first.file();
    if (first.problem().isPresent()) {
      notOpened(file.orElseThrow(), first.problem().get());
    } else {
      file.ifPresent(this::remember);
    }
  }

  /** Saves to the kit's own file, or asks for one. */
  public void save() {
    save(() -> {});
  }

  /** Asks for a file and saves there. */
  public void saveAs() {
    saveAs(() -> {});
  }

  /** Asks for another name of the kit. */
  public void rename() {
    TextField name = new TextField(session.kit().name());
    FormGrid grid = new FormGrid();
    grid.row(FileWords.NAME, name);
    dialogs
        .fillIn(
            new Form<>(
                FileWords.RENAME_TITLE,
                grid,
                FileWords.RENAME_ACCEPT,
                name.textProperty().map(text -> !text.isBlank()),
                () -> name.getText().strip(),
                name))
        .ifPresent(changed -> session.perform(new Edit.RenameKit(changed)));
  }

  /** Looks at the lineup of the kit's file that was looked at when it was left. */
  public void lookAgain() {
    document
        .file()
        .map(file -> remembered.settings().lineups().get(file.toAbsolutePath()))
        .filter(id -> session.kit().lineup(id).isPresent())
        .ifPresent(session::look);
  }

  /** Does what leaves the kit, once nothing would be lost by it. */
  public void leaving(Runnable goOn) {
    Runnable leave =
        () -> {
          rememberLineup();
          goOn.run();
        };
    if (!document.unsavedProperty().get()) {
      leave.run();
      return;
    }
    Leaving answer =
        dialogs.ask(
            FileWords.UNSAVED_TITLE,
            FileWords.unsavedSentence(session.kit().name()),
            List.of(
                Choice.usual(FileWords.SAVE_FIRST, Leaving.SAVE),
                Choice.other(FileWords.DISCARD, Leaving.DISCARD),
                Choice.leave(FileWords.STAY, Leaving.STAY)));
    switch (answer) {
      case SAVE -> save(leave);
      case DISCARD -> leave.run();
      case STAY -> {}
    }
  }

  private void openNow(Path file) {
    document.open(
        file,
        () -> {
          remember(file);
          lookAgain();
        },
        problem -> notOpened(file, problem));
  }

  private void notOpened(Path file, FileProblem problem) {
    if (problem instanceof FileProblem.Missing) {
      remembered.change(settings -> settings.withoutRecent(file));
    }
    String sentence = FileProblemWords.sentence(problem);
    if (problem instanceof FileProblem.WithBackup with) {
      boolean backup =
          dialogs.ask(
              FileWords.CANNOT_OPEN,
              sentence,
              List.of(
                  Choice.usual(FileWords.OPEN_BACKUP, true),
                  Choice.leave(FileWords.LEAVE_CLOSED, false)));
      if (backup) {
        document.open(with.backup(), () -> {}, again -> notOpened(with.backup(), again));
      }
      return;
    }
    dialogs.tell(FileWords.CANNOT_OPEN, sentence);
  }

  private void save(Runnable goOn) {
    Optional<Path> own = document.file().filter(FileFlow::isKitFile);
    if (own.isEmpty() || document.openedProperty().get().forLooking()) {
      saveAs(goOn);
      return;
    }
    saveNow(own.get(), goOn);
  }

  private void saveAs(Runnable goOn) {
    dialogs
        .chooseToSave(TO_SAVE, folder(), fileName(session.kit().name()))
        .ifPresent(file -> saveNow(file, goOn));
  }

  private void saveNow(Path file, Runnable goOn) {
    document.saveTo(
        file,
        () -> {
          remember(file);
          goOn.run();
        },
        problem -> notSaved(problem, goOn));
  }

  private void notSaved(FileProblem problem, Runnable goOn) {
    boolean elsewhere =
        dialogs.ask(
            FileWords.CANNOT_SAVE,
            FileProblemWords.sentence(problem),
            List.of(
                Choice.usual(FileWords.SAVE_ELSEWHERE, true), Choice.leave(FileWords.STAY, false)));
    if (elsewhere) {
      saveAs(goOn);
    }
  }

  private void remember(Path file) {
    remembered.change(settings -> settings.withRecent(file.toAbsolutePath()));
  }

  private void rememberLineup() {
    Optional<Path> file = document.file().map(Path::toAbsolutePath);
    if (file.isPresent() && session.lineup().isPresent()) {
      String id = session.lineup().get().id();
      remembered.change(settings -> settings.withLineup(file.get(), id));
    }
  }

  /** The folder of the kit's file, else of the last kit. */
  private Optional<Path> folder() {
    return document
        .file()
        .or(() -> remembered.settings().recent().stream().findFirst())
        .map(file -> file.toAbsolutePath().getParent());
  }

  /** A backup is opened to be looked at and saved under its old name again by choice. */
  private static boolean isKitFile(Path file) {
    return file.getFileName().toString().endsWith(KitFiles.ENDING);
  }

  /** A name without what file names cannot hold. */
  public static String fileName(String kit) {
    String plain = kit.replaceAll("[\\\\/:*?\"<>|\\p{Cntrl}]", " ").strip();
    int end = plain.offsetByCodePoints(0, Math.min(60, plain.codePointCount(0, plain.length())));
    return plain.isEmpty() ? FileWords.NEW_NAME : plain.substring(0, end).strip();
  }
}
