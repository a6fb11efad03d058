package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import org.panwright.print.FittedText.Align;
import org.panwright.words.CardWords;

/**
 * Places cards on sheets of paper: several side by side, with cut marks, under a strip that holds
 * the title, the ruler and how to print.
 */
final class SheetLayout {
  /** Kept free along all edges, since few printers reach them. */
  static final double MARGIN_MM = 8;

  /** Height of the strip, from the upper margin down. */
  static final double STRIP_MM = 17;

  /** Length of the ruler. */
  static final double RULER_MM = 50;

  private static final double GAP_MM = 7;
  private static final double CUT_MM = 2.4;
  private static final double CUT_OFF_MM = 1;

  private final PaperFormat paper;

  SheetLayout(PaperFormat paper) {
    this.paper = paper;
  }

  private record Page(double widthMm, double heightMm) {
    Area room() {
      return new Area(
          MARGIN_MM,
          MARGIN_MM + STRIP_MM,
          widthMm - 2 * MARGIN_MM,
          heightMm - 2 * MARGIN_MM - STRIP_MM);
    }
  }

  private Page upright() {
    return new Page(paper.widthMm(), paper.heightMm());
  }

  private Page lying() {
    return new Page(/* widthMm= */ paper.heightMm(), /* heightMm= */ paper.widthMm());
  }

  /** The largest card not above {@code wanted} that goes on the paper. */
  Area clipped(Area wanted) {
    if (fits(wanted, upright()) || fits(wanted, lying())) {
      return wanted;
    }
    Area room = (wanted.widthMm() >= wanted.heightMm() ? lying() : upright()).room();
    return new Area(
        0,
        0,
        Math.min(wanted.widthMm(), room.widthMm()),
        Math.min(wanted.heightMm(), room.heightMm()));
  }

  private static boolean fits(Area card, Page page) {
    Area room = page.room();
    return card.widthMm() <= room.widthMm() && card.heightMm() <= room.heightMm();
  }

  /** The papers that hold these faces in their order. */
  Papers papers(String lineup, List<Face> faces, List<String> notes) {
    List<List<Mark>> upright = packed(faces, upright());
    List<List<Mark>> lying = packed(faces, lying());
    boolean isUpright = !upright.isEmpty() && (lying.isEmpty() || upright.size() <= lying.size());
    Page page = isUpright ? upright() : lying();
    List<List<Mark>> bodies = isUpright ? upright : lying;
    List<Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < bodies.size(); i++) {
      String title = CardWords.sheetTitle(lineup, i + 1, bodies.size());
      List<Mark> marks = new ArrayList<>(strip(page, title, notes));
      marks.addAll(bodies.get(i));
      sheets.add(new Sheet(title, page.widthMm(), page.heightMm(), marks));
    }
    return new Papers(CardWords.title(lineup), sheets);
  }

  /** The bodies of the pages, or none if a face is too large for the page. */
  private static List<List<Mark>> packed(List<Face> faces, Page page) {
    Area room = page.room();
    List<List<Mark>> bodies = new ArrayList<>();
    List<Mark> body = new ArrayList<>();
    double x = room.xMm();
    double y = room.yMm();
    double rowMm = 0;
    for (Face face : faces) {
      if (!fits(new Area(0, 0, face.widthMm(), face.heightMm()), page)) {
        return List.of();
      }
      if (x + face.widthMm() > room.rightMm() + 1e-6) {
        x = room.xMm();
        y += rowMm + GAP_MM;
        rowMm = 0;
      }
      if (y + face.heightMm() > room.bottomMm() + 1e-6) {
        bodies.add(body);
        body = new ArrayList<>();
        x = room.xMm();
        y = room.yMm();
        rowMm = 0;
      }
      body.addAll(face.at(x, y));
      body.addAll(cutMarks(new Area(x, y, face.widthMm(), face.heightMm())));
      x += face.widthMm() + GAP_MM;
      rowMm = Math.max(rowMm, face.heightMm());
    }
    bodies.add(body);
    return bodies;
  }

  private static List<Mark> cutMarks(Area card) {
    List<Mark> marks = new ArrayList<>();
    for (double x : new double[] {card.xMm(), card.rightMm()}) {
      marks.add(cut(x, card.yMm() - CUT_OFF_MM - CUT_MM, x, card.yMm() - CUT_OFF_MM));
      marks.add(cut(x, card.bottomMm() + CUT_OFF_MM, x, card.bottomMm() + CUT_OFF_MM + CUT_MM));
    }
    for (double y : new double[] {card.yMm(), card.bottomMm()}) {
      marks.add(cut(card.xMm() - CUT_OFF_MM - CUT_MM, y, card.xMm() - CUT_OFF_MM, y));
      marks.add(cut(card.rightMm() + CUT_OFF_MM, y, card.rightMm() + CUT_OFF_MM + CUT_MM, y));
    }
    return marks;
  }

  private static Mark cut(double fromX, double fromY, double toX, double toY) {
    return new Mark.Line(fromX, fromY, toX, toY, 0.15, Ink.BLACK, false);
  }

  private static List<Mark> strip(Page page, String title, List<String> notes) {
    double ruler = page.widthMm() - MARGIN_MM - RULER_MM - 4;
    double width = ruler - MARGIN_MM - 5;
    double y = MARGIN_MM;
    List<Mark> marks = new ArrayList<>();
    FittedText heading = TextFit.of(Typeface.BOLD, 9).line(title, width);
    marks.addAll(heading.at(MARGIN_MM, y, width, Align.LEFT));
    y += heading.heightMm() + 0.4;
    FittedText how =
        TextFit.of(Typeface.REGULAR, 6.5)
            .within(CardWords.PRINT_AT_FULL_SIZE, width, 2 * Typeface.leadingMm(6.5));
    marks.addAll(how.at(MARGIN_MM, y, width, Align.LEFT));
    y += how.heightMm();
    if (!notes.isEmpty()) {
      double room = MARGIN_MM + STRIP_MM - CUT_OFF_MM - CUT_MM - y;
      marks.addAll(
          TextFit.of(Typeface.REGULAR, 6)
              .within(String.join(" ", notes), width, room)
              .at(MARGIN_MM, y, width, Align.LEFT));
    }
    marks.addAll(ruler(ruler, MARGIN_MM + 4.5));
    return marks;
  }

  /** A ruler of 50 mm, a tick each millimetre, figures each ten. */
  static List<Mark> ruler(double xMm, double yMm) {
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
