package org.panwright.command;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.panwright.store.FileProblemException;
import org.panwright.words.CommandWords;
import org.panwright.words.FileProblemWords;
import org.panwright.words.LaunchWords;

/**
 * The door to the commands.
 *
 * <p>Whatever happens, the user gets at most plain sentences on {@code err} and one of three codes:
 * {@value #DONE} done, {@value #FAULT} a fault of the program, {@value #BAD_USE} bad use or bad
 * input.
 */
public final class CommandLine {
  /** The code of a command that was done. */
  public static final int DONE = 0;

  /** The code after a fault of the program. */
  public static final int FAULT = 1;

  /** The code after bad use or bad input. */
  public static final int BAD_USE = 2;

  /** Where the report goes that stands in for the window. */
  private static final String FOLDER_WITHOUT_DISPLAY = "panwright-report";

  private CommandLine() {}

  /**
   * Runs the command named by the first argument.
   *
   * @return the code to end the process with
   */
  public static int run(String[] arguments, PrintStream out, PrintStream err) {
    List<String> words = List.of(arguments);
    if (words.isEmpty()) {
      err.println(CommandWords.NO_COMMAND);
      return BAD_USE;
    }
    if (words.contains("--help") || words.get(0).equals("-h")) {
      out.println(CommandWords.help(words.get(0)));
      return DONE;
    }
    if (words.get(0).equals("--version")) {
      out.println(CommandWords.version(version()));
      return DONE;
    }
    Optional<Command> command = command(words.get(0));
    if (command.isEmpty()) {
      err.println(CommandWords.unknownCommand(words.get(0)));
      return BAD_USE;
    }
    return guarded(command.get(), words.subList(1, words.size()), out, err);
  }

  /**
   * What is done in place of opening a window where there is no display: says so, then reports on
   * the kit named by the only argument, or else on the demo kit.
   *
   * @return the code to end the process with
   */
  public static int withoutDisplay(String[] arguments, PrintStream out, PrintStream err) {
    return withoutDisplay(arguments, Path.of(FOLDER_WITHOUT_DISPLAY), out, err);
  }

  static int withoutDisplay(String[] arguments, Path folder, PrintStream out, PrintStream err) {
    List<String> kit = List.of(arguments);
    err.println(kit.isEmpty() ? LaunchWords.NO_DISPLAY : CommandWords.noDisplay(kit.get(0)));
    return guarded(new Report.WithoutDisplay(folder), kit, out, err);
  }

  private static Optional<Command> command(String name) {
    return Optional.ofNullable(
        switch (name.toLowerCase(Locale.ROOT)) {
          case "report" -> new Report();
          case "mix" -> new Mix();
          case "mixcheck" -> new MixCheck();
          case "compare" -> new Compare();
          case "choose" -> new Choose();
          case "pack" -> new Pack();
          case "fill" -> new Fill();
          case "fit" -> new Fit();
          default -> null;
        });
  }

  static int guarded(Command command, List<String> words, PrintStream out, PrintStream err) {
    try {
      command.run(words, out, err);
      return DONE;
    } catch (BadUseException e) {
      err.println(e.getMessage());
      return BAD_USE;
    } catch (FileProblemException e) {
      err.println(FileProblemWords.sentence(e.problem()));
      return BAD_USE;
    } catch (RuntimeException | Error e) {
      err.println(CommandWords.fault(place(e)));
      return FAULT;
    } finally {
      out.flush();
      err.flush();
    }
  }

  /** Where in our own code it happened, in the terms of whoever will mend it. */
  private static String place(Throwable fault) {
    for (StackTraceElement element : fault.getStackTrace()) {
      if (element.getClassName().startsWith("org.panwright.")) {
        return element.getFileName() + ":" + element.getLineNumber();
      }
    }
    return fault.getClass().getSimpleName();
  }

  /** The version the package was built as; empty when run from its folders. */
  private static Optional<String> version() {
    return Optional.ofNullable(CommandLine.class.getPackage().getImplementationVersion());
  }
}
