package org.panwright.print;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.Shelf;
import org.panwright.print.FittedText.Align;
import org.panwright.swatch.picture.Zone;
import org.panwright.swatch.sheet.PageCode;
import org.panwright.swatch.sheet.PaintMark;
import org.panwright.swatch.sheet.PatchKind;
import org.panwright.swatch.sheet.SheetFormat;
import org.panwright.swatch.sheet.SheetPlan;
import org.panwright.words.ChartWords;
import org.panwright.words.SwatchSheetWords;

/**
 * A sheet to paint four swatches of each paint on and to read from a scan or photo: everything lies
 * where the {@link SheetPlan} says.
 */
public final class SwatchSheet {
  private static final double HEADING_MM = 8.5;
  private static final double NAME_PT = 7;
  private static final double CODES_PT = 5.5;
  private static final double GAP_MM = 2;
  private static final String WHITE = "PW";
  private static final String BLACK = "PBk";

  private final SheetPlan plan;
  private final PageFrame page;
  private final String how;

  private SwatchSheet(SheetFormat format, List<Paint> paints) {
    how = SwatchSheetWords.how(holds(paints, WHITE), holds(paints, BLACK));
    plan = new SheetPlan(format);
    page = new PageFrame(format.widthMm(), format.heightMm());
  }

  /**
   * The sheet of some paints, as many pages as they take.
   *
   * @param kit the kit's name, for the title
   * @param paints in the order of the rows; none makes one page of unnamed rows
   */
  public static Papers of(String kit, List<Paint> paints, SheetFormat format) {
    SwatchSheet sheet = new SwatchSheet(format, paints);
    int perPage = sheet.plan.rows();
    int pages = Math.max(1, (paints.size() + perPage - 1) / perPage);
    int number = PageCode.sheetOf(paints.stream().map(Paint::id).toList());
    String title = SwatchSheetWords.title(kit);
    List<Sheet> all = new ArrayList<>();
    for (int i = 0; i < pages; i++) {
      List<Paint> some = paints.subList(i * perPage, Math.min(paints.size(), (i + 1) * perPage));
      PageCode code = new PageCode(format, i + 1, pages, number);
      all.add(
          sheet.page.sheet(
              ChartWords.sheetTitle(title, i + 1, pages), List.of(), sheet.body(some, code)));
    }
    return new Papers(title, all);
  }

  /**
   * The rows of a sheet: the first white and the first black of a shelf, on which the tints and
   * tones of the others rest, then the paints wanted, each once. Of a paint that is only wished for
   * nothing can be painted.
   */
  public static List<Paint> rows(Shelf shelf, List<Paint> wanted) {
    Set<Paint> rows = new LinkedHashSet<>();
    first(shelf, WHITE).ifPresent(rows::add);
    first(shelf, BLACK).ifPresent(rows::add);
    wanted.stream().filter(paint -> !isWished(paint)).forEach(rows::add);
    return List.copyOf(rows);
  }

  /** How many of some paints are only wished for. */
  public static int wished(List<Paint> wanted) {
    return (int) wanted.stream().filter(SwatchSheet::isWished).distinct().count();
  }

  private static boolean isWished(Paint paint) {
    return paint.ownership() == Ownership.WISHED;
  }

  /**
   * The first paint at hand of pigments of one kind only, by the letters their names begin with.
   */
  public static Optional<Paint> first(Shelf shelf, String kind) {
    return shelf.paints().stream()
        .filter(paint -> !isWished(paint) && isOf(paint, kind))
        .findFirst();
  }

  private static boolean holds(List<Paint> paints, String kind) {
    return paints.stream().anyMatch(paint -> isOf(paint, kind));
  }

  private static boolean isOf(Paint paint, String kind) {
    return paint.pigments().stream()
        .allMatch(share -> share.pigment().code().matches(kind + "\\d.*"));
  }

