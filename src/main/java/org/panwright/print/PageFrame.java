package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import org.panwright.print.FittedText.Align;
import org.panwright.words.CardWords;

/**
 * What all sheets of ours have in common: a free margin, and along the upper edge a strip with the
 * title, how to print, and a ruler.
 */
record PageFrame(double widthMm, double heightMm) {
  /** Kept free along all edges, since few printers reach them. */
  static final double MARGIN_MM = 8;

  /** Height of the strip, from the upper margin down. */
  static final double STRIP_MM = 17;

  /** Length of the ruler. */
  static final double RULER_MM = 50;

  private static final double TITLE_PT = 9;
  private static final double HOW_PT = 6.5;
  private static final double NOTE_PT = 6;

  static PageFrame upright(PaperFormat paper) {
    return new PageFrame(paper.widthMm(), paper.heightMm());
  }

  static PageFrame lying(PaperFormat paper) {
    return new PageFrame(/* widthMm= */ paper.heightMm(), /* heightMm= */ paper.widthMm());
  }

  /** The area below the strip. */
  Area room() {
    return new Area(
        MARGIN_MM,
        MARGIN_MM + STRIP_MM,
        widthMm - 2 * MARGIN_MM,
        heightMm - 2 * MARGIN_MM - STRIP_MM);
  }

  /** A sheet with the strip and these marks. */
  Sheet sheet(String title, List<String> notes, List<Mark> body) {
    List<Mark> marks = new ArrayList<>(strip(title, notes));
    marks.addAll(body);
    return new Sheet(title, widthMm, heightMm, marks);
  }

  private List<Mark> strip(String title, List<String> notes) {
    double ruler = widthMm - MARGIN_MM - RULER_MM - 4;
    double width = ruler - MARGIN_MM - 5;
    double y = MARGIN_MM;
    FittedText heading = TextFit.of(Typeface.BOLD, TITLE_PT).line(title, width);
    List<Mark> marks = new ArrayList<>(heading.as(Role.TITLE, MARGIN_MM, y, width, Align.LEFT));
    y += heading.heightMm() + 0.4;
    FittedText how =
        TextFit.of(Typeface.REGULAR, HOW_PT)
            .within(CardWords.PRINT_AT_FULL_SIZE, width, 2 * Typeface.leadingMm(HOW_PT));
    marks.addAll(how.as(Role.PARAGRAPH, MARGIN_MM, y, width, Align.LEFT));
    y += how.heightMm();
    if (!notes.isEmpty()) {
      marks.addAll(
          TextFit.of(Typeface.REGULAR, NOTE_PT)
              .within(String.join(" ", notes), width, MARGIN_MM + STRIP_MM - 3.4 - y)
              .as(Role.PARAGRAPH, MARGIN_MM, y, width, Align.LEFT));
    }
    marks.addAll(Mark.Group.of(Role.DECORATION, ruler(ruler, MARGIN_MM + 4.5)));
    return marks;
  }

  /** A ruler of 50 mm, a tick each millimetre, figures each ten. */
  private static List<Mark> ruler(double xMm, double yMm) {
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Line(xMm, yMm, xMm + RULER_MM, yMm, 0.2, Ink.BLACK, false));
    for (int mm = 0; mm <= RULER_MM; mm++) {
      double length = mm % 10 == 0 ? 3 : mm % 5 == 0 ? 2.2 : 1.4;
      marks.add(new Mark.Line(xMm + mm, yMm, xMm + mm, yMm - length, 0.1, Ink.BLACK, false));
      if (mm % 10 == 0) {
        String figure = mm == RULER_MM ? mm + " " + CardWords.RULER_UNIT : String.valueOf(mm);
        double width = Typeface.REGULAR.widthMm(String.valueOf(mm), 5.5);
        marks.add(
            new Mark.Text(
                Typeface.REGULAR, 5.5, xMm + mm - width / 2, yMm + 2.4, false, Ink.BLACK, figure));
      }
    }
    return marks;
  }
}
