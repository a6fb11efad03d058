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

  private final Logger logger;
  private final Path file;

  private Log(Logger logger, Path file) {
    this.logger = logger;
    this.file = file;
  }

  /** A log in {@code folder}; if it cannot be written there, it goes to standard error only. */
  public static Log in(Path folder) {
    Logger logger = Logger.getLogger("org.panwright");
    Path file = folder.resolve("panwright.log");
    try {
      Files.createDirectories(folder);
      FileHandler handler =
          new FileHandler(file.toString().replace("%", "%%"), MOST_BYTES, 1, true);
      handler.setFormatter(new SimpleFormatter());
      handler.setEncoding("UTF-8");
      logger.addHandler(handler);
      logger.setUseParentHandlers(false);
    } catch (IOException unwritable) {
      logger.log(Level.WARNING, "the log cannot be written to " + file, unwritable);
    }
    return new Log(logger, file);
  }

  /** Where it is written. */
  public Path file() {
    return file;
  }

  /** Writes a fault under its code. */
  public void fault(String code, Throwable fault) {
    logger.log(Level.SEVERE, "fault " + code, fault);
  }

  /** Writes something worth knowing when a fault is looked into. */
  public void note(String text) {
    logger.log(Level.INFO, text);
  }
}
