package org.panwright.kit;

/**
 * A part of a box that is no well.
 *
 * @param id unique in its box, never changed
 * @param inLid whether it is in the lid; otherwise it is in the tray
 * @param xMm left edge, from the inner left wall of tray or lid, 0..1000
 * @param yMm upper edge, from the inner wall at the hinge; in the open lid from its far wall,
 *     0..1000
 * @param widthMm 1..1000
 * @param heightMm extent away from the hinge, 1..1000
 * @param thicknessMm how far it raises what stands on it, 0..20
 */
public record Fixture(
    String id,
    FixtureKind kind,
    boolean inLid,
    double xMm,
    double yMm,
    double widthMm,
    double heightMm,
    double thicknessMm) {
  private static final double TOUCHING_MM = 0.01;

  public Fixture {
    if (id.isBlank() || kind == null) {
      throw new IllegalArgumentException("a part of a box needs an id and a kind");
    }
    if (!(xMm >= 0 && yMm >= 0 && xMm <= 1000 && yMm <= 1000)) {
      throw new IllegalArgumentException(
          "a part of a box lies at 0..1000 mm, was %s, %s".formatted(xMm, yMm));
    }
    if (!(widthMm >= 1 && widthMm <= 1000 && heightMm >= 1 && heightMm <= 1000)) {
      throw new IllegalArgumentException(
          "a part of a box measures 1..1000 mm, was %s x %s".formatted(widthMm, heightMm));
    }
    if (!(thicknessMm >= 0 && thicknessMm <= 20)) {
      throw new IllegalArgumentException("a part of a box is 0..20 mm thick, was " + thicknessMm);
    }
  }

  /** Whether a well may not stand here: on a mixing area none, on a dab strip only dabs. */
  public boolean bars(Well well) {
    boolean closed =
        kind == FixtureKind.MIXING_AREA
            || (kind == FixtureKind.DAB_STRIP && well.kind() != WellKind.DAB);
    return closed && isUnder(well);
  }

  /** Whether part of a well lies over it; never so in the lid. */
  public boolean isUnder(Well well) {
    return !inLid
        && well.xMm() < xMm + widthMm - TOUCHING_MM
        && xMm < well.xMm() + well.widthMm() - TOUCHING_MM
        && well.yMm() < yMm + heightMm - TOUCHING_MM
        && yMm < well.yMm() + well.heightMm() - TOUCHING_MM;
  }

  /** Whether it lies whole in an area of this size. */
  public boolean liesWithin(double areaWidthMm, double areaHeightMm) {
    return xMm + widthMm <= areaWidthMm + TOUCHING_MM
        && yMm + heightMm <= areaHeightMm + TOUCHING_MM;
  }
}
