package org.panwright.app;

import java.util.Arrays;
import java.util.List;
import javafx.application.Application;
import org.panwright.words.LaunchWords;

/**
 * Where the program starts: the window, or the command line if there are arguments or no display.
 *
 * <p>It does not extend {@link Application}, so that the program also starts from the class path.
 */
public final class Launcher {
  private Launcher() {}

  /** Starts the program; ends the process with a code only when no window was opened. */
  public static void main(String[] arguments) {
    List<String> words = Arrays.asList(arguments);
    if (Start.of(words, Display.isThere(System.getProperties(), System.getenv())) == Start.WINDOW) {
      openWindow(arguments);
    } else {
      System.err.println(LaunchWords.NO_DISPLAY);
      System.exit(2);
    }
  }

  private static void openWindow(String[] arguments) {
    Application.launch(PanwrightApp.class, arguments);
  }
}
