package org.panwright.app;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import org.panwright.app.launch.ClassesAhead;
import org.panwright.kit.Kit;
import org.panwright.store.DemoKit;

/**
 * Measures how long the program holds the JavaFX thread, and how long a drop takes to show all it
 * brings: drives the real window through what a painter does all day. DEVELOPERS.md has the
 * command.
 *
 * <p>Times of the thread are processor times, which say something on a busy machine too. They count
 * all that runs between two answers of the thread: our handlers, and the toolkit's styles and
 * layout of as many nodes as we gave it.
 */
public final class ThreadTimes {
  private static final int MANY = 5000;
  private static final int MANY_WELLS = 24;

  private ThreadTimes() {}

  /** What is measured, each in a process of its own so that every first time is one. */
  private enum Part {
    DEMO,
    MANY_PAINTS,
    VIEWS,
    VIEWS_OF_MANY,
    DROPS
  }

  /**
   * Prints all tables; with the name of a part only that, with a kit file as argument the day's
   * work on that kit.
   */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    if (arguments.length == 0) {
      for (Part part : Part.values()) {
        inItsOwnProcess(part);
      }
      return;
    }
    for (Part part : Part.values()) {
      if (part.name().equals(arguments[0])) {
        measure(part);
        return;
      }
    }
    Kit demo = DemoKit.read(OpenWindow.LIBRARY);
    Optional<Path> file = Optional.of(Path.of(arguments[0]));
    Platform.startup(() -> work(MeasuredWindow.open(demo, file), "the kit " + arguments[0]));
  }

  private static void inItsOwnProcess(Part part) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(ProcessHandle.current().info().command().orElse("java"));
    command.addAll(ManagementFactory.getRuntimeMXBean().getInputArguments());
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.addAll(List.of(ThreadTimes.class.getName(), part.name()));
    new ProcessBuilder(command).inheritIO().start().waitFor();
  }

  /** The classes are there from the start, as in the program a second after its window. */
  private static void measure(Part part) throws InterruptedException {
    ClassesAhead.begin(PanwrightApp.class).join();
    Kit demo = DemoKit.read(OpenWindow.LIBRARY);
    switch (part) {
      case DEMO ->
          Platform.startup(
              () -> work(MeasuredWindow.open(demo, Optional.empty()), "the demo kit, day's work"));
      case MANY_PAINTS -> {
        Kit many = LargeKit.of(MANY, MANY_WELLS);
        Platform.startup(
            () -> work(MeasuredWindow.open(many, Optional.empty()), "5,000 paints, day's work"));
      }
      case VIEWS -> Platform.startup(() -> views(demo, "the demo kit"));
      case VIEWS_OF_MANY -> {
        Kit many = LargeKit.of(MANY, MANY_WELLS);
        Platform.startup(() -> views(many, "5,000 paints"));
      }
      case DROPS ->
          Platform.startup(() -> new DropTimes(MeasuredWindow.open(demo, Optional.empty())).run());
    }
  }

  private static void views(Kit kit, String title) {
    MeasuredWindow window = MeasuredWindow.open(kit, Optional.empty());
    new StepTimes(window, StepTimes.views(window)).run(title + ", a view opened and left again");
  }

  private static void work(MeasuredWindow window, String title) {
    new StepTimes(window, StepTimes.work(window)).run(title);
  }
}
