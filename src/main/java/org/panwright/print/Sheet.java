package org.panwright.print;

import java.util.List;

/**
 * One side of paper with all that is placed on it.
 *
 * @param title what the sheet holds, for bookmarks
 * @param widthMm 20..1500
 * @param heightMm 20..1500
 */
public record Sheet(String title, double widthMm, double heightMm, List<Mark> marks) {
  public Sheet {
    marks = List.copyOf(marks);
    if (!(widthMm >= 20 && widthMm <= 1500 && heightMm >= 20 && heightMm <= 1500)) {
      throw new IllegalArgumentException(
          "a sheet measures 20..1500 mm, was %s x %s".formatted(widthMm, heightMm));
    }
  }

  /** All marks without their groups, in the order they are drawn. */
  public List<Mark> singleMarks() {
    return marks.stream().flatMap(Mark::single).toList();
  }

  /** The whole sheet. */
  public Area area() {
    return new Area(0, 0, widthMm, heightMm);
  }
}
