package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.paint.Paint;
import org.panwright.print.FittedText.Align;
import org.panwright.words.ChartWords;
import org.panwright.words.PaperWords;

/**
 * Labels to cut out for the pans of a lineup: a strip for the outer wall and a slip for under the
 * base, each with the well's label, the paint's name and its pigment codes, since names are not
 * unique but codes are. Dabs get none.
 *
 * <p>Sizes follow common practice: a half pan takes a strip of 17 × 8 mm and a slip of 17 × 13 mm,
 * a full pan a strip of 28 × 8 mm and a slip of 27 × 17 mm.
 */
public final class PanLabels {
  private static final double GAP_MM = 2;
  private static final double EDGE_MM = 0.9;

  private PanLabels() {}

  /** Where a label goes. */
  private enum Place {
    SIDE,
    BASE
  }

  /**
   * The labels of a lineup, those of one pan next to each other; none, with the reason, if it fills
   * no pan.
   *
   * @throws IllegalArgumentException if the kit has no such lineup
   */
  public static Made of(Kit kit, String lineupId, LabelOptions options) {
    Lineup lineup = LineupPaint.lineup(kit, lineupId);
    PageFrame page = PageFrame.upright(options.paper());
    List<Face> labels = labels(kit, lineup, options.places());
    if (labels.isEmpty()) {
      return Made.nothing(PaperWords.NO_PANS);
    }
    List<List<Packing.Placed>> bodies = Packing.pages(page.room(), GAP_MM, labels);
    String title = ChartWords.labelsTitle(lineup.name());
    List<Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < bodies.size(); i++) {
      List<Mark> body = new ArrayList<>();
      bodies.get(i).forEach(placed -> body.addAll(placed.marks()));
      sheets.add(
          page.sheet(
              ChartWords.sheetTitle(title, i + 1, bodies.size()),
              List.of(ChartWords.LABELS),
              body));
    }
    return Made.of(new Papers(title, sheets));
  }

  private static List<Face> labels(Kit kit, Lineup lineup, LabelOptions.Places places) {
    List<Face> labels = new ArrayList<>();
    for (Well well : kit.boxOf(lineup).wells()) {
      if (well.kind() != WellKind.DAB) {
        lineup
            .in(well.id())
            .map(filling -> kit.shelf().find(filling.paintId()).orElseThrow())
            .ifPresent(
                paint -> {
                  if (places != LabelOptions.Places.BASE) {
                    labels.add(label(well, paint, Place.SIDE));
                  }
                  if (places != LabelOptions.Places.SIDE) {
                    labels.add(label(well, paint, Place.BASE));
                  }
                });
      }
    }
    return labels;
  }

  private static Face label(Well well, Paint paint, Place place) {
    boolean full = well.kind() == WellKind.PAN;
    double width = place == Place.SIDE ? (full ? 28 : 17) : (full ? 27 : 17);
    double height = place == Place.SIDE ? 8 : (full ? 17 : 13);
    Area area = new Area(0, 0, width, height);
    Area inner = area.inset(EDGE_MM);
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Rectangle(area, 0, 0.15, Ink.LINE, false, Optional.empty()));
    double namePt = place == Place.SIDE ? 6 : 6.5;
    FittedText label = TextFit.of(Typeface.BOLD, namePt).line(well.label(), 0.3 * inner.widthMm());
    double beside = label.widthMm() + 0.8;
    FittedText codes =
        TextFit.of(Typeface.REGULAR, TextFit.LEGIBLE_PT)
            .within(
                paint.codes(),
                inner.widthMm(),
                inner.heightMm() - Typeface.leadingMm(TextFit.LEGIBLE_PT));
    FittedText name =
        TextFit.of(Typeface.REGULAR, namePt)
            .within(paint.name(), inner.widthMm() - beside, inner.heightMm() - codes.heightMm());
    marks.addAll(
        label.at(
            inner.xMm(), inner.yMm() + name.baselineMm() - label.baselineMm(), beside, Align.LEFT));
    marks.addAll(name.at(inner.xMm() + beside, inner.yMm(), inner.widthMm() - beside, Align.LEFT));
    marks.addAll(
        codes.at(inner.xMm(), inner.bottomMm() - codes.heightMm(), inner.widthMm(), Align.LEFT));
    return new Face(width, height, Mark.Group.of(Role.PARAGRAPH, marks));
  }
}
