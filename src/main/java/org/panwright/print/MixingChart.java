package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.colour.Srgb;
import org.panwright.kit.Kit;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.Wash;
import org.panwright.print.ChartOptions.Shape;
import org.panwright.print.FittedText.Align;
import org.panwright.words.ChartWords;

/**
 * A mixing chart to paint by hand: every pair of a lineup in a square or triangle of cells, with
 * heads that name the paints. A chart too large for its paper goes on over several sheets, each
 * with its heads.
 */
public final class MixingChart {
  private static final double ROW_HEAD_MM = 34;
  private static final double COLUMN_HEAD_MM = 36;
  private static final double FOOT_MM = 8;
  private static final double LARGEST_CHOSEN_MM = 20;
  private static final double CHOSEN_STEP_MM = 0.5;
  private static final double SPLIT_CELL_MM = 12;
  private static final double DOT_MM = 2.2;
  private static final double LEAD = 3;
  private static final double GAP_MM = 1;

  private final Kit kit;
  private final String title;
  private final List<LineupPaint> paints;
  private final ChartOptions options;
  private final Optional<Mixer> mixer;
  private final double cellMm;
  private final PageFrame page;

  private MixingChart(
      Kit kit, String lineupId, List<LineupPaint> paints, PigmentLibrary library, ChartOptions o) {
    this.kit = kit;
    this.paints = paints;
    options = o;
    title = ChartWords.title(LineupPaint.lineup(kit, lineupId).name());
    List<Paint> bare = paints.stream().map(LineupPaint::paint).toList();
    mixer =
        o.hints()
            ? Optional.of(new Mixer(OpticsTable.of(bare, library, kit.paper())))
            : Optional.empty();
    PageFrame upright = PageFrame.upright(o.paper());
    PageFrame lying = PageFrame.lying(o.paper());
    double whole =
        Math.min(LARGEST_CHOSEN_MM, Math.max(largestWhole(upright), largestWhole(lying)));
    cellMm = o.cellMm().orElse(whole >= ChartOptions.LEAST_CELL_MM ? whole : SPLIT_CELL_MM);
    page =
        largestCell(lying) < cellMm
                || (largestCell(upright) >= cellMm && parts(upright) <= parts(lying))
            ? upright
            : lying;
  }

  /**
   * The chart of a lineup.
   *
   * @throws IllegalArgumentException if the kit has no such lineup
   */
  public static Papers of(Kit kit, String lineupId, PigmentLibrary library, ChartOptions options) {
    List<LineupPaint> paints = LineupPaint.of(kit, lineupId);
    return new MixingChart(kit, lineupId, paints, library, options).papers();
  }

  /** The largest cell, in steps, with which the whole chart goes on one page. */
  private double largestWhole(PageFrame frame) {
    Area cells = cells(frame);
    double side = Math.min(cells.widthMm(), cells.heightMm()) / Math.max(1, paints.size());
    return Math.floor(side / CHOSEN_STEP_MM) * CHOSEN_STEP_MM;
  }

  /** The largest cell of which at least one goes on a paper beside its heads. */
  static double largestCellMm(PaperFormat paper) {
    return Math.max(largestCell(PageFrame.upright(paper)), largestCell(PageFrame.lying(paper)));
  }

  private static double largestCell(PageFrame frame) {
    Area cells = cells(frame);
    return Math.min(cells.widthMm(), cells.heightMm());
  }

  private static Area cells(PageFrame frame) {
    Area room = frame.room();
    return new Area(
        room.xMm() + ROW_HEAD_MM,
        room.yMm() + COLUMN_HEAD_MM,
        room.widthMm() - ROW_HEAD_MM,
        room.heightMm() - COLUMN_HEAD_MM - FOOT_MM);
  }

  private int parts(PageFrame frame) {
    Area cells = cells(frame);
    return parts(cells.widthMm()) * parts(cells.heightMm());
  }

  /** How many sheets side by side the paints take within a length. */
  private int parts(double lengthMm) {
    int fitting = Math.max(1, (int) Math.floor(lengthMm / cellMm + 1e-9));
    return Math.max(1, (paints.size() + fitting - 1) / fitting);
  }

  /** The first paint of a part when the paints are shared out evenly. */
  private int bound(int part, int parts) {
    return part * paints.size() / parts;
  }

