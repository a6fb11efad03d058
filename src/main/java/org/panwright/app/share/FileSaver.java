package org.panwright.app.share;

import java.nio.file.Path;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.panwright.kit.FileProblem;
import org.panwright.store.FileProblemException;
import org.panwright.store.SafeFile;

/** Writes whole files away from the JavaFX thread. */
final class FileSaver {
  private final Executor away;
  private final Executor home;
  private final Consumer<RuntimeException> failures;

  /**
   * @param away where files are written
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  FileSaver(Executor away, Executor home, Consumer<RuntimeException> failures) {
    this.away = away;
    this.home = home;
    this.failures = failures;
  }

  /** Writes {@code bytes}; either {@code done} or {@code failed} follows on the JavaFX thread. */
  void save(Path file, byte[] bytes, Runnable done, Consumer<FileProblem> failed) {
    away.execute(
        () -> {
          try {
            new SafeFile().write(file, bytes);
            home.execute(done);
          } catch (FileProblemException problem) {
            home.execute(() -> failed.accept(problem.problem()));
          } catch (RuntimeException fault) {
            home.execute(() -> failures.accept(fault));
          }
        });
  }
}
