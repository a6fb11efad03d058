package org.panwright.command;

import java.util.Iterator;
import java.util.List;
import org.panwright.words.MixCheckWords;

/**
 * What stands after {@code mixcheck}.
 *
 * @param fit the file to fit
 * @param test the file to predict
 * @param byColour whether only the colours of the first file may be used
 * @param json whether the answer is JSON
 */
record MixCheckOptions(String fit, String test, boolean byColour, boolean json) {
  static MixCheckOptions of(List<String> arguments) throws BadUseException {
    String fit = null;
    String test = null;
    boolean byColour = false;
    boolean json = false;
    Iterator<String> rest = arguments.iterator();
    while (rest.hasNext()) {
      String argument = rest.next();
      switch (argument) {
        case "--fit" -> fit = value(argument, rest);
        case "--test" -> test = value(argument, rest);
        case "--from" -> byColour = isColour(value(argument, rest));
        case "--json" -> json = true;
        default -> throw new BadUseException(MixCheckWords.unknown(argument));
      }
    }
    if (fit == null) {
      throw new BadUseException(MixCheckWords.missing("--fit"));
    }
    if (test == null) {
      throw new BadUseException(MixCheckWords.missing("--test"));
    }
    return new MixCheckOptions(fit, test, byColour, json);
  }

  private static String value(String option, Iterator<String> rest) throws BadUseException {
    if (!rest.hasNext()) {
      throw new BadUseException(MixCheckWords.noValue(option));
    }
    return rest.next();
  }

  private static boolean isColour(String source) throws BadUseException {
    return switch (source) {
      case "colour" -> true;
      case "spectra" -> false;
      default -> throw new BadUseException(MixCheckWords.unknownSource(source));
    };
  }
}
