package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.kit.Fill;
import org.panwright.kit.WellKind;
import org.panwright.paint.Handling;
import org.panwright.print.FittedText.Align;
import org.panwright.words.CardWords;

/**
 * One well drawn in its cell.
 *
 * <p>In an upright cell from above: label and fill, the swatch, name and codes, at the foot the
 * properties; cells of one size have swatches of one size. In a flat cell the texts stand to the
 * right of the swatch.
 */
final class WellCell {
  private static final double GAP_MM = 0.4;
  private static final double LEAST_SWATCH_MM = 2.6;
  private static final double LEAST_FIELD_MM = 5;

  /** From this width in heights on a cell counts as flat. */
  private static final double FLAT = 1.6;

  private static final double SWATCH_SHARE = 0.36;
  private static final int PROPERTIES = 4;

  private final CardWell well;
  private final Area area;
  private final Area inner;
  private final Detail detail;
  private final CellType type;
  private final boolean predicted;
  private final double topRowMm;

  WellCell(CardWell well, Area area, Detail detail, CellType type, boolean predicted) {
    this.well = well;
    this.area = area;
    this.detail = detail;
    this.type = type;
    this.predicted = predicted;
    inner = area.inset(Math.min(1.6, Math.max(0.6, 0.05 * area.widthMm())));
    topRowMm = Typeface.leadingMm(type.labelPt());
  }

  /** Whether the cell has room for its detail. */
  boolean fits() {
    if (detail == Detail.NUMBERS) {
      return inner.widthMm() >= 2.4 && inner.heightMm() >= topRowMm;
    }
    double leastText =
        switch (detail) {
          case WORDS -> 19;
          case MARKS -> 10;
          case NAMES, NUMBERS -> 8;
        };
    double leastSwatch = predicted ? LEAST_SWATCH_MM : LEAST_FIELD_MM;
    return text().widthMm() >= leastText
        && textMm() >= leastTextMm()
        && text().heightMm() >= textMm() + propertiesMm() - 1e-9
        && field().heightMm() >= leastSwatch;
  }

  /** The name as it would be set, if there is one and the detail shows it. */
  Optional<FittedText> name() {
    if (detail == Detail.NUMBERS) {
      return Optional.empty();
    }
    return well.filled()
        .map(
            filled ->
                TextFit.of(Typeface.REGULAR, type.namePt())
                    .within(
                        filled.paint().name(),
                        text().widthMm(),
                        textMm() - codes(filled).heightMm()));
  }

  /** Whether the end of the name or of the codes is missing. */
  boolean isCut() {
    return detail != Detail.NUMBERS
        && well.filled().isPresent()
        && (name().orElseThrow().cut() || codes(well.filled().get()).cut());
  }

  /** Whether the cell says all there is to say. */
  boolean isComplete() {
    return well.filled().isEmpty()
        || ((detail == Detail.WORDS || detail == Detail.MARKS) && !isCut());
  }

