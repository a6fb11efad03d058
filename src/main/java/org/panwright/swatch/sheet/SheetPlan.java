package org.panwright.swatch.sheet;

import java.util.ArrayList;
import java.util.List;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.picture.Zone;

/**
 * Where everything lies on a printed swatch sheet, in millimetres from its upper left corner: what
 * is drawn on it and where the reader looks.
 *
 * <p>Four square marks stand in the corners of a frame, the upper left one hollow. Between the
 * upper two a row of small squares names the sheet and page; another at the head of each row names
 * its paint. A black line runs through the patches of a row, bare between them. All paper between
 * the patches stays bare.
 */
public record SheetPlan(SheetFormat format) {
  /** Side of a corner mark. */
  public static final double MARK_MM = 7;

  /** Side of the hollow in the upper left mark. */
  public static final double HOLLOW_MM = 2.8;

  /** Height of a patch. */
  public static final double PATCH_HEIGHT_MM = 13;

  /** Width of the head of a row. */
  public static final double HEAD_MM = 36;

  /** Bare paper between patches. */
  public static final double GAP_MM = 6;

  /** Height kept at the foot for the instructions. */
  public static final double FOOT_MM = 14;

  /** The room above the rows for marks, code and headings. */
  public static final double TOP_MM = 13;

  private static final double MARGIN_MM = 8;
  private static final double STRIP_MM = 17;
  private static final double PITCH_MM = 19;
  private static final double PAGE_CELL_MM = 2.5;
  private static final double PAINT_CELL_MM = 1.7;
  private static final int PAGE_COLUMNS = PageCode.BITS / 2;
  private static final int PAINT_COLUMNS = PaintMark.BITS / 2;
  private static final double LINE_FROM_TOP_MM = 8.6;
  private static final double LINE_MM = 2.6;

  /** The frame at whose corners the marks lie. */
  public Zone frame() {
    double top = MARGIN_MM + STRIP_MM;
    return new Zone(
        MARGIN_MM, top, format.widthMm() - 2 * MARGIN_MM, format.heightMm() - MARGIN_MM - top);
  }

  /** The four marks: upper left, upper right, lower right, lower left. */
  public List<Zone> marks() {
    Zone frame = frame();
    double right = frame.right() - MARK_MM;
    double bottom = frame.bottom() - MARK_MM;
    return List.of(
        new Zone(frame.x(), frame.y(), MARK_MM, MARK_MM),
        new Zone(right, frame.y(), MARK_MM, MARK_MM),
        new Zone(right, bottom, MARK_MM, MARK_MM),
        new Zone(frame.x(), bottom, MARK_MM, MARK_MM));
  }

  /** The middles of the marks. */
  public List<Point> corners() {
    return marks().stream().map(Zone::middle).toList();
  }

  /** How many paints go on one page. */
  public int rows() {
    return (int) ((frame().height() - TOP_MM - FOOT_MM) / PITCH_MM);
  }

  /** The squares of the page's code, in the order of its bits. */
  public List<Zone> pageCells() {
    double left = frame().x() + MARK_MM + 6;
    return cells(left, frame().y() + 1, PAGE_COLUMNS, PAGE_CELL_MM);
  }

  /** The head of a row: names above, the paint's code below. */
  public Zone head(int row) {
    return new Zone(frame().x(), top(row), HEAD_MM, PATCH_HEIGHT_MM);
  }

  /** The squares of the code of a row's paint, in the order of its bits. */
  public List<Zone> paintCells(int row) {
    double height = 2 * PAINT_CELL_MM;
    return cells(frame().x(), head(row).bottom() - height, PAINT_COLUMNS, PAINT_CELL_MM);
  }

  /** A patch as it is painted. */
  public Zone patch(int row, PatchKind kind) {
    double left = frame().x() + HEAD_MM + 3;
    double pitch = (frame().right() - left) / PatchKind.values().length;
    return new Zone(left + kind.ordinal() * pitch, top(row), pitch - GAP_MM, PATCH_HEIGHT_MM);
  }

  /** The black line of a row, bare where no patch lies. */
  public Zone line(int row) {
    Zone first = patch(row, PatchKind.FULL);
    double left = first.x() - 2;
    return new Zone(left, first.y() + LINE_FROM_TOP_MM, frame().right() - left, LINE_MM);
  }

  /** Where a patch is read over paper, clear of its edges and of the line. */
  public Zone onPaper(int row, PatchKind kind) {
    Zone patch = patch(row, kind);
    double edge = 1.6;
    return new Zone(
        patch.x() + edge, patch.y() + edge, patch.width() - 2 * edge, LINE_FROM_TOP_MM - 2 * edge);
  }

  /** Where a patch is read over the line. */
  public Zone onLine(int row, PatchKind kind) {
    Zone patch = patch(row, kind);
    double y = line(row).y() + 0.65;
    return new Zone(patch.x() + 2, y, patch.width() - 4, LINE_MM - 1.3);
  }

  /** Where the bare line is read right of a patch. */
  public Zone bareLine(int row, PatchKind kind) {
    Zone patch = patch(row, kind);
    return new Zone(patch.right() + 1.6, line(row).y() + 0.65, GAP_MM - 3.2, LINE_MM - 1.3);
  }

  /** Where bare paper is read: right of each patch and below it. */
  public List<Zone> paperSpots() {
    List<Zone> spots = new ArrayList<>();
    for (int row = 0; row < rows(); row++) {
      for (PatchKind kind : PatchKind.values()) {
        Zone patch = patch(row, kind);
        spots.add(new Zone(patch.right() + 1.4, patch.y() + 1, GAP_MM - 2.8, 6));
        double below = PITCH_MM - PATCH_HEIGHT_MM;
        spots.add(new Zone(patch.x() + 2, patch.bottom() + 1.6, patch.width() - 4, below - 3.2));
      }
    }
    return spots;
  }

  private double top(int row) {
    return frame().y() + TOP_MM + row * PITCH_MM;
  }

  /** Squares in two lines. */
  private static List<Zone> cells(double left, double top, int columns, double side) {
    List<Zone> cells = new ArrayList<>();
    for (int line = 0; line < 2; line++) {
      for (int column = 0; column < columns; column++) {
        cells.add(new Zone(left + column * side, top + line * side, side, side));
      }
    }
    return cells;
  }
}
