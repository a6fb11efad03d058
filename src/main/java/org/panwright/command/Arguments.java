package org.panwright.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.panwright.words.CommandWords;

/**
 * A command's arguments, told apart: plain words, switches such as {@code --json}, and options with
 * a value such as {@code --out DIR} or {@code --out=DIR}. After {@code --} all words are plain.
 */
final class Arguments {
  private final String command;
  private final List<String> plain = new ArrayList<>();
  private final Map<String, String> options = new HashMap<>();

  private Arguments(String command) {
    this.command = command;
  }

  /**
   * The arguments of a command.
   *
   * @param switches names, without dashes, of options that take no value
   * @param valued names, without dashes, of options that take one
   */
  static Arguments of(String command, List<String> words, Set<String> switches, Set<String> valued)
      throws BadUseException {
    Arguments arguments = new Arguments(command);
    boolean onlyPlain = false;
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      if (onlyPlain || !word.startsWith("--")) {
        arguments.plain.add(word);
      } else if (word.equals("--")) {
        onlyPlain = true;
      } else {
        int equals = word.indexOf('=');
        String name = equals < 0 ? word.substring(2) : word.substring(2, equals);
        if (valued.contains(name)) {
          boolean attached = equals >= 0;
          if (!attached && i + 1 == words.size()) {
            throw new BadUseException(CommandWords.noValue(command, name));
          }
          arguments.put(name, attached ? word.substring(equals + 1) : words.get(++i));
        } else if (switches.contains(name) && equals < 0) {
          arguments.put(name, "");
        } else {
          throw new BadUseException(CommandWords.unknownOption(command, word));
        }
      }
    }
    return arguments;
  }

  private void put(String name, String value) throws BadUseException {
    if (options.put(name, value) != null) {
      throw new BadUseException(CommandWords.optionTwice(command, name));
    }
  }

  /** The plain words in their order. */
  List<String> plain() {
    return plain;
  }

  /** Whether a switch or an option is there. */
  boolean has(String name) {
    return options.containsKey(name);
  }

  /** The value of an option, if it is there. */
  Optional<String> value(String name) {
    return Optional.ofNullable(options.get(name));
  }

  /** The value of an option that must be there. */
  String required(String name) throws BadUseException {
    return value(name)
        .orElseThrow(() -> new BadUseException(CommandWords.optionMissing(command, name)));
  }

  /** The path that a word stands for. */
  static Path path(String word) throws BadUseException {
    try {
      return Path.of(word);
    } catch (InvalidPathException e) {
      throw new BadUseException(CommandWords.noPath(word));
    }
  }
}
