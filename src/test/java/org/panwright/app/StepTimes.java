package org.panwright.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;
import java.util.function.ToDoubleFunction;
import javafx.application.Platform;
import javafx.scene.control.TextField;
import org.panwright.app.theme.Theme;
import org.panwright.kit.Edit;
import org.panwright.kit.Lineup;
import org.panwright.mixing.Ratio;
import org.panwright.words.ChooseViewWords;
import org.panwright.words.CompareWords;
import org.panwright.words.FillViewWords;
import org.panwright.words.OutingWords;
import org.panwright.words.PaintPageWords;
import org.panwright.words.SubjectWords;
import org.panwright.words.SwatchesWords;
import org.panwright.words.WindowWords;

/** How long steps of the day's work hold the JavaFX thread, each done sixteen times. */
final class StepTimes {
  private static final int ROUNDS = 16;

  /**
   * A thing a painter does.
   *
   * @param act does it, a little differently each round
   */
  record Step(String name, IntConsumer act) {}

  private final MeasuredWindow window;
  private final List<Step> steps;
  private final ThreadWatch watch = new ThreadWatch();

  StepTimes(MeasuredWindow window, List<Step> steps) {
    this.window = window;
    this.steps = steps;
  }

  /** What is done in the plan. */
  static List<Step> work(MeasuredWindow window) {
    Session session = window.session();
    return List.of(
        new Step(
            "drop a paint",
            round ->
                session.perform(
                    new Edit.PlacePaint(
                        window.lineup().id(), window.well(0), window.paint(round)))),
        new Step(
            "preview a drop",
            round ->
                session.preview(
                    new Edit.PlacePaint(
                        window.lineup().id(), window.well(1), window.paint(round)))),
        new Step("end the preview", round -> session.endPreview()),
        new Step("pick a mix", round -> pickMix(window, round)),
        new Step(
            "pick a paint",
            round -> session.selectionProperty().set(new Selection.OfPaint(window.paint(round)))),
        new Step("other lineup", round -> otherLineup(session, round)),
        new Step("resize", round -> resize(window, round)),
        new Step("type in the search", round -> type(window, round)),
        new Step(
            "other theme",
            round ->
                window
                    .workbench()
                    .looks()
                    .themeProperty()
                    .set(round % 2 == 0 ? Theme.DARK : Theme.LIGHT)));
  }

  /** Opening each of the other views, and going back to the plan every other time. */
  static List<Step> views(MeasuredWindow window) {
    List<String> names =
        List.of(
            PaintPageWords.VIEW,
            SwatchesWords.NAME,
            SubjectWords.PLACE,
            CompareWords.TITLE,
            ChooseViewWords.TITLE,
            FillViewWords.FILL,
            OutingWords.VIEW,
            WindowWords.PAPERS);
    Workbench workbench = window.workbench();
    return names.stream()
        .map(
            name ->
                new Step(
                    name, round -> workbench.showPlace(round % 2 == 0 ? name : WindowWords.PLAN)))
        .toList();
  }

  /** Prints a table, and ends the program. */
  void run(String title) {
    System.out.printf("%n%s; milliseconds of the JavaFX thread%n", title);
    System.out.printf(
        "%-20s%-24s%-24s%s%n", "", "   between two answers", "   handlers", "   a pulse");
    String heads = "   first  median  most  ";
    System.out.printf("%-20s%s%s%s%n", "", heads, heads, heads);
    watch.begin(window.stage().getScene());
    window.whenCalm(() -> run(0, 0, new ArrayList<>()));
  }

  private void run(int step, int round, List<ThreadWatch.Held> longest) {
    if (step == steps.size()) {
      System.out.printf(Locale.ROOT, "heap in use %d MB%n", heapMegabytes());
      Platform.exit();
      return;
    }
    watch.forget();
    steps.get(step).act().accept(round);
    window.whenCalm(
        () -> {
          longest.add(watch.longest());
          if (round + 1 < ROUNDS) {
            Platform.runLater(() -> run(step, round + 1, longest));
          } else {
            print(steps.get(step).name(), longest);
            Platform.runLater(() -> run(step + 1, 0, new ArrayList<>()));
          }
        });
  }

  private static void print(String name, List<ThreadWatch.Held> longest) {
    System.out.printf(
        "%-20s%s%s%s%n",
        name,
        figures(longest, ThreadWatch.Held::whole),
        figures(longest, ThreadWatch.Held::handlers),
        figures(longest, ThreadWatch.Held::pulse));
  }

  /** The first round, then median and longest of the second half. */
  private static String figures(
      List<ThreadWatch.Held> rounds, ToDoubleFunction<ThreadWatch.Held> of) {
    double[] warm = rounds.stream().skip(rounds.size() / 2).mapToDouble(of).sorted().toArray();
    return String.format(
        Locale.ROOT,
        "%8.1f%8.1f%6.1f  ",
        of.applyAsDouble(rounds.get(0)),
        warm[warm.length / 2],
        warm[warm.length - 1]);
  }

  private static long heapMegabytes() {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    return (runtime.totalMemory() - runtime.freeMemory()) / 1_000_000;
  }

  private static void pickMix(MeasuredWindow window, int round) {
    Lineup lineup = window.lineup();
    List<String> paints = lineup.paintIds(window.session().kit().boxOf(lineup));
    String first = paints.get(round % paints.size());
    String second = paints.get((round + 1) % paints.size());
    window.session().selectionProperty().set(new Selection.OfMix(first, second, Ratio.EVEN));
  }

  private static void otherLineup(Session session, int round) {
    List<Lineup> lineups = session.kit().lineups();
    session.look(lineups.get((round + 1) % lineups.size()).id());
  }

  /** Sets both sides: asked for one, the toolkit asks the screen for no size of the other. */
  private static void resize(MeasuredWindow window, int round) {
    window.stage().setWidth(round % 2 == 0 ? 1100 : 1440);
    window.stage().setHeight(round % 2 == 0 ? 800 : 900);
  }

  private static void type(MeasuredWindow window, int round) {
    TextField search = (TextField) window.stage().getScene().getRoot().lookup(".shelf .text-field");
    search.setText("blue".substring(0, round % 5));
  }
}
