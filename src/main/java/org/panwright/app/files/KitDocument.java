package org.panwright.app.files;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableBooleanValue;
import org.panwright.app.Session;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Kit;
import org.panwright.store.FileProblemException;
import org.panwright.store.KitFiles;
import org.panwright.store.OpenedKit;

/**
 * The kit of a window together with the file it came from. Reading and writing happen away from the
 * JavaFX thread; while they do, nothing else is read or written.
 */
public final class KitDocument {
  private final Session session;
  private final KitFiles files;
  private final Executor away;
  private final Executor home;
  private final Consumer<RuntimeException> failures;
  private final ReadOnlyObjectWrapper<OpenedKit> opened;
  private final ReadOnlyObjectWrapper<List<FileProblem>> notices;
  private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
  private final ObservableBooleanValue unsaved;

  /**
   * @param first what {@code session} has open
   * @param away where files are read and written
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public KitDocument(
      Session session,
      OpenedKit first,
      KitFiles files,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.session = session;
    this.files = files;
    this.away = away;
    this.home = home;
    this.failures = failures;
    opened = new ReadOnlyObjectWrapper<>(first);
    notices = new ReadOnlyObjectWrapper<>(first.notices());
    unsaved =
        Bindings.createBooleanBinding(
            this::differsFromFile, session.historyProperty(), opened.getReadOnlyProperty());
  }

  /** What ties the kit to its file. */
  public ReadOnlyObjectProperty<OpenedKit> openedProperty() {
    return opened.getReadOnlyProperty();
  }

  /** What the painter should know of the kit's file and has not yet put away. */
  public ReadOnlyObjectProperty<List<FileProblem>> noticesProperty() {
    return notices.getReadOnlyProperty();
  }

  /** Puts the notices away: the painter has read them. */
  public void noticesRead() {
    notices.set(List.of());
  }

  /** The file of the kit, if it has one to save to. */
  public Optional<Path> file() {
    return opened.get().file();
  }

  /** Whether something was done since the kit was opened or saved. */
  public ObservableBooleanValue unsavedProperty() {
    return unsaved;
  }

  /** Whether a file is being read or written. */
  public ReadOnlyBooleanProperty busyProperty() {
    return busy.getReadOnlyProperty();
  }

  /** Leaves the kit for one that has no file. */
  public void startWith(Kit kit) {
    show(OpenedKit.unsaved(kit));
  }

  /** Leaves the kit for one that was opened already. */
  public void show(OpenedKit other) {
    session.open(other.kit());
    opened.set(other);
    notices.set(other.notices());
  }

  /** Leaves the kit for the one in a file; if that fails, the kit stays. */
  public void open(Path file, Runnable done, Consumer<FileProblem> failed) {
    exchange(() -> files.open(file), this::show, done, failed);
  }

  /** Saves the kit as it is now into a file, which is then its file. */
  public void saveTo(Path file, Runnable done, Consumer<FileProblem> failed) {
    OpenedKit before = opened.get();
    Kit kit = session.kit();
    exchange(() -> files.saveAs(before, kit, file), this::saved, done, failed);
  }

  /** Saving answers no notice but that the file is for looking only; the kit now has its own. */
  private void saved(OpenedKit now) {
    opened.set(now);
    notices.set(
        Stream.concat(
                notices.get().stream().filter(notice -> !(notice instanceof FileProblem.Newer)),
                now.notices().stream())
            .toList());
  }

  /** Saves the kit as it is now into another file, while its own stays its own. */
  public void copyTo(Path file, Runnable done, Consumer<FileProblem> failed) {
    if (file().filter(own -> own.toAbsolutePath().equals(file.toAbsolutePath())).isPresent()) {
      saveTo(file, done, failed);
      return;
    }
    OpenedKit before = opened.get();
    Kit kit = session.kit();
    exchange(() -> files.saveAs(before, kit, file), copy -> {}, done, failed);
  }

  private interface Exchange {
    OpenedKit run() throws FileProblemException;
  }

  private void exchange(
      Exchange work, Consumer<OpenedKit> take, Runnable done, Consumer<FileProblem> failed) {
    if (busy.get()) {
      return;
    }
    busy.set(true);
    away.execute(
        () -> {
          try {
            OpenedKit result = work.run();
            finish(
                () -> {
                  take.accept(result);
                  done.run();
                });
          } catch (FileProblemException problem) {
            finish(() -> failed.accept(problem.problem()));
          } catch (RuntimeException fault) {
            finish(() -> failures.accept(fault));
          }
        });
  }

  private void finish(Runnable delivery) {
    home.execute(
        () -> {
          busy.set(false);
          delivery.run();
        });
  }

  /** By identity: a kit that was undone back to the saved one is that very kit again. */
  @SuppressWarnings("ReferenceEquality")
  private boolean differsFromFile() {
    return session.kit() != opened.get().kit();
  }
}
