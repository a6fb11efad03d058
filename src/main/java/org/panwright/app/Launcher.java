package org.panwright.app;

import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalInt;
import org.panwright.app.launch.QuickStart;
import org.panwright.command.CommandLine;

/**
 * Where the program starts: the window, or the command line if there are arguments or no display.
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
    OptionalInt ended = QuickStart.run(UserFolders.ofThisUser().cache(), System.getProperties());
    if (ended.isPresent()) {
      System.exit(ended.getAsInt());
    }
    try {
      PanwrightApp.launch(Arrays.asList(arguments));
    } catch (UnsupportedOperationException unreachable) {
      // A display is named but nobody answers there: to the painter the same as none.
      System.exit(CommandLine.withoutDisplay(arguments, System.out, System.err));
    }
  }
}
