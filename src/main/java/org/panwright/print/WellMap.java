package org.panwright.print;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.panwright.kit.Box;
import org.panwright.kit.Fixture;
import org.panwright.kit.FixtureKind;

/**
 * The wells of a box in their real arrangement, scaled to a region of a card.
 *
 * <p>To scale in each direction; where the region is wider or taller than the box, that direction
 * is stretched by up to {@link #STRETCH}. A well may grow into the free space towards its
 * neighbours, up to half the way and by at most {@link #GROWTH} of its size on each side, so that
 * there is room to write. It never grows over a mixing area: that helps to see which way round the
 * card lies.
 *
 * @param frame the part of the box shown
 * @param cells one for each well of the box, in its order
 * @param mixingAreas those of the tray, as far as they are in the frame
 */
record WellMap(Area frame, List<Area> cells, List<Area> mixingAreas) {
  private static final double STRETCH = 1.35;
  private static final double GROWTH = 0.35;
  private static final double GUTTER_MM = 0.8;
  private static final double CROP_MARGIN_MM = 1.5;
  private static final double TOUCHING_MM = 0.1;
  private static final double WALL_MM = 0.6;

  WellMap {
    cells = List.copyOf(cells);
    mixingAreas = List.copyOf(mixingAreas);
  }

  /**
   * The map of a box, centred in a region and as large as it allows.
   *
   * @param cropped whether to show only the part of the box that has wells
   */
  static WellMap of(Box box, Area region, boolean cropped) {
    List<Area> real =
        box.wells().stream()
            .map(w -> new Area(w.xMm(), w.yMm(), w.widthMm(), w.heightMm()))
            .toList();
    Area shown = cropped ? around(real) : new Area(0, 0, box.widthMm(), box.heightMm());
    double across = region.widthMm() / shown.widthMm();
    double down = region.heightMm() / shown.heightMm();
    double scaleX = Math.min(across, STRETCH * down);
    double scaleY = Math.min(down, STRETCH * across);
    double width = scaleX * shown.widthMm();
    double height = scaleY * shown.heightMm();
    Area frame =
        new Area(
            region.xMm() + (region.widthMm() - width) / 2,
            region.yMm() + (region.heightMm() - height) / 2,
            width,
            height);
    UnaryOperator<Area> place =
        a ->
            new Area(
                frame.xMm() + scaleX * (a.xMm() - shown.xMm()),
                frame.yMm() + scaleY * (a.yMm() - shown.yMm()),
                scaleX * a.widthMm(),
                scaleY * a.heightMm());
    List<Area> mixing =
        box.fixtures().stream()
            .filter(part -> part.kind() == FixtureKind.MIXING_AREA && !part.inLid())
            .map(WellMap::area)
            .filter(area -> shown.contains(area, TOUCHING_MM))
            .map(place)
            .toList();
    List<Area> placed = real.stream().map(place).toList();
    List<Area> turned = both(placed, mixing).map(WellMap::turned).toList();
    List<Area> tall =
        placed.stream().map(cell -> turned(grown(turned(cell), turned, turned(frame)))).toList();
    List<Area> all = both(tall, mixing).toList();
    return new WellMap(
        frame,
        tall.stream().map(cell -> grown(cell, all, frame).inset(GUTTER_MM / 2)).toList(),
        mixing);
  }

  private static Area area(Fixture part) {
    return new Area(part.xMm(), part.yMm(), part.widthMm(), part.heightMm());
  }

  private static Stream<Area> both(List<Area> cells, List<Area> mixing) {
    return Stream.concat(cells.stream(), mixing.stream());
  }

  private static Area around(List<Area> wells) {
    double left = wells.stream().mapToDouble(Area::xMm).min().orElseThrow();
    double top = wells.stream().mapToDouble(Area::yMm).min().orElseThrow();
    double right = wells.stream().mapToDouble(Area::rightMm).max().orElseThrow();
    double bottom = wells.stream().mapToDouble(Area::bottomMm).max().orElseThrow();
    return new Area(left, top, right - left, bottom - top).inset(-CROP_MARGIN_MM);
  }

  /**
   * {@code cell} grown towards its neighbours to the left and right; a side without a neighbour
   * grows as much as the other, within the frame.
   */
  private static Area grown(Area cell, List<Area> all, Area frame) {
    double left = Double.NaN;
    double right = Double.NaN;
    for (Area other : all) {
      boolean sameRow =
          Math.min(other.bottomMm(), cell.bottomMm()) - Math.max(other.yMm(), cell.yMm())
              > TOUCHING_MM;
      if (sameRow && other.rightMm() <= cell.xMm() + TOUCHING_MM) {
        left = smaller(left, (cell.xMm() - other.rightMm()) / 2);
      } else if (sameRow && other.xMm() >= cell.rightMm() - TOUCHING_MM) {
        right = smaller(right, (other.xMm() - cell.rightMm()) / 2);
      }
    }
    double reach = GROWTH * cell.widthMm();
    double toLeft =
        Math.min(reach, Double.isNaN(left) ? atWall(right, cell.xMm() - frame.xMm()) : left);
    double toRight =
        Math.min(
            reach, Double.isNaN(right) ? atWall(left, frame.rightMm() - cell.rightMm()) : right);
    return new Area(
        cell.xMm() - toLeft, cell.yMm(), cell.widthMm() + toLeft + toRight, cell.heightMm());
  }

  private static double smaller(double known, double found) {
    return Double.isNaN(known) ? found : Math.min(known, found);
  }

  private static double atWall(double opposite, double toWall) {
    return Double.isNaN(opposite) ? 0 : Math.max(0, Math.min(opposite, toWall - WALL_MM));
  }

  /** The area with its axes exchanged. */
  private static Area turned(Area area) {
    return new Area(area.yMm(), area.xMm(), area.heightMm(), area.widthMm());
  }
}
