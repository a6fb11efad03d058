package org.panwright.swatch.table;

import java.util.List;
import java.util.stream.Collectors;

/**
 * The lines that stand above a delimited table: a title, what an instrument says of itself, a
 * spreadsheet's {@code sep=;}. The table begins with the first line that has at least half as many
 * separators as the line with most of them.
 */
final class Preamble {
  private static final char REMARK = '#';

  private Preamble() {}

  /** The text with such lines made remarks, so that every line keeps its number. */
  static String asRemarks(String text) {
    List<String> lines = text.lines().toList();
    long most = lines.stream().mapToLong(Preamble::separators).max().orElse(0);
    int head = 0;
    while (head < lines.size() && 2 * separators(lines.get(head)) < most) {
      head++;
    }
    int first = head;
    String above =
        lines.stream().limit(first).map(line -> REMARK + line + "\n").collect(Collectors.joining());
    return first == 0 ? text : above + lines.stream().skip(first).collect(Collectors.joining("\n"));
  }

  /** How many there are of the separator a line has most of; a remark has none. */
  private static long separators(String line) {
    return line.indexOf(REMARK) == 0
        ? 0
        : DelimitedCells.SEPARATORS
            .chars()
            .mapToLong(separator -> line.chars().filter(c -> c == separator).count())
            .max()
            .orElse(0);
  }
}
