package org.panwright.app.launch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeSet;
import java.util.zip.CRC32;

/**
 * The file in which a JVM keeps the program's classes in the form it runs them in (class data
 * sharing, JEP 350).
 *
 * <p>Its name is made of what it is valid for: the jars by name, size and time, and the JVM by
 * version and place. If one of them changes, another file is looked for. The JVM checks the same
 * once more and does without a file that does not fit.
 *
 * @param file where it is or will be
 */
record ClassArchive(Path file) {
  private static final String SUFFIX = ".jsa";

  /** Archives of other versions are let go after this time. */
  private static final Duration KEPT = Duration.ofDays(30);

  /**
   * The archive of the program that runs, in a folder.
   *
   * @param system the system properties
   * @return empty if the program does not run from one jar with its libraries beside it
   */
  static Optional<ClassArchive> in(Path folder, Properties system) {
    String started = system.getProperty("java.class.path", "");
    Path jar = Path.of(started);
    if (!started.endsWith(".jar") || !Files.isRegularFile(jar)) {
      return Optional.empty();
    }
    try {
      CRC32 sum = new CRC32();
      add(sum, system.getProperty("java.home") + system.getProperty("java.vm.version"));
      addFile(sum, jar);
      Path libraries = jar.resolveSibling("lib");
      if (Files.isDirectory(libraries)) {
        for (Path library : sorted(libraries, "*.jar")) {
          addFile(sum, library);
        }
      }
      String name = "classes-" + Long.toHexString(sum.getValue()) + SUFFIX;
      return Optional.of(new ClassArchive(folder.resolve(name)));
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  /** Whether it is there. */
  boolean isThere() {
    return Files.isRegularFile(file);
  }

  /**
   * Where a process may write it, so that nobody reads it half written; makes the folder.
   *
   * @throws IOException if the folder cannot be made
   */
  Path draft(long process) throws IOException {
    Files.createDirectories(file.toAbsolutePath().getParent());
    return file.resolveSibling(file.getFileName() + "." + process);
  }

  /** Puts a whole draft in place, and lets go of archives nobody has made anew for long. */
  void keep(Path draft) throws IOException {
    if (!Files.isRegularFile(draft)) {
      return;
    }
    Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
    long oldest = System.currentTimeMillis() - KEPT.toMillis();
    for (Path other : sorted(file.toAbsolutePath().getParent(), "classes-*" + SUFFIX + "*")) {
      if (Files.getLastModifiedTime(other).toMillis() < oldest) {
        Files.deleteIfExists(other);
      }
    }
  }

  private static TreeSet<Path> sorted(Path folder, String pattern) throws IOException {
    TreeSet<Path> found = new TreeSet<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, pattern)) {
      for (Path each : files) {
        found.add(each);
      }
    }
    return found;
  }

  private static void addFile(CRC32 sum, Path file) throws IOException {
    BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
    add(sum, file.toAbsolutePath() + "|" + now.size() + "|" + now.lastModifiedTime().toMillis());
  }

  private static void add(CRC32 sum, String text) {
    sum.update(text.getBytes(StandardCharsets.UTF_8));
  }
}
