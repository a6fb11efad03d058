package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import org.panwright.colour.Srgb;

/**
 * A text made to fit a width and a number of lines.
 *
 * @param lines at least one; printable
 * @param cut whether the end of the text is missing and an ellipsis stands for it
 */
public record FittedText(Typeface face, double sizePt, List<String> lines, boolean cut) {
  /** Where the lines stand in the width they are placed in. */
  public enum Align {
    LEFT,
    CENTRE,
    RIGHT
  }

  public FittedText {
    lines = List.copyOf(lines);
  }

  /** The height of all lines. */
  public double heightMm() {
    return lines.size() * Typeface.leadingMm(sizePt);
  }

  /** The length of the longest line. */
  public double widthMm() {
    return lines.stream().mapToDouble(line -> face.widthMm(line, sizePt)).max().orElse(0);
  }

  /** From the upper edge to the first baseline. */
  public double baselineMm() {
    double gap = Typeface.leadingMm(sizePt) - face.ascentMm(sizePt) - face.descentMm(sizePt);
    return gap / 2 + face.ascentMm(sizePt);
  }

  /** The lines placed in black within a width, the first one's upper edge at {@code topMm}. */
  public List<Mark> at(double xMm, double topMm, double widthMm, Align align) {
    return at(xMm, topMm, widthMm, align, Ink.BLACK);
  }

  /** The same as one group of a role. */
  public List<Mark> as(Role role, double xMm, double topMm, double widthMm, Align align) {
    return Mark.Group.of(role, at(xMm, topMm, widthMm, align));
  }

  /**
   * The lines placed in black, running upwards from {@code bottomMm}, the first one's left edge at
   * {@code leftMm}.
   */
  public List<Mark> upwards(double leftMm, double bottomMm) {
    List<Mark> marks = new ArrayList<>();
    double baseline = leftMm + baselineMm();
    for (String line : lines) {
      if (!line.isEmpty()) {
        marks.add(new Mark.Text(face, sizePt, baseline, bottomMm, true, Ink.BLACK, line));
      }
      baseline += Typeface.leadingMm(sizePt);
    }
    return marks;
  }

  /** The same in an ink of choice. */
  public List<Mark> at(double xMm, double topMm, double widthMm, Align align, Srgb ink) {
    List<Mark> marks = new ArrayList<>();
    double baseline = topMm + baselineMm();
    for (String line : lines) {
      if (!line.isEmpty()) {
        double free = widthMm - face.widthMm(line, sizePt);
        double left =
            switch (align) {
              case LEFT -> 0;
              case CENTRE -> free / 2;
              case RIGHT -> free;
            };
        marks.add(new Mark.Text(face, sizePt, xMm + left, baseline, false, ink, line));
      }
      baseline += Typeface.leadingMm(sizePt);
    }
    return marks;
  }
}
