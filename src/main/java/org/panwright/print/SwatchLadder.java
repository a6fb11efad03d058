package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.kit.Kit;
import org.panwright.paint.Wash;
import org.panwright.print.FittedText.Align;
import org.panwright.words.ChartWords;
import org.panwright.words.PaintWords;

/**
 * A sheet to paint by hand with a ladder of washes for each paint of a lineup: butter to tea, a
 * field across a black bar, a field to lift from.
 */
public final class SwatchLadder {
  private static final double HEAD_MM = 34;
  private static final double COLUMN_HEAD_MM = 6;
  private static final double FOOT_MM = 8;
  private static final double FIELD_HEIGHT_MM = 12;
  private static final double ROW_MM = 14;
  private static final double GAP_MM = 2;
  private static final double BAR_MM = 3;
  private static final int FIELDS = Wash.values().length + 2;

  private final PageFrame page;
  private final double fieldMm;

  private SwatchLadder(PageFrame page) {
    this.page = page;
    fieldMm = (page.room().widthMm() - HEAD_MM) / FIELDS - GAP_MM;
  }

  /**
   * The ladder of a lineup.
   *
   * @throws IllegalArgumentException if the kit has no such lineup
   */
  public static Papers of(Kit kit, String lineupId, PaperFormat paper) {
    String title = ChartWords.ladderTitle(LineupPaint.lineup(kit, lineupId).name());
    SwatchLadder ladder = new SwatchLadder(PageFrame.upright(paper));
    List<LineupPaint> paints = LineupPaint.of(kit, lineupId);
    int perSheet = ladder.rows();
    int sheets = Math.max(1, (paints.size() + perSheet - 1) / perSheet);
    List<Sheet> all = new ArrayList<>();
    for (int i = 0; i < sheets; i++) {
      List<LineupPaint> some =
          paints.subList(i * perSheet, Math.min(paints.size(), (i + 1) * perSheet));
      all.add(
          ladder.page.sheet(
              ChartWords.sheetTitle(title, i + 1, sheets), List.of(), ladder.body(some)));
    }
    return new Papers(title, all);
  }

  private int rows() {
    return (int) ((page.room().heightMm() - COLUMN_HEAD_MM - FOOT_MM) / ROW_MM);
  }

  private List<Mark> body(List<LineupPaint> paints) {
    Area room = page.room();
    List<Mark> marks = new ArrayList<>();
    for (int field = 0; field < FIELDS; field++) {
      marks.addAll(
          TextFit.of(Typeface.REGULAR, 7)
              .line(heading(field), fieldMm)
              .as(Role.PARAGRAPH, left(field), room.yMm() + 1, fieldMm, Align.CENTRE));
    }
    for (int row = 0; row < paints.size(); row++) {
      marks.addAll(row(paints.get(row), room.yMm() + COLUMN_HEAD_MM + row * ROW_MM));
    }
    double below = room.yMm() + COLUMN_HEAD_MM + paints.size() * ROW_MM;
    marks.addAll(
        TextFit.of(Typeface.REGULAR, 7)
            .within(ChartWords.LADDER, room.widthMm(), FOOT_MM)
            .as(Role.PARAGRAPH, room.xMm(), below, room.widthMm(), Align.LEFT));
    return marks;
  }

  private static String heading(int field) {
    int washes = Wash.values().length;
    return field < washes
        ? PaintWords.label(Wash.values()[field])
        : field == washes ? ChartWords.OVER_BLACK : ChartWords.LIFTED;
  }

  private double left(int field) {
    return page.room().xMm() + HEAD_MM + field * (fieldMm + GAP_MM) + GAP_MM;
  }

  private List<Mark> row(LineupPaint paint, double topMm) {
    Area head = new Area(page.room().xMm(), topMm, HEAD_MM, FIELD_HEIGHT_MM);
    List<Mark> marks = new ArrayList<>(PaintHead.ofRow(paint, head));
    for (int field = 0; field < FIELDS; field++) {
      Area area = new Area(left(field), topMm, fieldMm, FIELD_HEIGHT_MM);
      marks.add(new Mark.Rectangle(area, 0, 0.15, Ink.LINE, false, Optional.empty()));
      if (field == Wash.values().length) {
        double bar = area.xMm() + (fieldMm - BAR_MM) / 2;
        marks.add(
            new Mark.Swatch(new Area(bar, topMm, BAR_MM, FIELD_HEIGHT_MM), List.of(Ink.BLACK)));
      } else if (field > Wash.values().length) {
        for (double share : new double[] {1.0 / 3, 2.0 / 3}) {
          double at = area.xMm() + share * fieldMm;
          marks.add(new Mark.Line(at, topMm, at, area.bottomMm(), 0.1, Ink.FAINT, true));
        }
      }
    }
    return marks;
  }
}
