package org.panwright.app;

import java.util.Locale;
import java.util.Map;
import java.util.Properties;

/**
 * Whether there is a display; asked before JavaFX starts, because its own answer is a stack trace.
 */
final class Display {
  private Display() {}

  static boolean isThere(Properties system, Map<String, String> environment) {
    String name = system.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    boolean byEnvironment = !name.startsWith("windows") && !name.startsWith("mac");
    boolean drawsInMemory = "Monocle".equals(system.getProperty("glass.platform"));
    return drawsInMemory || !byEnvironment || !environment.getOrDefault("DISPLAY", "").isBlank();
  }
}
