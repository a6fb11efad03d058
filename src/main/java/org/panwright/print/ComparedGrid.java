package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.panwright.analysis.judge.Judgement;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Paint;
import org.panwright.paint.Wash;
import org.panwright.print.FittedText.Align;
import org.panwright.words.CompareWords;

/**
 * The mix grid of one lineup in rows and columns shared with another's; cells it lacks are empty.
 */
final class ComparedGrid {
  private static final double HEADS_MM = 26;
  private static final double LARGEST_CELL_MM = 5;
  private static final double LEAD = 3;
  private static final double TEXT_PT = 6;
  private static final double GAP_MM = 1.5;

  /** Frames of smaller cells would run together into grey. */
  private static final double LEAST_FRAMED_MM = 2;

  private static final double LOW_GAP_MM = 0.8;

  private ComparedGrid() {}

  /** The height of a grid of so many paints in a width. */
  static double heightMm(int paints, double widthMm) {
    return paints * cellMm(paints, widthMm);
  }

  private static double cellMm(int paints, double widthMm) {
    return Math.min(LARGEST_CELL_MM, (widthMm - HEADS_MM) / Math.max(1, paints));
  }

  static List<Mark> of(Judgement judgement, String name, List<String> paints, Area area) {
    if (paints.isEmpty()) {
      return List.of();
    }
    Kit kit = judgement.kit();
    Lineup lineup = kit.lineup(judgement.lineupId()).orElseThrow();
    Set<String> here = lineup.paintIds(kit.boxOf(lineup)).stream().collect(Collectors.toSet());
    Mixer mixer = new Mixer(judgement.table());
    double cell = cellMm(paints.size(), area.widthMm());
    double load = kit.washes().load(Wash.CREAM);
    List<Mark> marks = new ArrayList<>();
    for (int row = 0; row < paints.size(); row++) {
      double y = area.yMm() + row * cell;
      String rowId = paints.get(row);
      marks.addAll(head(kit.shelf().find(rowId).orElseThrow(), row, cell, area.xMm(), y));
      for (int column = 0; column < paints.size(); column++) {
        String columnId = paints.get(column);
        Area place = new Area(area.xMm() + HEADS_MM + column * cell, y, cell, cell).inset(0.1);
        if (here.contains(rowId) && here.contains(columnId)) {
          Recipe recipe = row == column ? Recipe.of(rowId) : Recipe.of(rowId, LEAD, columnId, 1);
          marks.add(
              new Mark.Swatch(place, List.of(PrintColour.of(mixer.dry(recipe, load)).shown())));
        } else if (cell >= LEAST_FRAMED_MM) {
          marks.add(new Mark.Rectangle(place, 0, 0.08, Ink.FAINT, false, Optional.empty()));
        }
      }
    }
    double extent = paints.size() * cell;
    Area whole = new Area(area.xMm() + HEADS_MM, area.yMm(), extent, extent);
    marks.add(new Mark.Rectangle(whole, 0, 0.08, Ink.FAINT, false, Optional.empty()));
    return List.of(new Mark.Group(Role.FIGURE, CompareWords.gridFigure(name), marks));
  }

  /**
   * The name of a row; in low rows the codes, in several columns by turns so that they do not
   * touch.
   */
  private static List<Mark> head(Paint paint, int row, double cell, double xMm, double yMm) {
    int columns = (int) Math.ceil(Typeface.leadingMm(TextFit.LEGIBLE_PT) / cell);
    boolean low = columns > 1;
    double each = HEADS_MM / columns;
    double width = each - (low ? LOW_GAP_MM : GAP_MM);
    double left = xMm + row % columns * each;
    FittedText head =
        TextFit.of(Typeface.REGULAR, low ? TextFit.LEGIBLE_PT : TEXT_PT)
            .line(low ? paint.codes() : paint.name(), width);
    return head.at(left, yMm + (cell - head.heightMm()) / 2, width, Align.RIGHT);
  }
}
