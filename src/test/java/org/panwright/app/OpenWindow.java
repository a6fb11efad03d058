package org.panwright.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.panwright.app.dialogs.WindowDialogs;
import org.panwright.app.faults.Faults;
import org.panwright.app.faults.Log;
import org.panwright.app.files.FirstKit;
import org.panwright.app.settings.Remembered;
import org.panwright.app.theme.Looks;
import org.panwright.app.theme.Theme;
import org.panwright.kit.BoxPlan;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;
import org.panwright.store.KitFiles;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.store.SettingsFile;

/** The whole window for tests, with settings and files in a folder of the test's own. */
final class OpenWindow implements AutoCloseable {
  static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();

  private final Workers workers;
  private final SettingsFile settings;
  final Workbench workbench;

  /**
   * Shows it.
   *
   * @param file the kit to open, if any
   */
  OpenWindow(Stage stage, Path folder, Kit demo, Optional<Path> file) {
    this(stage, folder, demo, file, new Workers());
  }

  /** Shows it, with workers of the caller's. */
  OpenWindow(Stage stage, Path folder, Kit demo, Optional<Path> file, Workers workers) {
    this.workers = workers;
    settings = new SettingsFile(folder.resolve("settings.json"));
    Looks looks = new Looks(Theme.LIGHT);
    WindowDialogs dialogs = new WindowDialogs(stage, looks);
    Log log = Log.in(folder.resolve("log"));
    Remembered remembered = new Remembered(settings, workers.clock(), log::note);
    workbench =
        new Workbench(
            stage,
            looks,
            dialogs,
            workers,
            new Faults(log, Platform::runLater, () -> dialogs),
            remembered,
            LIBRARY,
            BoxPlan.ALL,
            demo,
            FirstKit.read(new KitFiles(LIBRARY), file, remembered.settings(), demo));
    workbench.show();
  }

  Session session() {
    return workbench.session();
  }

  List<Path> recent() {
    return settings.read().recent();
  }

  @Override
  public void close() {
    workers.close();
  }
}