  private Papers papers() {
    int across = parts(cells(page).widthMm());
    int down = parts(cells(page).heightMm());
    List<List<Mark>> bodies = new ArrayList<>();
    for (int i = 0; i < down; i++) {
      for (int j = 0; j < across; j++) {
        List<Mark> body =
            part(bound(i, down), bound(i + 1, down), bound(j, across), bound(j + 1, across));
        if (!body.isEmpty()) {
          bodies.add(body);
        }
      }
    }
    if (bodies.isEmpty()) {
      bodies.add(List.of());
    }
    List<Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < bodies.size(); i++) {
      String sheet = ChartWords.sheetTitle(title, i + 1, bodies.size());
      sheets.add(page.sheet(sheet, List.of(), bodies.get(i)));
    }
    return new Papers(title, sheets);
  }

  /** Rows and columns of one sheet with their heads; nothing if it holds no cell. */
  private List<Mark> part(int firstRow, int endRow, int firstColumn, int endColumn) {
    Area cells = cells(page);
    List<Mark> marks = new ArrayList<>();
    for (int row = firstRow; row < endRow; row++) {
      for (int column = firstColumn; column < endColumn; column++) {
        if (options.shape() != Shape.TRIANGLE || column <= row) {
          double x = cells.xMm() + (column - firstColumn) * cellMm;
          double y = cells.yMm() + (row - firstRow) * cellMm;
          marks.addAll(cell(row, column, new Area(x, y, cellMm, cellMm)));
        }
      }
    }
    if (marks.isEmpty()) {
      return marks;
    }
    Area room = page.room();
    for (int row = firstRow; row < endRow; row++) {
      double y = cells.yMm() + (row - firstRow) * cellMm;
      marks.addAll(
          PaintHead.ofRow(paints.get(row), new Area(room.xMm(), y, ROW_HEAD_MM - GAP_MM, cellMm)));
    }
    int endHead = options.shape() == Shape.TRIANGLE ? Math.min(endColumn, endRow) : endColumn;
    for (int column = firstColumn; column < endHead; column++) {
      double x = cells.xMm() + (column - firstColumn) * cellMm;
      marks.addAll(
          PaintHead.ofColumn(
              paints.get(column), new Area(x, room.yMm(), cellMm, COLUMN_HEAD_MM - GAP_MM)));
    }
    marks.addAll(foot(cells.yMm() + (endRow - firstRow) * cellMm));
    return marks;
  }

  private List<Mark> cell(int row, int column, Area area) {
    boolean own = row == column;
    List<Mark> marks = new ArrayList<>();
    Area drawn = area.inset(0.4);
    marks.add(
        new Mark.Rectangle(
            drawn, 0, own ? 0.4 : 0.15, own ? Ink.BLACK : Ink.LINE, false, Optional.empty()));
    mixer.ifPresent(
        m -> {
          Area dot = new Area(drawn.xMm() + 0.5, drawn.bottomMm() - 0.5 - DOT_MM, DOT_MM, DOT_MM);
          marks.add(dot(m, row, column, dot));
        });
    return marks;
  }

  private Mark dot(Mixer mixing, int row, int column, Area dot) {
    Srgb colour =
        PrintColour.of(mixing.dry(recipe(row, column), kit.washes().load(wash(row, column))))
            .shown();
    String words =
        ChartWords.dot(
            paints.get(row).labels(), paints.get(column).labels(), PaintMarks.look(colour));
    return new Mark.Group(
        Role.FIGURE, Script.printable(words), List.of(new Mark.Swatch(dot, List.of(colour))));
  }

  private Recipe recipe(int row, int column) {
    String first = paints.get(row).paint().id();
    String second = paints.get(column).paint().id();
    if (row == column) {
      return Recipe.of(first);
    }
    return Recipe.of(first, options.shape() == Shape.LEANING ? LEAD : 1, second, 1);
  }

  private Wash wash(int row, int column) {
    if (options.shape() != Shape.WASHED) {
      return Wash.MILK;
    }
    return column >= row ? Wash.CREAM : Wash.COFFEE;
  }

  /** How to paint the chart, below its last row. */
  private List<Mark> foot(double topMm) {
    Area room = page.room();
    return TextFit.of(Typeface.REGULAR, 7)
        .within(how() + hints(), room.widthMm(), FOOT_MM - GAP_MM)
        .as(Role.PARAGRAPH, room.xMm(), topMm + GAP_MM, room.widthMm(), Align.LEFT);
  }

  private String hints() {
    if (mixer.isEmpty()) {
      return "";
    }
    return " " + (options.shape() == Shape.WASHED ? ChartWords.DOTS : ChartWords.DOTS_OF_MILK);
  }

  private String how() {
    return switch (options.shape()) {
      case SQUARE -> ChartWords.SQUARE;
      case TRIANGLE -> ChartWords.TRIANGLE;
      case LEANING -> ChartWords.LEANING;
      case WASHED -> ChartWords.WASHED;
    };
  }
}
