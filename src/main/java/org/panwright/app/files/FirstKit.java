package org.panwright.app.files;

import java.nio.file.Path;
import java.util.Optional;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Kit;
import org.panwright.store.FileProblemException;
import org.panwright.store.KitFiles;
import org.panwright.store.OpenedKit;
import org.panwright.store.Settings;

/**
 * What a window starts with: the file asked for, else the kit opened last, else the demo.
 *
 * @param opened what is shown
 * @param problem why the file wanted could not be opened, with {@code file}
 * @param file the file wanted, if there was one
 */
public record FirstKit(OpenedKit opened, Optional<Path> file, Optional<FileProblem> problem) {
  /** Reads it; any thread. */
  public static FirstKit read(KitFiles files, Optional<Path> asked, Settings settings, Kit demo) {
    Optional<Path> wanted =
        asked.map(Path::toAbsolutePath).or(() -> settings.recent().stream().findFirst());
    OpenedKit fallback = OpenedKit.unsaved(demo);
    if (wanted.isEmpty()) {
      return new FirstKit(fallback, wanted, Optional.empty());
    }
    try {
      return new FirstKit(files.open(wanted.get()), wanted, Optional.empty());
    } catch (FileProblemException failed) {
      return new FirstKit(fallback, wanted, Optional.of(failed.problem()));
    }
  }
}
