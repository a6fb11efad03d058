package org.panwright.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.panwright.app.dialogs.WindowDialogs;
import org.panwright.app.faults.Faults;
import org.panwright.app.faults.Log;
import org.panwright.app.faults.PulseWatch;
import org.panwright.app.files.FirstKit;
import org.panwright.app.settings.Remembered;
import org.panwright.app.theme.Looks;
import org.panwright.app.theme.Theme;
import org.panwright.kit.BoxPlan;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;
import org.panwright.store.DemoKit;
import org.panwright.store.KitFiles;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.store.SettingsFile;

/** The windowed program: reads what it needs beside the toolkit's start, then builds the window. */
public final class PanwrightApp extends Application {
  private final Workers workers = new Workers();
  private final UserFolders folders = UserFolders.ofThisUser();
  private final Log log = Log.in(folders.logs());
  private PigmentLibrary library;
  private Kit demo;
  private Remembered remembered;
  private FirstKit first;

  /** Runs on the launcher's thread, not on JavaFX's. */
  @Override
  public void init() {
    library = PigmentLibraryReader.read();
    demo = DemoKit.read(library);
    remembered =
        new Remembered(
            new SettingsFile(folders.settings().resolve("settings.json")),
            workers.clock(),
            log::note);
    first = FirstKit.read(new KitFiles(library), asked(), remembered.settings(), demo);
  }

  @Override
  public void start(Stage stage) {
    Looks looks = new Looks(remembered.settings().dark() ? Theme.DARK : Theme.LIGHT);
    WindowDialogs dialogs = new WindowDialogs(stage, looks);
    Faults faults = new Faults(log, Platform::runLater, () -> dialogs);
    Thread.setDefaultUncaughtExceptionHandler(faults);
    Thread.currentThread().setUncaughtExceptionHandler(faults);
    new PulseWatch(Thread.currentThread(), Platform::runLater, log).start(workers.clock());
    Workbench workbench =
        new Workbench(
            stage, looks, dialogs, workers, faults, remembered, library, BoxPlan.ALL, demo, first);
    workbench.show();
    StartTimer.ifAsked(System.getProperties(), System.out);
  }

  @Override
  public void stop() {
    remembered.writeNow();
    workers.close();
  }

  private Optional<Path> asked() {
    List<String> words = getParameters().getRaw();
    return words.isEmpty() ? Optional.empty() : Optional.of(Path.of(words.get(0)));
  }
}
