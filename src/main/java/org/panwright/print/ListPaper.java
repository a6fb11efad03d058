package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.panwright.print.FittedText.Align;
import org.panwright.words.ChartWords;

/**
 * Papers of headings, sentences and lines to tick: one wide column if a single sheet holds all, so
 * that few lines wrap, else running down narrow columns and over sheets.
 */
final class ListPaper {
  private static final double COLUMN_FROM_MM = 85;
  private static final double WIDE_MM = 130;
  private static final double GUTTER_MM = 7;
  private static final double PT = 8;
  private static final double HEADING_PT = 9.5;
  private static final double BOX_MM = 2.8;
  private static final double BOX_GAP_MM = 1;
  private static final double GAP_MM = 0.8;
  private static final int MOST_LINES = 6;

  /** All lines of one size: they wrap before they shrink. */
  private static final TextFit TEXT = new TextFit(Typeface.REGULAR, PT, PT);

  private final PageFrame page;
  private final List<DoubleFunction<Piece>> pieces = new ArrayList<>();

  /** A piece of a column that stays whole, from its own upper left corner. */
  private record Piece(double heightMm, boolean keepsWithNext, List<Mark> marks) {}

  ListPaper(PaperFormat paper) {
    page = PageFrame.upright(paper);
  }

  /** A heading, which is never the last in a column. */
  void heading(String text) {
    pieces.add(columnMm -> heading(text, columnMm));
  }

  private static Piece heading(String text, double columnMm) {
    FittedText fitted =
        TextFit.of(Typeface.BOLD, HEADING_PT)
            .within(text, columnMm, 2 * Typeface.leadingMm(HEADING_PT));
    return new Piece(
        fitted.heightMm() + 3.4, true, fitted.as(Role.HEADING, 0, 2.4, columnMm, Align.LEFT));
  }

  /** A sentence. */
  void sentence(String text) {
    pieces.add(columnMm -> sentence(text, columnMm));
  }

  private static Piece sentence(String text, double columnMm) {
    FittedText fitted = TEXT.within(text, columnMm, 2 * MOST_LINES * Typeface.leadingMm(PT));
    return new Piece(
        fitted.heightMm() + 2 * GAP_MM,
        false,
        fitted.as(Role.PARAGRAPH, 0, GAP_MM, columnMm, Align.LEFT));
  }

  /**
   * A line to tick.
   *
   * @param boxes how many boxes stand before it
   * @param ticked whether they are ticked already
   */
  void line(int boxes, boolean ticked, String text) {
    pieces.add(columnMm -> line(boxes, ticked, text, columnMm));
  }

  private static Piece line(int boxes, boolean ticked, String text, double columnMm) {
    double left = boxes * (BOX_MM + BOX_GAP_MM);
    double room = columnMm - left;
    FittedText fitted = TEXT.within(text, room, MOST_LINES * Typeface.leadingMm(PT));
    double height = Math.max(BOX_MM, fitted.heightMm()) + 2 * GAP_MM;
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < boxes; i++) {
      marks.addAll(box(new Area(i * (BOX_MM + BOX_GAP_MM), GAP_MM, BOX_MM, BOX_MM), ticked));
    }
    marks.addAll(fitted.at(left, GAP_MM, room, Align.LEFT));
    marks.add(new Mark.Line(0, height, columnMm, height, 0.1, Ink.FAINT, false));
    return new Piece(height, false, Mark.Group.of(Role.PARAGRAPH, marks));
  }

  private static List<Mark> box(Area area, boolean ticked) {
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Rectangle(area, 0.3, 0.2, Ink.BLACK, false, Optional.empty()));
    if (ticked) {
      double low = area.yMm() + 0.8 * area.heightMm();
      double turn = area.xMm() + 0.4 * area.widthMm();
      marks.add(
          new Mark.Line(
              area.xMm() + 0.15 * area.widthMm(),
              area.yMm() + 0.5 * area.heightMm(),
              turn,
              low,
              0.35,
              Ink.BLACK,
              false));
      marks.add(
          new Mark.Line(
              turn,
              low,
              area.xMm() + 0.88 * area.widthMm(),
              area.yMm() + 0.15 * area.heightMm(),
              0.35,
              Ink.BLACK,
              false));
    }
    return marks;
  }

  /** The papers that hold everything said so far. */
  Papers papers(String title, List<String> notes) {
    double width = page.room().widthMm();
    List<List<Mark>> wide = bodies(1, Math.min(WIDE_MM, width));
    int columns = (int) Math.max(1, Math.floor((width + GUTTER_MM) / (COLUMN_FROM_MM + GUTTER_MM)));
    List<List<Mark>> bodies =
        wide.size() == 1 ? wide : bodies(columns, (width - (columns - 1) * GUTTER_MM) / columns);
    List<Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < bodies.size(); i++) {
      sheets.add(
          page.sheet(ChartWords.sheetTitle(title, i + 1, bodies.size()), notes, bodies.get(i)));
    }
    return new Papers(title, sheets);
  }

  /** What stands on each sheet. */
  private List<List<Mark>> bodies(int columns, double columnMm) {
    List<Piece> made = pieces.stream().map(piece -> piece.apply(columnMm)).toList();
    Area room = page.room();
    List<List<Mark>> bodies = new ArrayList<>();
    List<Mark> body = new ArrayList<>();
    int column = 0;
    double y = 0;
    for (int i = 0; i < made.size(); i++) {
      Piece piece = made.get(i);
      double needed =
          piece.keepsWithNext() && i + 1 < made.size()
              ? piece.heightMm() + made.get(i + 1).heightMm()
              : piece.heightMm();
      if (y > 0 && y + needed > room.heightMm()) {
        column++;
        y = 0;
      }
      if (column == columns) {
        bodies.add(body);
        body = new ArrayList<>();
        column = 0;
      }
      double x = room.xMm() + column * (columnMm + GUTTER_MM);
      body.addAll(new Face(0, 0, piece.marks()).at(x, room.yMm() + y));
      y += piece.heightMm();
    }
    bodies.add(body);
    return bodies;
  }
}
