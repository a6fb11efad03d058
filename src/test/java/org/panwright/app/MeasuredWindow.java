package org.panwright.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.panwright.app.fx.FrameByFrame;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;

/** A real window that is measured, with files in a folder of its own. */
record MeasuredWindow(Stage stage, Workbench workbench, FrameByFrame frames) {
  /** So many pulses without work in a row are calm. */
  private static final int CALM_PULSES = 20;

  static MeasuredWindow open(Kit demo, Optional<Path> file) {
    try {
      Stage stage = new Stage();
      Path folder = Files.createTempDirectory("panwright-thread-times");
      FrameByFrame frames = new FrameByFrame();
      OpenWindow open = new OpenWindow(stage, folder, demo, file, Workers.after(frames));
      return new MeasuredWindow(stage, open.workbench, frames);
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  Session session() {
    return workbench.session();
  }

  Lineup lineup() {
    return session().lineup().orElseThrow();
  }

  /** The id of a paint of the shelf, another one each round. */
  String paint(int round) {
    var paints = session().kit().shelf().paints();
    return paints.get(round % paints.size()).id();
  }

  /** The id of a well of the lineup's box by its place. */
  String well(int place) {
    return session().kit().boxOf(lineup()).wells().get(place).id();
  }

  /** Goes on when everything is shown and nothing moves any more. */
  void whenCalm(Runnable then) {
    new AnimationTimer() {
      private int calm;

      @Override
      public void handle(long now) {
        calm = workbench.isSettled() && frames.isDone() ? calm + 1 : 0;
        if (calm > CALM_PULSES) {
          stop();
          Platform.runLater(then);
        }
      }
    }.start();
  }
}
