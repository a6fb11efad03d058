package org.panwright.words;

import java.util.Optional;
import java.util.function.Function;
import org.panwright.swatch.grid.CellContent;
import org.panwright.swatch.grid.CellReading;
import org.panwright.swatch.grid.CellVerdict;
import org.panwright.swatch.grid.ExchangedLabels;
import org.panwright.swatch.grid.GridShape;
import org.panwright.swatch.grid.PaintedGrid;

/** What is said where a hand-painted chart is read off a picture. */
public final class ChartReadingWords {
  /** Name of the way of reading. */
  public static final String NAME = "Painted chart";

  /** What it is for. */
  public static final String PURPOSE =
      "A mixing chart you painted before: its cells are read, each is compared with what the others"
          + " foretell, and the paints learn from those that agree.";

  /** In place of the picture. */
  public static final String EMPTY =
      "Open a photo or scan of a chart you painted. You then mark its four corners and say which"
          + " paints its rows and columns hold.";

  /** About the corners. */
  public static final String CORNERS =
      "Drag 1 to 4 to the outer corners of the chart's cells, 1 to the upper left. By keys: 1 to 4"
          + " pick a corner, arrows move it (with Shift by ten), + and − zoom, 0 shows all. The"
          + " small frames show where cells are read; a click on one looks at it.";

  /** While no corner has been moved. */
  public static final String PLACE_CORNERS =
      "Put the four corners on the outer corners of the chart; then its cells are read.";

  /** Over the cells. */
  public static final String LEGEND =
      "Upper half: as painted. Lower half: as all other cells foretell it. Framed: disagrees."
          + " Struck through: left out. Arrow keys go from cell to cell, the space bar leaves one"
          + " out or takes it in.";

  /** The cells, for readers of the screen. */
  public static final String CELLS = "cells of the chart";

  /** Over a colour. */
  public static final String PAINTED = "as painted";

  /** Over a colour. */
  public static final String FORETOLD = "as foretold";

  /** Over the colour of a cell that disagrees. */
  public static final String FORETOLD_USUAL = "as foretold, as thick as the others";

  /** Tick. */
  public static final String KEEP_CELL = "Learn from this cell";

  /** Exchanges two cells. */
  public static final String EXCHANGE_CELLS = "They were exchanged: swap their labels";

  /** Heading. */
  public static final String HOLDS = "What the chart holds";

  /** Field. */
  public static final String SHAPE = "Cells";

  /** Field. */
  public static final String HOW_MANY = "Rows or paints";

  /** Field. */
  public static final String ACROSS = "Columns";

  /** Tick. */
  public static final String SAME = "The columns hold the same paints in the same order";

  /** Over the paints of both rows and columns. */
  public static final String BOTH = "Rows from the top, and columns from the left";

  /** Over the paints of the rows. */
  public static final String ROWS = "Rows from the top";

  /** Over the paints of the columns. */
  public static final String COLUMNS = "Columns from the left";

  /** Over single paints. */
  public static final String IN_ORDER = "Paints in reading order";

  /** Keeps it all. */
  public static final String KEEP = "Learn from these cells";

  /** After leaving off comparing. */
  public static final String LEFT_OFF =
      "Left off: the cells were not compared, so nothing can be learnt from them yet.";

  /** Takes it up again. */
  public static final String COMPARE = "Compare the cells";

  /** After leaving off learning. */
  public static final String CANCELLED = "Cancelled: nothing was learnt.";

  /** In place of that none disagrees, while two labels look exchanged. */
  public static final String AGREE_BUT_EXCHANGED =
      "The cells agree with each other, but not with these labels.";

  /** One cell in so many is not one slip of the brush any more. */
  private static final int MANY = 10;

  private ChartReadingWords() {}

  /** What the cells of a chart hold. */
  public static String shape(GridShape shape) {
    return switch (shape) {
      case SQUARE -> "every pair twice, equal strength";
      case LOWER_TRIANGLE -> "every pair once, lower left half";
      case UPPER_TRIANGLE -> "every pair once, upper right half";
      case ROW_LEADS -> "every pair twice, row leads";
      case COLUMN_LEADS -> "every pair twice, column leads";
      case THICK_AND_THIN -> "thick above the diagonal, thin below";
      case ONE_EACH -> "one paint alone in each cell";
    };
  }

  /** Where a chart was read, as it is noted with the paints. */
  public static String source(String file) {
    return "hand-painted chart " + file;
  }

  /** The place of a row. */
  public static String row(int number) {
    return "Row " + number;
  }

