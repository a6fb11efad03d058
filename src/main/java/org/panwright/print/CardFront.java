package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.kit.WellKind;
import org.panwright.words.CardWords;

/**
 * The front of a key card: heading, map of the wells, small print, orientation.
 *
 * @param face what is drawn
 * @param complete whether nothing was left out or cut, so that no list is needed
 */
record CardFront(Face face, boolean complete) {
  private static final double HINGE_MM = 1.2;
  private static final double GAP_MM = 0.8;
  private static final double LEAST_MAP_MM = 4;
  private static final double AREA_PT = 5.25;

  /**
   * The share of cells that may lose the end of a name before the card leaves out properties. Names
   * stay: the beginning of one and its codes say more than a number.
   */
  private static final double CUT_SHARE = 0.25;

  /**
   * The front with the most to say that is legible, or nothing if not even numbers are.
   *
   * @param size of the card
   */
  static Optional<CardFront> of(CardContent content, Area size) {
    for (Detail detail : Detail.values()) {
      for (boolean smallPrint : new boolean[] {true, false}) {
        for (boolean cropped : new boolean[] {false, true}) {
          boolean sensible =
              smallPrint
                  ? detail != Detail.NAMES && detail != Detail.NUMBERS
                  : detail != Detail.WORDS;
          if (sensible) {
            Optional<CardFront> front = attempt(content, size, detail, smallPrint, cropped);
            if (front.isPresent()) {
              return front;
            }
          }
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<CardFront> attempt(
      CardContent content, Area size, Detail detail, boolean smallPrint, boolean cropped) {
    double padding = Math.min(5, Math.max(1, 0.03 * Math.min(size.widthMm(), size.heightMm())));
    Area inside = size.inset(padding);
    CardEdge heading = CardEdge.heading(content, inside);
    CardEdge foot = CardEdge.foot(content, inside, smallPrint);
    double top = heading.limitMm() + HINGE_MM;
    double bottom = foot.limitMm() - GAP_MM;
    if (bottom - top < LEAST_MAP_MM) {
      return Optional.empty();
    }
    Area region = new Area(inside.xMm(), top, inside.widthMm(), bottom - top);
    WellMap map = WellMap.of(content.box(), region, cropped);
    List<WellCell> cells = cells(content, map, detail);
    if (cells.isEmpty()) {
      return Optional.empty();
    }
    List<Mark> marks = new ArrayList<>(heading.marks());
    Area frame = map.frame();
    marks.add(new Mark.Rectangle(frame, 1.5, 0.2, Ink.FAINT, false, Optional.empty()));
    double hinge = frame.yMm() - 0.7;
    marks.add(
        new Mark.Line(
            frame.xMm() + 1.5, hinge, frame.rightMm() - 1.5, hinge, 0.35, Ink.LINE, false));
    map.mixingAreas().forEach(area -> marks.addAll(mixingArea(area)));
    cells.forEach(cell -> marks.addAll(Mark.Group.of(Role.PARAGRAPH, cell.marks())));
    marks.addAll(foot.marks());
    boolean complete = smallPrint && cells.stream().allMatch(WellCell::isComplete);
    return Optional.of(new CardFront(new Face(size.widthMm(), size.heightMm(), marks), complete));
  }

  private static List<Mark> mixingArea(Area area) {
    List<Mark> marks = new ArrayList<>();
    double radius = Math.min(2, Math.min(area.widthMm(), area.heightMm()) / 2);
    marks.add(new Mark.Rectangle(area, radius, 0.2, Ink.FAINT, false, Optional.empty()));
    FittedText name = TextFit.of(Typeface.REGULAR, AREA_PT).line(CardWords.MIXING_AREA, 1000);
    if (name.widthMm() <= area.widthMm() - 1 && name.heightMm() <= area.heightMm() - 0.5) {
      double y = area.yMm() + (area.heightMm() - name.heightMm()) / 2;
      marks.addAll(name.as(Role.PARAGRAPH, area.xMm(), y, area.widthMm(), FittedText.Align.CENTRE));
    }
    return marks;
  }

  /** The cells, or none if the detail is too much for them. Dabs may say less than the others. */
  private static List<WellCell> cells(CardContent content, WellMap map, Detail detail) {
    List<Double> widths = new ArrayList<>();
    for (int i = 0; i < map.cells().size(); i++) {
      if (content.wells().get(i).well().kind() != WellKind.DAB) {
        widths.add(map.cells().get(i).widthMm());
      }
    }
    if (widths.isEmpty()) {
      map.cells().forEach(cell -> widths.add(cell.widthMm()));
    }
    widths.sort(null);
    CellType usual = CellType.forWidth(widths.get(widths.size() / 2));
    List<WellCell> cells = evened(content, map, detail, usual);
    return cells.isEmpty() ? evened(content, map, detail, CellType.SMALLEST) : cells;
  }

  /** The cells with names of one size as far as they can. */
  private static List<WellCell> evened(
      CardContent content, WellMap map, Detail detail, CellType type) {
    List<WellCell> first = cells(content, map, detail, type);
    double common =
        first.stream()
            .flatMap(cell -> cell.name().stream())
            .filter(name -> !name.cut() && name.sizePt() >= 0.8 * type.namePt())
            .mapToDouble(FittedText::sizePt)
            .min()
            .orElse(type.namePt());
    return cells(content, map, detail, type.withNamePt(common));
  }

  private static List<WellCell> cells(
      CardContent content, WellMap map, Detail detail, CellType type) {
    List<WellCell> cells = new ArrayList<>();
    int cut = 0;
    int counted = 0;
    for (int i = 0; i < map.cells().size(); i++) {
      CardWell well = content.wells().get(i);
      boolean isDab = well.well().kind() == WellKind.DAB;
      Optional<WellCell> cell = cell(content, well, map.cells().get(i), detail, type, isDab);
      if (cell.isEmpty()) {
        return List.of();
      }
      cells.add(cell.get());
      if (!isDab && detail != Detail.NUMBERS) {
        counted++;
        cut += cell.get().isCut() ? 1 : 0;
      }
    }
    boolean canSayLess = detail == Detail.WORDS || detail == Detail.MARKS;
    return canSayLess && cut > CUT_SHARE * counted ? List.of() : cells;
  }

  private static Optional<WellCell> cell(
      CardContent content,
      CardWell well,
      Area area,
      Detail wanted,
      CellType type,
      boolean mayBeLess) {
    for (Detail detail : Detail.values()) {
      if (detail.compareTo(wanted) >= 0) {
        WellCell cell = new WellCell(well, area, detail, type, content.isPredicted());
        if (cell.fits()) {
          return Optional.of(cell);
        }
        if (!mayBeLess) {
          return Optional.empty();
        }
      }
    }
    return Optional.empty();
  }
}
