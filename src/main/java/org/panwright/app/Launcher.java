package org.panwright.app;

import java.util.Arrays;
import java.util.Locale;
import javafx.application.Application;
import org.panwright.command.CommandLine;

/**
 * Where the program starts: the window, or the command line if there are arguments or no display.
 *
 * <p>It does not extend {@link Application}, so that the program also starts from the class path.
 */
public final class Launcher {
  private Launcher() {}

  /** Starts the program; ends the process with a code only when no window was opened. */
  public static void main(String[] arguments) {
    // All words are British English, so their figures are written that way too, on every machine.
    Locale.setDefault(Locale.Category.FORMAT, Locale.UK);
    boolean display = Display.isThere(System.getProperties(), System.getenv());
    switch (Start.of(Arrays.asList(arguments), display)) {
      case WINDOW -> openWindow(arguments);
      case COMMAND -> System.exit(CommandLine.run(arguments, System.out, System.err));
      case REPORT -> System.exit(CommandLine.withoutDisplay(arguments, System.out, System.err));
    }
  }

  private static void openWindow(String[] arguments) {
    try {
      Application.launch(PanwrightApp.class, arguments);
    } catch (UnsupportedOperationException unreachable) {
      // A display is named but nobody answers there: to the painter the same as none.
      System.exit(CommandLine.withoutDisplay(arguments, System.out, System.err));
    }
  }
}
