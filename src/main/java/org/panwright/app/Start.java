package org.panwright.app;

import java.util.List;
import java.util.Locale;

/** The ways the program can start. */
enum Start {
  /** Opens the window. */
  WINDOW,
  /** Runs the command named by the arguments. */
  COMMAND,
  /** Reports on the demo kit because no window can be opened. */
  REPORT;

  /**
   * The way asked for.
   *
   * @param arguments nothing, one kit file to open in the window, or a command
   * @param display whether a window can be opened
   */
  static Start of(List<String> arguments, boolean display) {
    boolean window = arguments.isEmpty() || isKitFile(arguments);
    if (!window) {
      return COMMAND;
    }
    return display ? WINDOW : REPORT;
  }

  private static boolean isKitFile(List<String> arguments) {
    return arguments.size() == 1 && arguments.get(0).toLowerCase(Locale.ROOT).endsWith(".kit.json");
  }
}
