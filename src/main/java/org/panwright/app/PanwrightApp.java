package org.panwright.app;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.panwright.app.dialogs.WindowDialogs;
import org.panwright.app.faults.Faults;
import org.panwright.app.faults.Log;
import org.panwright.app.faults.PulseWatch;
import org.panwright.app.fx.FrameByFrame;
import org.panwright.app.launch.ClassesAhead;
import org.panwright.app.settings.Remembered;
import org.panwright.app.theme.Looks;
import org.panwright.app.theme.Theme;
import org.panwright.kit.BoxPlan;
import org.panwright.words.LaunchWords;

/**
 * The windowed program: reads what it needs beside the toolkit's start, builds the window, and the
 * rest once the window is seen.
 */
final class PanwrightApp {
  private final Workers workers;
  private final FrameByFrame frames = new FrameByFrame();
  private final Log log;
  private final FutureTask<Opening> reading;

  private PanwrightApp(List<String> arguments) {
    workers = Workers.after(frames);
    UserFolders folders = UserFolders.ofThisUser();
    log = Log.in(folders.logs());
    reading = Opening.begin(folders, workers, log, arguments.stream().findFirst().map(Path::of));
  }

  /**
   * Opens the window and returns; the program goes on until the window is closed.
   *
   * @param arguments nothing, or one kit file
   * @throws UnsupportedOperationException if no display answers
   */
  static void launch(List<String> arguments) {
    PanwrightApp app = new PanwrightApp(arguments);
    Platform.startup(app::openOrEnd);
  }

  /** A window that cannot be built leaves nothing that could tell so, so the process ends. */
  private void openOrEnd() {
    try {
      open();
    } catch (RuntimeException | Error fault) {
      log.fault("start", fault);
      System.err.println(LaunchWords.cannotStart(log.file()));
      System.exit(1);
    }
  }

  private void open() {
    Stage stage = new Stage();
    Looks looks = new Looks(Theme.LIGHT);
    WindowDialogs dialogs = new WindowDialogs(stage, looks);
    Faults faults = new Faults(log, Platform::runLater, () -> dialogs);
    Thread.setDefaultUncaughtExceptionHandler(faults);
    Thread.currentThread().setUncaughtExceptionHandler(faults);
    Opening opening = opening();
    Remembered remembered = opening.remembered();
    looks.themeProperty().set(remembered.settings().dark() ? Theme.DARK : Theme.LIGHT);
    Workbench workbench =
        new Workbench(
            stage,
            looks,
            dialogs,
            workers,
            faults,
            remembered,
            opening.library(),
            BoxPlan.ALL,
            opening.demo(),
            opening.first());
    stage.setOnHidden(closed -> close(remembered));
    workbench.show();
    frames.execute(
        () ->
            new PulseWatch(Thread.currentThread(), Platform::runLater, log).start(workers.clock()));
    frames.execute(() -> ClassesAhead.begin(PanwrightApp.class));
    StartTimer.ifAsked(System.getProperties(), System.out);
  }

  /** Waits for the reading, which is nearly always done by now. */
  private Opening opening() {
    try {
      return reading.get();
    } catch (ExecutionException failed) {
      throw new IllegalStateException("the program could not read what it needs", failed);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException("stopped while starting", stopped);
    }
  }

  private void close(Remembered remembered) {
    remembered.writeNow();
    workers.close();
    Platform.exit();
  }
}
