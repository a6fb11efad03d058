package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import org.panwright.print.FittedText.Align;

/** What stands at the head of a row or column: the well's label, the paint's name and codes. */
final class PaintHead {
  private static final double LABEL_PT = 8;
  private static final double NAME_PT = 7;
  private static final double CODES_PT = 5.5;
  private static final double LABEL_MM = 8;
  private static final double NAME_MM = 7;
  private static final double GAP_MM = 0.6;

  private PaintHead() {}

  /** A head to the left of a row, its middle at the row's. */
  static List<Mark> ofRow(LineupPaint paint, Area area) {
    double width = area.widthMm() - LABEL_MM;
    FittedText label = TextFit.of(Typeface.BOLD, LABEL_PT).line(paint.labels(), LABEL_MM - 1);
    FittedText codes = codes(paint, width);
    FittedText name = name(paint, width, area.heightMm() - codes.heightMm());
    double x = area.xMm() + LABEL_MM;
    double y = area.yMm() + (area.heightMm() - name.heightMm() - codes.heightMm()) / 2;
    double labelY = y + name.baselineMm() - label.baselineMm();
    List<Mark> marks = new ArrayList<>(label.at(area.xMm(), labelY, LABEL_MM, Align.LEFT));
    marks.addAll(name.at(x, y, width, Align.LEFT));
    marks.addAll(codes.at(x, y + name.heightMm(), width, Align.LEFT));
    return Mark.Group.of(Role.PARAGRAPH, marks);
  }

  /** A head above a column: the label at its foot, name and codes running upwards from there. */
  static List<Mark> ofColumn(LineupPaint paint, Area area) {
    FittedText label = TextFit.of(Typeface.BOLD, LABEL_PT).line(paint.labels(), area.widthMm() - 1);
    double labelY = area.bottomMm() - label.heightMm();
    double from = labelY - GAP_MM;
    double length = from - area.yMm();
    FittedText codes = codes(paint, length);
    FittedText name = name(paint, length, area.widthMm() - codes.heightMm());
    double left = area.xMm() + (area.widthMm() - name.heightMm() - codes.heightMm()) / 2;
    List<Mark> marks = new ArrayList<>(label.at(area.xMm(), labelY, area.widthMm(), Align.CENTRE));
    marks.addAll(name.upwards(left, from));
    marks.addAll(codes.upwards(left + name.heightMm(), from));
    return Mark.Group.of(Role.PARAGRAPH, marks);
  }

  private static FittedText codes(LineupPaint paint, double lengthMm) {
    return TextFit.of(Typeface.REGULAR, CODES_PT).line(paint.paint().codes(), lengthMm);
  }

  private static FittedText name(LineupPaint paint, double lengthMm, double roomMm) {
    return TextFit.of(Typeface.REGULAR, NAME_PT)
        .within(paint.paint().name(), lengthMm, Math.min(NAME_MM, roomMm));
  }
}
