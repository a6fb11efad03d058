package org.panwright.kit;

import java.util.ArrayList;
import java.util.List;

/**
 * A plain box as rows and columns of pans, perhaps with dab places; says how to draw the {@link
 * Box}.
 *
 * <p>Pans stand side by side along the hinge, with their short sides to the left and right
 * neighbour. Between the first and the second row runs a channel; dab places lie in it, or in front
 * of the only row. Sizes are usual ones (common practice; makes differ by 1–2 mm, there is no
 * standard), meant to be corrected with a ruler.
 *
 * @param name what the box is called at first
 * @param kind what the wells of the rows hold, not dabs
 * @param rows 1..8
 * @param columns 1..16
 * @param wellWidthMm of a well, along the hinge
 * @param wellHeightMm of a well, from the hinge to the front
 * @param edgeMm from the outer wells to the walls, where rails hold the pans, 0..20
 * @param gapMm between neighbours, 0..20
 * @param channelMm between the first row and the second, 0..60; made wider where dabs need it
 * @param dabs dab places, 0..12
 * @param dabMm side of a square dab place
 */
public record BoxPlan(
    String name,
    WellKind kind,
    int rows,
    int columns,
    double wellWidthMm,
    double wellHeightMm,
    double edgeMm,
    double gapMm,
    double channelMm,
    int dabs,
    double dabMm) {
  /** Place a half pan takes: 19 mm long, 15–16 mm wide outside (common practice). */
  private static final double HALF_PAN_WIDTH_MM = 16;

  private static final double HALF_PAN_HEIGHT_MM = 19.5;

  private static final double EDGE_MM = 4;
  private static final double GAP_MM = 0.5;
  private static final double CHANNEL_MM = 14;
  private static final double DAB_MM = 11;

  /**
   * Usual boxes to start from: 6, 10, 12, 14, 18 and 24 half pans, each without and with dab
   * places.
   */
  public static final List<Box> ALL = usual();

  public BoxPlan {
    requireWithin("rows", rows, 1, 8);
    requireWithin("columns", columns, 1, 16);
    requireWithin("dabs", dabs, 0, 12);
    requireWithin("edge", edgeMm, 0, 20);
    requireWithin("gap", gapMm, 0, 20);
    requireWithin("channel", channelMm, 0, 60);
    requireWithin("well width", wellWidthMm, 2, 60);
    requireWithin("well height", wellHeightMm, 2, 60);
    requireWithin("dab side", dabMm, 2, 60);
    if (kind == WellKind.DAB) {
      throw new IllegalArgumentException("the rows of a box plan hold pans or half pans");
    }
  }

  /** Half pans in rows and columns, with so many dab places. */
  public static BoxPlan ofHalfPans(int rows, int columns, int dabs) {
    return of(WellKind.HALF_PAN, rows, columns, dabs);
  }

  /**
   * Pans of one kind in rows and columns, with so many dab places.
   *
   * <p>A whole pan takes the place of two half pans side by side (common practice).
   *
   * @param kind pans or half pans
   */
  public static BoxPlan of(WellKind kind, int rows, int columns, int dabs) {
    boolean whole = kind == WellKind.PAN;
    String name =
        rows * columns
            + (whole ? " pans" : " half pans")
            + (dabs == 0 ? "" : dabs == 1 ? ", 1 dab" : ", " + dabs + " dabs");
    return new BoxPlan(
        name,
        kind,
        rows,
        columns,
        whole ? 2 * HALF_PAN_WIDTH_MM : HALF_PAN_WIDTH_MM,
        HALF_PAN_HEIGHT_MM,
        EDGE_MM,
        GAP_MM,
        CHANNEL_MM,
        dabs,
        DAB_MM);
  }

  /** The inner width, wide enough for the pans and for the dabs. */
  public double widthMm() {
    double pans = columns * wellWidthMm + (columns - 1) * gapMm;
    double dabPlaces = dabs * dabMm + Math.max(0, dabs - 1) * gapMm;
    return Math.max(10, Math.max(pans, dabPlaces) + 2 * edgeMm);
  }

  /** The inner extent from the hinge to the front. */
  public double heightMm() {
    double lowest = 0;
    for (Well well : wells()) {
      lowest = Math.max(lowest, well.yMm() + well.heightMm());
    }
    return Math.max(10, lowest + edgeMm);
  }

  /** The box, with a lid of its own size. */
  public Box box(String id) {
    return new Box(id, name, widthMm(), heightMm(), widthMm(), heightMm(), wells());
  }

  /** Wells numbered row by row from the hinge, then the dab places from left to right. */
  private List<Well> wells() {
    List<Well> wells = new ArrayList<>();
    double left = (widthMm() - columns * wellWidthMm - (columns - 1) * gapMm) / 2;
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        String number = Integer.toString(wells.size() + 1);
        wells.add(
            new Well(
                "well-" + number,
                number,
                kind,
                left + column * (wellWidthMm + gapMm),
                rowMm(row),
                wellWidthMm,
                wellHeightMm));
      }
    }
    wells.addAll(dabPlaces());
    return wells;
  }

  private List<Well> dabPlaces() {
    List<Well> places = new ArrayList<>();
    double free = (widthMm() - dabs * dabMm) / (dabs + 1);
    double y = rowMm(0) + wellHeightMm + (channel() - dabMm) / 2;
    for (int i = 0; i < dabs; i++) {
      places.add(
          new Well(
              "dab-" + (i + 1),
              "dab " + (i + 1),
              WellKind.DAB,
              free + i * (dabMm + free),
              y,
              dabMm,
              dabMm));
    }
    return places;
  }

  private double rowMm(int row) {
    return edgeMm + row * (wellHeightMm + gapMm) + (row > 0 ? channel() - gapMm : 0);
  }

  /** The channel after the first row, never too narrow for the dabs. */
  private double channel() {
    return dabs == 0 ? channelMm : Math.max(channelMm, dabMm + 2 * gapMm);
  }

  private static List<Box> usual() {
    List<Box> boxes = new ArrayList<>();
    int[][] rowsColumnsDabs = {
      {2, 3, 2}, {2, 5, 3}, {2, 6, 4}, {2, 7, 4}, {2, 9, 4}, {2, 12, 4},
    };
    for (int[] size : rowsColumnsDabs) {
      BoxPlan plain = ofHalfPans(size[0], size[1], 0);
      BoxPlan withDabs = ofHalfPans(size[0], size[1], size[2]);
      boxes.add(plain.box("box-" + plain.columns * plain.rows));
      boxes.add(withDabs.box("box-" + withDabs.columns * withDabs.rows + "-dabs"));
    }
    return List.copyOf(boxes);
  }

  private static void requireWithin(String what, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          "%s of a box plan must lie in %s..%s, was %s".formatted(what, low, high, value));
    }
  }
}
