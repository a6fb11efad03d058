package org.panwright.app.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.logging.FileHandler;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;

/** The program's log in the user's folder: faults and blocked pulses. Any thread. */
public final class Log {
  private static final int MOST_BYTES = 1_000_000;

  private final Path file;
  private Logger logger;

  private Log(Path file) {
    this.file = file;
  }

  /**
   * A log in {@code folder}, begun with its first entry; if it cannot be written there, it goes to
   * standard error only.
   */
  public static Log in(Path folder) {
    return new Log(folder.resolve("panwright.log"));
  }

  /** Where it is written. */
  public Path file() {
    return file;
  }

  /** Writes a fault under its code. */
  public void fault(String code, Throwable fault) {
    logger().log(Level.SEVERE, "fault " + code, fault);
  }

  /** Writes something worth knowing when a fault is looked into. */
  public void note(String text) {
    logger().log(Level.INFO, text);
  }

  private synchronized Logger logger() {
    if (logger == null) {
      logger = begin();
    }
    return logger;
  }

  private Logger begin() {
    Logger begun = Logger.getLogger("org.panwright");
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      FileHandler handler =
          new FileHandler(file.toString().replace("%", "%%"), MOST_BYTES, 1, true);
      handler.setFormatter(new SimpleFormatter());
      handler.setEncoding("UTF-8");
      begun.addHandler(handler);
      begun.setUseParentHandlers(false);
    } catch (IOException unwritable) {
      begun.log(Level.WARNING, "the log cannot be written to " + file, unwritable);
    }
    return begun;
  }
}