  /** The marks of the cell. */
  List<Mark> marks() {
    double radius = well.well().kind() == WellKind.DAB ? 2.4 : 0.8;
    boolean isEmpty = well.filled().isEmpty();
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Rectangle(area, radius, 0.15, Ink.LINE, isEmpty, Optional.empty()));
    marks.addAll(topRow());
    if (isEmpty) {
      marks.addAll(emptyWell());
      return marks;
    }
    CardWell.Filled filled = well.filled().get();
    marks.addAll(swatch(filled, field()));
    name()
        .ifPresent(
            name -> {
              Area text = text();
              marks.addAll(name.at(text.xMm(), text.yMm(), text.widthMm(), Align.LEFT));
              double below = text.yMm() + name.heightMm();
              marks.addAll(codes(filled).at(text.xMm(), below, text.widthMm(), Align.LEFT));
              marks.addAll(properties(filled.paint().handling()));
            });
    return marks;
  }

  private List<Mark> emptyWell() {
    if (detail == Detail.NUMBERS) {
      return List.of();
    }
    FittedText empty =
        TextFit.of(Typeface.REGULAR, type.notePt()).line(CardWords.EMPTY_WELL, inner.widthMm());
    double top = inner.yMm() + topRowMm + (inner.heightMm() - topRowMm - empty.heightMm()) / 2;
    return empty.at(inner.xMm(), top, inner.widthMm(), Align.CENTRE);
  }

  private boolean isFlat() {
    return detail != Detail.NUMBERS && area.widthMm() >= FLAT * area.heightMm();
  }

  /** The height reserved for name and codes: three lines, in a flat cell all there is. */
  private double textMm() {
    return isFlat()
        ? inner.heightMm() - propertiesMm()
        : 2 * Typeface.leadingMm(type.namePt()) + Typeface.leadingMm(type.notePt());
  }

  private double leastTextMm() {
    return Typeface.leadingMm(type.namePt()) + Typeface.leadingMm(type.notePt());
  }

  private double propertiesMm() {
    return switch (detail) {
      case WORDS -> GAP_MM + PROPERTIES * Typeface.leadingMm(type.notePt());
      case MARKS -> GAP_MM + Typeface.leadingMm(type.notePt());
      case NAMES, NUMBERS -> 0;
    };
  }

  /** The left column of a flat cell, or all of another. */
  private Area head() {
    double width = isFlat() ? SWATCH_SHARE * inner.widthMm() : inner.widthMm();
    return new Area(inner.xMm(), inner.yMm(), width, inner.heightMm());
  }

  /** Where name, codes and properties go. */
  private Area text() {
    if (isFlat()) {
      double left = head().rightMm() + 2.5 * GAP_MM;
      return new Area(left, inner.yMm(), inner.rightMm() - left, inner.heightMm());
    }
    double height = Math.min(inner.heightMm(), textMm() + propertiesMm());
    return new Area(inner.xMm(), inner.bottomMm() - height, inner.widthMm(), height);
  }

  /** Where the swatch goes: below the label, or beside it in the smallest cells. */
  private Area field() {
    double under = inner.heightMm() - topRowMm;
    if (isFlat() || (detail == Detail.NUMBERS && under >= 1.5)) {
      return new Area(inner.xMm(), inner.yMm() + topRowMm, head().widthMm(), Math.max(0, under));
    }
    if (detail == Detail.NUMBERS) {
      double width = Math.max(0, inner.widthMm() - label().widthMm() - GAP_MM);
      return new Area(inner.rightMm() - width, inner.yMm(), width, inner.heightMm());
    }
    double height = Math.max(0, under - text().heightMm() - GAP_MM);
    return new Area(inner.xMm(), inner.yMm() + topRowMm, inner.widthMm(), height);
  }

  private FittedText codes(CardWell.Filled filled) {
    return TextFit.of(Typeface.REGULAR, type.notePt())
        .within(
            filled.paint().codes(),
            text().widthMm(),
            Math.min(
                2 * Typeface.leadingMm(type.notePt()),
                textMm() - Typeface.leadingMm(type.namePt())));
  }

  /** The swatch of a run, or the field to paint. */
  private List<Mark> swatch(CardWell.Filled filled, Area field) {
    if (field.widthMm() < 1 || field.heightMm() < 1) {
      return List.of();
    }
    return List.of(
        predicted
            ? PaintMarks.swatch(filled.paint().name(), filled.run(), field)
            : PaintMarks.outline(field));
  }

  private List<Mark> topRow() {
    Area head = head();
    FittedText label = label();
    List<Mark> marks = new ArrayList<>(label.at(head.xMm(), head.yMm(), 0, Align.LEFT));
    fill()
        .ifPresent(
            fill ->
                marks.addAll(
                    fill.at(
                        head.xMm(),
                        head.yMm() + label.baselineMm() - fill.baselineMm(),
                        head.widthMm(),
                        Align.RIGHT)));
    return marks;
  }

  private FittedText label() {
    double room = head().widthMm() - fill().map(f -> f.widthMm() + GAP_MM).orElse(0.0);
    return TextFit.of(Typeface.BOLD, type.labelPt()).line(well.well().label(), room);
  }

  /** The fill, unless it goes without saying or there is no room. */
  private Optional<FittedText> fill() {
    if (detail == Detail.NUMBERS || well.filled().isEmpty()) {
      return Optional.empty();
    }
    Fill fill = well.filled().get().fill();
    if (fill == Fill.DAB && well.well().kind() == WellKind.DAB) {
      return Optional.empty();
    }
    return Optional.of(
        TextFit.of(Typeface.REGULAR, type.notePt())
            .line(CardWords.fill(fill), head().widthMm() / 2));
  }

  private List<Mark> properties(Handling handling) {
    Area text = text();
    double top = text.bottomMm() - propertiesMm() + GAP_MM;
    return switch (detail) {
      case WORDS ->
          PaintMarks.propertiesInWords(handling, text.xMm(), top, text.widthMm(), type.notePt());
      case MARKS ->
          PaintMarks.properties(
              handling, text.xMm(), top, text.widthMm() / PROPERTIES, type.notePt());
      case NAMES, NUMBERS -> List.of();
    };
  }
}
