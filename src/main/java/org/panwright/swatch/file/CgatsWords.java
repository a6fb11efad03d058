package org.panwright.swatch.file;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of one line of a CGATS.17 file: parted by blanks, quoted if they hold any; a quotation
 * mark within quotes stands twice.
 */
final class CgatsWords {
  private static final Pattern WORD = Pattern.compile("\"((?:[^\"]|\"\")*)\"|#.*|(\\S+)");

  private CgatsWords() {}

  static List<String> of(String line) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(line);
    while (matcher.find()) {
      if (matcher.group(1) != null) {
        words.add(matcher.group(1).replace("\"\"", "\""));
      } else if (matcher.group(2) != null) {
        words.add(matcher.group(2));
      }
    }
    return words;
  }
}
