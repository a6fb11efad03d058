package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;

/** What must hold of the marks on any sheet, whatever is printed. */
final class SheetChecks {
  private static final double SLACK_MM = 0.02;

  private SheetChecks() {}

  static void check(Papers papers) {
    papers.sheets().forEach(SheetChecks::check);
  }

  static void check(Sheet sheet) {
    assertThat(faults(sheet)).as(sheet.title()).isEmpty();
  }

  /** All faults of a sheet in words. */
  static List<String> faults(Sheet sheet) {
    List<String> faults = new ArrayList<>();
    List<Mark> marks = sheet.singleMarks();
    for (Mark mark : marks) {
      if (!sheet.area().contains(mark.bounds(), 0)) {
        faults.add("off the page: " + mark);
      }
      if (mark instanceof Mark.Text text && text.sizePt() < TextFit.LEGIBLE_PT) {
        faults.add("too small to read: " + text);
      }
    }
    for (int i = 0; i < marks.size(); i++) {
      for (int j = i + 1; j < marks.size(); j++) {
        if (collide(marks.get(i), marks.get(j))) {
          faults.add("collide: " + marks.get(i) + " and " + marks.get(j));
        }
      }
    }
    return faults;
  }

  private static boolean collide(Mark first, Mark second) {
    if (first instanceof Mark.Line && second instanceof Mark.Line) {
      return false;
    }
    if (first instanceof Mark.Text != second instanceof Mark.Text) {
      Mark text = first instanceof Mark.Text ? first : second;
      Mark other = first instanceof Mark.Text ? second : first;
      return touches(text.bounds(), other.bounds())
          && !other.bounds().contains(text.bounds(), SLACK_MM);
    }
    return touches(first.bounds(), second.bounds())
        && (first instanceof Mark.Text || !nested(first.bounds(), second.bounds()));
  }

  /** Whether the two share some area; a line, which has none, counts by its length. */
  private static boolean touches(Area first, Area second) {
    boolean line =
        first.widthMm() * first.heightMm() == 0 || second.widthMm() * second.heightMm() == 0;
    return first.overlaps(second, line ? -1e-9 : SLACK_MM);
  }

  private static boolean nested(Area first, Area second) {
    return first.contains(second, SLACK_MM) || second.contains(first, SLACK_MM);
  }
}
