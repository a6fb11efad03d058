package org.panwright.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import org.panwright.app.theme.Theme;
import org.panwright.kit.Edit;
import org.panwright.kit.Lineup;
import org.panwright.mixing.Ratio;
import org.panwright.store.DemoKit;

/**
 * Measures how long the program holds the JavaFX thread: drives the real window through what a
 * painter does all day and prints, for each, the longest time between two answers of the thread.
 *
 * <p>The time is the thread's processor time, which says something on a busy machine too. It counts
 * all that runs between two answers: our handlers, style and layout, and the toolkit's own work.
 * DEVELOPERS.md has the command.
 */
public final class ThreadTimes {
  private static final int ROUNDS = 16;
  private static final int CALM_PULSES = 20;

  private record Step(String name, Consumer<Integer> act) {}

  private final Stage stage = new Stage();
  private final ThreadWatch watch = new ThreadWatch();
  private final Workbench workbench;
  private final List<Step> steps;

  private ThreadTimes(Optional<Path> file) {
    try {
      Path folder = Files.createTempDirectory("panwright-thread-times");
      workbench = new OpenWindow(stage, folder, DemoKit.read(OpenWindow.LIBRARY), file).workbench;
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    steps =
        List.of(
            new Step("drop a paint", this::drop),
            new Step("preview a drop", this::preview),
            new Step("end the preview", round -> workbench.session().endPreview()),
            new Step("pick a mix", this::pickMix),
            new Step("pick a paint", this::pickPaint),
            new Step("other lineup", this::otherLineup),
            new Step("resize", round -> stage.setWidth(round % 2 == 0 ? 1100 : 1440)),
            new Step("type in the search", this::type),
            new Step(
                "other theme",
                round ->
                    workbench
                        .looks()
                        .themeProperty()
                        .set(round % 2 == 0 ? Theme.DARK : Theme.LIGHT)));
  }

  /** Prints the table; with a kit file as argument on that kit, else on the demo. */
  public static void main(String[] arguments) {
    Optional<Path> file = List.of(arguments).stream().findFirst().map(Path::of);
    Platform.startup(
        () -> {
          ThreadTimes times = new ThreadTimes(file);
          System.out.println("milliseconds              first   median      max");
          times.stage.setHeight(900);
          times.watch.begin();
          times.whenCalm(() -> times.run(0, 0, new ArrayList<>()));
        });
  }

  private void run(int step, int round, List<Double> longest) {
    if (step == steps.size()) {
      System.out.printf(Locale.ROOT, "heap in use %d MB%n", heapMegabytes());
      Platform.exit();
      return;
    }
    watch.forget();
    steps.get(step).act().accept(round);
    whenCalm(
        () -> {
          longest.add(watch.longestMs());
          if (round + 1 < ROUNDS) {
            Platform.runLater(() -> run(step, round + 1, longest));
          } else {
            print(steps.get(step).name(), longest);
            Platform.runLater(() -> run(step + 1, 0, new ArrayList<>()));
          }
        });
  }

  private static void print(String name, List<Double> longest) {
    List<Double> warm = new ArrayList<>(longest.subList(longest.size() / 2, longest.size()));
    Collections.sort(warm);
    System.out.printf(
        Locale.ROOT,
        "%-22s %8.1f %8.1f %8.1f%n",
        name,
        longest.get(0),
        warm.get(warm.size() / 2),
        warm.get(warm.size() - 1));
  }

  private static long heapMegabytes() {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    return (runtime.totalMemory() - runtime.freeMemory()) / 1_000_000;
  }

  private void whenCalm(Runnable then) {
    new AnimationTimer() {
      private int calm;

      @Override
      public void handle(long now) {
        calm = workbench.isSettled() ? calm + 1 : 0;
        if (calm > CALM_PULSES) {
          stop();
          Platform.runLater(then);
        }
      }
    }.start();
  }

  private void drop(int round) {
    Lineup lineup = lineup();
    String well = workbench.session().kit().boxOf(lineup).wells().get(0).id();
    workbench.session().perform(new Edit.PlacePaint(lineup.id(), well, paint(round)));
  }

  private void preview(int round) {
    Lineup lineup = lineup();
    String well = workbench.session().kit().boxOf(lineup).wells().get(1).id();
    workbench.session().preview(new Edit.PlacePaint(lineup.id(), well, paint(round)));
  }

  private void pickMix(int round) {
    List<String> paints = lineup().paintIds(workbench.session().kit().boxOf(lineup()));
    String first = paints.get(round % paints.size());
    String second = paints.get((round + 1) % paints.size());
    workbench.session().selectionProperty().set(new Selection.OfMix(first, second, Ratio.EVEN));
  }

  private void pickPaint(int round) {
    workbench.session().selectionProperty().set(new Selection.OfPaint(paint(round)));
  }

  private void otherLineup(int round) {
    List<Lineup> lineups = workbench.session().kit().lineups();
    workbench.session().look(lineups.get((round + 1) % lineups.size()).id());
  }

  private void type(int round) {
    TextField search = (TextField) stage.getScene().getRoot().lookup(".shelf .text-field");
    search.setText("blue".substring(0, round % 5));
  }

  private String paint(int round) {
    var paints = workbench.session().kit().shelf().paints();
    return paints.get(round % paints.size()).id();
  }

  private Lineup lineup() {
    return workbench.session().lineup().orElseThrow();
  }
}
