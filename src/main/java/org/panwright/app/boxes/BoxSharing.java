package org.panwright.app.boxes;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.panwright.app.Session;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.FileKind;
import org.panwright.kit.Box;
import org.panwright.kit.PanKind;
import org.panwright.kit.StockEdit;
import org.panwright.store.BoxFiles;
import org.panwright.store.FileProblemException;
import org.panwright.words.BoxEditorWords;
import org.panwright.words.FileProblemWords;

/** Boxes to and from files of their own, read and written away from the JavaFX thread. */
final class BoxSharing {
  private static final FileKind FILE =
      new FileKind(BoxEditorWords.FILE_TITLE, BoxEditorWords.FILE_KIND, BoxFiles.ENDING);

  /** Work on a file; what comes of it is done on the JavaFX thread. */
  private interface FileWork {
    Runnable then() throws FileProblemException;
  }

  private final BoxFiles files = new BoxFiles();
  private final Session session;
  private final Dialogs dialogs;
  private final Executor away;
  private final Executor home;
  private final Consumer<RuntimeException> failures;

  /**
   * @param away where files are read and written
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  BoxSharing(
      Session session,
      Dialogs dialogs,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.session = session;
    this.dialogs = dialogs;
    this.away = away;
    this.home = home;
    this.failures = failures;
  }

  /** Saves a box of the kit as a file of its own. */
  void save(String boxId) {
    Optional<Box> box = session.kit().box(boxId);
    List<PanKind> pans = session.kit().stock().pans();
    box.flatMap(b -> dialogs.chooseToSave(FILE, Optional.empty(), b.name()))
        .ifPresent(
            file ->
                run(
                    () -> {
                      files.write(file, box.get(), pans);
                      return () -> tell(BoxEditorWords.saved(file.getFileName().toString()));
                    }));
  }

  /** Adds the boxes of a file to the kit. */
  void open() {
    dialogs.chooseToOpen(FILE, Optional.empty()).ifPresent(this::open);
  }

  private void open(Path file) {
    run(
        () -> {
          BoxFiles.Shared shared = files.read(file);
          return () -> add(shared);
        });
  }

  private void add(BoxFiles.Shared shared) {
    List<String> told = new ArrayList<>();
    for (Box box : shared.boxes()) {
      session.perform(new StockEdit.AddSharedBox(box, shared.pans()));
      told.add(BoxEditorWords.added(box.name()));
    }
    shared.notices().forEach(notice -> told.add(FileProblemWords.sentence(notice)));
    tell(String.join(" ", told));
  }

  private void run(FileWork work) {
    away.execute(
        () -> {
          try {
            home.execute(work.then());
          } catch (FileProblemException e) {
            home.execute(() -> tell(FileProblemWords.sentence(e.problem())));
          } catch (RuntimeException fault) {
            home.execute(() -> failures.accept(fault));
          }
        });
  }

  private void tell(String words) {
    dialogs.tell(BoxEditorWords.FILE_TITLE, words);
  }
}
