package org.panwright.app;

import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.panwright.app.dialogs.WindowDialogs;
import org.panwright.app.faults.Faults;
import org.panwright.app.faults.Log;
import org.panwright.app.faults.PulseWatch;
import org.panwright.app.theme.Looks;
import org.panwright.app.theme.Theme;
import org.panwright.paint.PigmentLibrary;
import org.panwright.store.PigmentLibraryReader;

/** The windowed program: reads what it needs beside the toolkit's start, then builds the window. */
public final class PanwrightApp extends Application {
  private final Workers workers = new Workers();
  private PigmentLibrary library;

  /** Runs on the launcher's thread while the toolkit is already up. */
  @Override
  public void init() {
    library = PigmentLibraryReader.read();
  }

  @Override
  public void start(Stage stage) {
    Looks looks = new Looks(Theme.LIGHT);
    WindowDialogs dialogs = new WindowDialogs(stage, looks);
    Log log = Log.in(UserFolders.ofThisUser().logs());
    Faults faults = new Faults(log, Platform::runLater, () -> dialogs);
    Thread.setDefaultUncaughtExceptionHandler(faults);
    Thread.currentThread().setUncaughtExceptionHandler(faults);
    new PulseWatch(Thread.currentThread(), Platform::runLater, log).start(workers.clock());
    new Workbench(stage, looks, dialogs, library, workers, faults).show();
  }

  @Override
  public void stop() {
    workers.close();
  }
}