  /** The place of a column. */
  public static String column(int number) {
    return "Column " + number;
  }

  /** Where a cell is. */
  public static String place(CellReading cell) {
    return "row %d, column %d".formatted(cell.row() + 1, cell.column() + 1);
  }

  /**
   * Where a cell is and what it holds.
   *
   * @param names paints' names by id
   */
  public static String cell(CellReading cell, Function<String, String> names) {
    return "Row %d, column %d: %s"
        .formatted(cell.row() + 1, cell.column() + 1, content(cell.content(), names));
  }

  private static String content(CellContent content, Function<String, String> names) {
    String first = names.apply(content.first());
    return content
        .second()
        .map(second -> first + " with " + names.apply(second))
        .orElse(first + " alone");
  }

  /** How uneven a cell is, and how far from what is foretold. */
  public static String figures(double spread, Optional<Double> distance) {
    String uneven = "uneven by %.1f".formatted(spread);
    return distance.map(d -> "ΔE00 %.1f apart, ".formatted(d) + uneven).orElse(uneven);
  }

  /** What is made of a cell; empty if it agrees. */
  public static String verdict(CellVerdict verdict, String partner, boolean beyond) {
    if (beyond) {
      return "More vivid than the picture can hold, so nothing is learnt from it.";
    }
    return switch (verdict) {
      case AGREES -> "";
      case EXCHANGED ->
          "It looks like what %s should hold, and that one like this.".formatted(partner);
      case DISAGREES ->
          "It fits neither its own label nor another cell's: another paint, or a dirty brush.";
    };
  }

  /** A cell that disagrees, in a line. */
  public static String odd(
      CellReading cell, CellVerdict verdict, double distance, Function<String, String> names) {
    return "%s: %s, ΔE00 %.0f off"
        .formatted(
            cell(cell, names),
            verdict == CellVerdict.EXCHANGED ? "looks exchanged" : "disagrees",
            distance);
  }

  /** Two rows or columns look exchanged. */
  public static String labels(
      ExchangedLabels labels, PaintedGrid grid, Function<String, String> names) {
    String first =
        names.apply((labels.ofRows() ? grid.rowPaints() : grid.columnPaints()).get(labels.first()));
    String second =
        names.apply(
            (labels.ofRows() ? grid.rowPaints() : grid.columnPaints()).get(labels.second()));
    return "The %s %d (%s) and %d (%s) look exchanged: as labelled they are ΔE00 %.0f off, the other way round %.0f."
        .formatted(
            exchanged(labels),
            labels.first() + 1,
            first,
            labels.second() + 1,
            second,
            labels.before(),
            labels.after());
  }

  /** Exchanges them. */
  public static String exchangeLabels(ExchangedLabels labels) {
    return "Exchange these " + exchanged(labels);
  }

  private static String exchanged(ExchangedLabels labels) {
    return switch (labels.where()) {
      case ROWS -> "rows";
      case COLUMNS -> "columns";
      case BOTH -> "rows and columns";
    };
  }

  /** How many cells agree; where many do not, what to look at before blaming the cells. */
  public static String summary(int cells, int odd) {
    if (odd == 0) {
      return cells == 1 ? "The one cell agrees." : "All %d cells agree.".formatted(cells);
    }
    String told =
        odd == 1
            ? "One of %d cells disagrees and is left out:".formatted(cells)
            : "%d of %d cells disagree and are left out:".formatted(odd, cells);
    return odd * MANY < cells || odd < 3
        ? told
        : "Where so many disagree, first check the corners, the paints named and whose paint leads."
            + " "
            + told;
  }

  /** Cells left out as the picture cannot hold their colour. */
  public static String beyond(int cells) {
    return cells == 1
        ? "One cell, struck through, is more vivid than the picture can hold, so nothing is learnt"
            + " from it."
        : "%d cells, struck through, are more vivid than the picture can hold, so nothing is learnt from them."
            .formatted(cells);
  }

  /** What is going on, by its name. */
  public static String work(String name) {
    return switch (name) {
      case "READING" -> "Reading the cells…";
      case "COMPARING" -> "Comparing the cells with each other…";
      case "LEARNING" -> "The paints learn from the cells…";
      default -> "";
    };
  }

  /** After keeping. */
  public static String kept(int cells, int paints) {
    return "%s learnt from %s."
        .formatted(
            paints == 1 ? "One paint" : paints + " paints",
            cells == 1 ? "one cell" : cells + " cells");
  }
}
