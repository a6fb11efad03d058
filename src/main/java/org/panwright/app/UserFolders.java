package org.panwright.app;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Where this user keeps settings and logs of programs, by the custom of the system: the XDG Base
 * Directory specification on Linux, {@code %APPDATA%} on Windows, {@code Library/Application
 * Support} on macOS.
 *
 * @param settings the folder of the settings
 * @param logs the folder of the log
 * @param cache the folder of what can be made anew at any time
 */
public record UserFolders(Path settings, Path logs, Path cache) {
  /**
   * The folders of a user.
   *
   * @param system the name of the operating system
   * @param environment the variables of the environment
   * @param home the user's own folder
   */
  public static UserFolders of(String system, Map<String, String> environment, Path home) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      Path base =
          absolute(environment, "APPDATA").orElse(home.resolve("AppData").resolve("Roaming"));
      Path local =
          absolute(environment, "LOCALAPPDATA").orElse(home.resolve("AppData").resolve("Local"));
      return new UserFolders(
          base.resolve("Panwright"),
          base.resolve("Panwright"),
          local.resolve("Panwright").resolve("cache"));
    }
    if (name.contains("mac")) {
      Path library = home.resolve("Library");
      return new UserFolders(
          library.resolve("Application Support").resolve("Panwright"),
          library.resolve("Logs").resolve("Panwright"),
          library.resolve("Caches").resolve("Panwright"));
    }
    return new UserFolders(
        absolute(environment, "XDG_CONFIG_HOME")
            .orElse(home.resolve(".config"))
            .resolve("panwright"),
        absolute(environment, "XDG_STATE_HOME")
            .orElse(home.resolve(".local").resolve("state"))
            .resolve("panwright"),
        absolute(environment, "XDG_CACHE_HOME")
            .orElse(home.resolve(".cache"))
            .resolve("panwright"));
  }

  /** The folders of the user who runs the program. */
  public static UserFolders ofThisUser() {
    return of(
        System.getProperty("os.name"), System.getenv(), Path.of(System.getProperty("user.home")));
  }

  /** The specification lets relative values count as unset. */
  private static Optional<Path> absolute(Map<String, String> environment, String variable) {
    return Optional.ofNullable(environment.get(variable))
        .filter(value -> !value.isBlank())
        .map(Path::of)
        .filter(Path::isAbsolute);
  }
}
