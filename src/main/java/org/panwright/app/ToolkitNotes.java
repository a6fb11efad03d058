package org.panwright.app;

import java.text.MessageFormat;
import java.util.ResourceBundle;

/**
 * Where the toolkit's own notes go: errors to standard error in one line, the rest nowhere.
 *
 * <p>Without it the toolkit greets everybody who starts from a terminal with a warning about module
 * names, and loads the whole of the platform's logging for that while the window is waited for.
 * What the program itself has to note goes to {@link org.panwright.app.faults.Log}.
 */
public final class ToolkitNotes extends System.LoggerFinder {
  @Override
  public System.Logger getLogger(String name, Module module) {
    return new ErrorsOnly(name);
  }

  private record ErrorsOnly(String name) implements System.Logger {
    @Override
    public String getName() {
      return name;
    }

    @Override
    public boolean isLoggable(Level level) {
      return level.getSeverity() >= Level.ERROR.getSeverity() && level != Level.OFF;
    }

    @Override
    public void log(Level level, ResourceBundle bundle, String message, Throwable thrown) {
      if (isLoggable(level)) {
        System.err.println(name + ": " + message + (thrown == null ? "" : ": " + thrown));
      }
    }

    @Override
    public void log(Level level, ResourceBundle bundle, String format, Object... values) {
      if (isLoggable(level)) {
        boolean plain = values == null || values.length == 0;
        System.err.println(name + ": " + (plain ? format : MessageFormat.format(format, values)));
      }
    }
  }
}
