package org.panwright.app;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Scene;
import javafx.stage.Stage;
import javafx.stage.Window;
import javax.imageio.ImageIO;
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
import org.panwright.store.DemoKit;
import org.panwright.store.OpenedKit;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.store.SettingsFile;

/** Brings the window into one state after another and writes down what it shows. */
public final class Photographer extends Application {
  /** Pulses to let pass once nothing is being worked out any more. */
  private static final int SETTLING_PULSES = 12;

  private final Workers workers = new Workers();
  private PigmentLibrary library;
  private Path nowhere;

  @Override
  public void init() throws IOException {
    library = PigmentLibraryReader.read();
    nowhere = Files.createTempDirectory("panwright-pictures");
  }

  @Override
  public void start(Stage stage) {
    List<String> words = getParameters().getRaw();
    Path folder = Path.of(words.get(0));
    Workbench workbench = workbench(stage);
    workbench.show();
    List<Shot> shots = Shot.named(words.subList(1, words.size()));
    take(workbench, stage, folder, shots, 0);
  }

  /** A window as at the very first start, which remembers nothing. */
  private Workbench workbench(Stage stage) {
    Looks looks = new Looks(Theme.LIGHT);
    WindowDialogs dialogs = new WindowDialogs(stage, looks);
    Log log = Log.in(nowhere);
    Faults faults = new Faults(log, Platform::runLater, () -> dialogs);
    Thread.currentThread().setUncaughtExceptionHandler(faults);
    Remembered remembered =
        new Remembered(
            new SettingsFile(nowhere.resolve("settings.json")), workers.clock(), log::note);
    Kit demo = DemoKit.read(library);
    return new Workbench(
        stage,
        looks,
        dialogs,
        workers,
        faults,
        remembered,
        library,
        BoxPlan.ALL,
        demo,
        new FirstKit(OpenedKit.unsaved(demo), Optional.empty(), Optional.empty()));
  }

  @Override
  public void stop() {
    workers.close();
  }

  private void take(Workbench workbench, Stage stage, Path folder, List<Shot> shots, int next) {
    if (next == shots.size()) {
      Platform.exit();
      return;
    }
    Shot shot = shots.get(next);
    stage.setWidth(shot.width());
    stage.setHeight(shot.height());
    workbench.looks().themeProperty().set(shot.theme());
    Platform.runLater(() -> shot.prepare().accept(workbench));
    whenSettled(
        workbench,
        () -> {
          write(topScene(stage), Screenshots.file(folder, shot.name()));
          closeDialogs(stage);
          Platform.runLater(() -> take(workbench, stage, folder, shots, next + 1));
        });
  }

  private static void whenSettled(Workbench workbench, Runnable then) {
    new AnimationTimer() {
      private int calm;

      @Override
      public void handle(long now) {
        calm = workbench.isSettled() ? calm + 1 : 0;
        if (calm > SETTLING_PULSES) {
          stop();
          then.run();
        }
      }
    }.start();
  }

  private static Scene topScene(Stage stage) {
    List<Window> windows = Window.getWindows();
    return windows.stream()
        .filter(window -> window != stage && window instanceof Stage)
        .reduce((below, above) -> above)
        .orElse(stage)
        .getScene();
  }

  private static void closeDialogs(Stage stage) {
    List.copyOf(Window.getWindows()).stream()
        .filter(window -> window != stage && window instanceof Stage)
        .forEach(Window::hide);
  }

  private static void write(Scene scene, Path file) {
    BufferedImage picture = SwingFXUtils.fromFXImage(scene.snapshot(null), null);
    try {
      Files.createDirectories(file.getParent());
      ImageIO.write(picture, "png", file.toFile());
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }
}
