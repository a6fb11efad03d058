package org.panwright.app.launch;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Loads the classes of the program that nothing has asked for yet, away from the JavaFX thread.
 *
 * <p>A view opened for the first time needs a hundred classes that were never loaded; read and
 * checked only then, they are most of what holds the thread. Loading runs no code of theirs: their
 * first use still sets them up.
 */
public final class ClassesAhead {
  private static final String ENDING = ".class";

  private ClassesAhead() {}

  /**
   * Begins to load them on a thread of its own.
   *
   * @param beside a class of the program; its loader and its jar or folder are taken
   * @return the thread, which ends when all are there
   */
  public static Thread begin(Class<?> beside) {
    Thread thread = new Thread(() -> load(beside), "panwright-classes");
    thread.setDaemon(true);
    thread.start();
    return thread;
  }

  /** Loads and checks every class beside one; how many there were. */
  static int load(Class<?> beside) {
    try {
      List<String> names = namesBeside(beside);
      names.forEach(name -> load(name, beside.getClassLoader()));
      return names.size();
    } catch (IOException | URISyntaxException unreadable) {
      return 0;
    }
  }

  /** Asking for its constructors makes the JVM check a class without setting it up. */
  private static void load(String name, ClassLoader loader) {
    try {
      var unused = Class.forName(name, false, loader).getDeclaredConstructors();
    } catch (ClassNotFoundException | LinkageError unusable) {
      // Whoever needs it is told; here nobody does.
    }
  }

  private static List<String> namesBeside(Class<?> beside) throws IOException, URISyntaxException {
    CodeSource source = beside.getProtectionDomain().getCodeSource();
    if (source == null) {
      return List.of();
    }
    Path home = Path.of(source.getLocation().toURI());
    if (Files.isDirectory(home)) {
      return names(home);
    }
    try (FileSystem jar = FileSystems.newFileSystem(URI.create("jar:" + home.toUri()), Map.of())) {
      return names(jar.getPath("/"));
    }
  }

  private static List<String> names(Path root) throws IOException {
    try (Stream<Path> files = Files.walk(root)) {
      return files
          .map(file -> root.relativize(file).toString())
          .filter(file -> file.endsWith(ENDING) && !file.contains("-info"))
          .map(file -> file.substring(0, file.length() - ENDING.length()))
          .map(file -> file.replace(root.getFileSystem().getSeparator(), "."))
          .toList();
    }
  }
}