  private List<Mark> body(List<Paint> paints, PageCode code) {
    List<Mark> marks = new ArrayList<>();
    List<Mark> guides = new ArrayList<>(corners());
    guides.addAll(squares(plan.pageCells(), code.squares()));
    marks.addAll(Mark.Group.of(Role.DECORATION, guides));
    for (PatchKind kind : PatchKind.values()) {
      Zone patch = plan.patch(0, kind);
      marks.addAll(
          TextFit.of(Typeface.REGULAR, NAME_PT)
              .line(SwatchSheetWords.heading(kind), patch.width())
              .as(
                  Role.PARAGRAPH,
                  patch.x(),
                  plan.frame().y() + HEADING_MM,
                  patch.width(),
                  Align.CENTRE));
    }
    int rows = paints.isEmpty() ? plan.rows() : paints.size();
    for (int row = 0; row < rows; row++) {
      if (row < paints.size()) {
        marks.addAll(head(paints.get(row), row));
      }
      marks.addAll(Mark.Group.of(Role.DECORATION, fields(row)));
    }
    marks.addAll(how());
    return marks;
  }

  /** Four black squares, the upper left one with a white hollow. */
  private List<Mark> corners() {
    List<Mark> marks = new ArrayList<>();
    for (Zone zone : plan.marks()) {
      marks.add(new Mark.Swatch(area(zone), List.of(Ink.BLACK)));
    }
    Zone hollow = Zone.around(plan.corners().get(0), SheetPlan.HOLLOW_MM);
    marks.add(new Mark.Swatch(area(hollow), List.of(Ink.WHITE)));
    return marks;
  }

  private static List<Mark> squares(List<Zone> cells, List<Boolean> black) {
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      if (black.get(i)) {
        marks.add(new Mark.Swatch(area(cells.get(i)), List.of(Ink.BLACK)));
      }
    }
    return marks;
  }

  private List<Mark> head(Paint paint, int row) {
    Zone head = plan.head(row);
    List<Zone> cells = plan.paintCells(row);
    double room = cells.get(0).y() - head.y() - 0.4;
    double width = head.width() - 1;
    FittedText codes = TextFit.of(Typeface.REGULAR, CODES_PT).line(paint.codes(), width);
    FittedText name =
        TextFit.of(Typeface.BOLD, NAME_PT).within(paint.name(), width, room - codes.heightMm());
    List<Mark> marks =
        new ArrayList<>(name.as(Role.PARAGRAPH, head.x(), head.y(), width, Align.LEFT));
    marks.addAll(codes.as(Role.PARAGRAPH, head.x(), head.y() + name.heightMm(), width, Align.LEFT));
    marks.addAll(
        Mark.Group.of(Role.DECORATION, squares(cells, PaintMark.of(paint.id()).squares())));
    return marks;
  }

  /** The outlines of the patches of a row, and the black line through them. */
  private List<Mark> fields(int row) {
    List<Mark> marks = new ArrayList<>();
    Zone line = plan.line(row);
    double from = line.x();
    for (PatchKind kind : PatchKind.values()) {
      Zone patch = plan.patch(row, kind);
      marks.add(new Mark.Rectangle(area(patch), 0, 0.1, Ink.FAINT, true, Optional.empty()));
      marks.add(bar(line, from, patch.x()));
      marks.add(bar(line, patch.x(), patch.right()));
      from = patch.right();
    }
    marks.add(bar(line, from, line.right()));
    return marks;
  }

  private static Mark bar(Zone line, double from, double to) {
    return new Mark.Swatch(new Area(from, line.y(), to - from, line.height()), List.of(Ink.BLACK));
  }

  private List<Mark> how() {
    Zone frame = plan.frame();
    double left = frame.x() + SheetPlan.MARK_MM + GAP_MM + 1;
    double width = frame.right() - SheetPlan.MARK_MM - GAP_MM - 1 - left;
    double top = frame.bottom() - SheetPlan.FOOT_MM + 1;
    return TextFit.of(Typeface.REGULAR, 6.5)
        .within(how, width, SheetPlan.FOOT_MM - 1)
        .as(Role.PARAGRAPH, left, top, width, Align.LEFT);
  }

  private static Area area(Zone zone) {
    return new Area(zone.x(), zone.y(), zone.width(), zone.height());
  }
}
