package org.panwright.app.launch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Properties;

/**
 * Starts the window in a second JVM that takes its classes from a {@link ClassArchive}; the first
 * start makes the archive, every later one has it.
 *
 * <p>No option in a jar can name an archive, so the process started by hand has to start another
 * one. That costs a tenth of a second and saves most of one. If anything is in the way (no cache
 * folder, a debugger, an archive named by hand, a system that does not tell a process its
 * arguments), the window opens in this process instead.
 */
public final class QuickStart {
  /** Set to {@code no} by hand: stay in one process. */
  private static final String WANTED = "panwright.start.archive";

  /** Set in the second process. */
  private static final String SECOND = "panwright.start.second";

  private static final List<String> OWN_WAYS =
      List.of(
          "-XX:SharedArchiveFile", "-XX:ArchiveClassesAtExit", "-Xshare", "-agent", "-javaagent");

  private QuickStart() {}

  /** Whether this is the process started by another one's {@link #run}. */
  public static boolean isSecond(Properties system) {
    return system.getProperty(SECOND) != null;
  }

  /**
   * Runs the program anew, waits until it ends, and passes the end of this process on to it.
   *
   * @param folder of the archives
   * @return the code the second process ended with; empty if none was started
   */
  public static OptionalInt run(Path folder, Properties system) {
    if (isSecond(system) || system.getProperty(WANTED, "").equals("no")) {
      return OptionalInt.empty();
    }
    Optional<String[]> arguments = ProcessHandle.current().info().arguments();
    Optional<ClassArchive> archive = ClassArchive.in(folder, system);
    if (arguments.isEmpty() || archive.isEmpty() || hasItsOwnWay(arguments.get())) {
      return OptionalInt.empty();
    }
    try {
      return OptionalInt.of(run(archive.get(), arguments.get(), system));
    } catch (IOException impossible) {
      return OptionalInt.empty();
    }
  }

  private static int run(ClassArchive archive, String[] arguments, Properties system)
      throws IOException {
    boolean isThere = archive.isThere();
    Path draft = isThere ? archive.file() : archive.draft(ProcessHandle.current().pid());
    Process second =
        new ProcessBuilder(command(isThere, draft, arguments, system)).inheritIO().start();
    Thread ending = new Thread(second::destroy);
    Runtime.getRuntime().addShutdownHook(ending);
    int code = end(second);
    if (!isThere && code == 0) {
      archive.keep(draft);
    }
    return code;
  }

  /**
   * The command of the second process.
   *
   * @param isThere whether to read the archive; else it is written when the process ends
   * @param archive the file to read or write
   * @param arguments all of the first process: options of the JVM, the jar, the program's own
   */
  static List<String> command(
      boolean isThere, Path archive, String[] arguments, Properties system) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(system.getProperty("java.home"), "bin", "java").toString());
    command.add((isThere ? "-XX:SharedArchiveFile=" : "-XX:ArchiveClassesAtExit=") + archive);
    command.add("-Xshare:auto");
    // Which class could not be archived, or which archive does not fit, is nobody's concern.
    command.add("-Xlog:disable");
    command.add("-Xlog:all=error:stderr");
    command.add("-D" + SECOND + "=yes");
    command.addAll(List.of(arguments));
    return command;
  }

  /** Whether the arguments of the JVM already settle where classes come from, or watch them. */
  static boolean hasItsOwnWay(String[] arguments) {
    for (String argument : arguments) {
      if (argument.equals("-jar")) {
        return false;
      }
      for (String own : OWN_WAYS) {
        if (argument.startsWith(own)) {
          return true;
        }
      }
    }
    return false;
  }

  private static int end(Process second) {
    while (true) {
      try {
        return second.waitFor();
      } catch (InterruptedException goOn) {
        // The window is open in the other process; there is nothing else to wait for.
      }
    }
  }
}
