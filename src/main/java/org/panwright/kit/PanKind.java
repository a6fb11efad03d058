package org.panwright.kit;

import java.util.List;

/**
 * A kind of pan with its outer and inner sizes and what it holds to the brim.
 *
 * <p>There is no standard: makes differ by 1–2 mm (common practice), so every figure can be
 * changed.
 *
 * @param id unique in the kit, never changed
 * @param name not blank
 * @param outer from wall to wall at the rim; the height from the base to the rim
 * @param inner at the rim; the height from the floor of the paint to the rim; less than {@code
 *     outer}
 * @param taperMm by how much the floor is shorter and narrower than the rim, 0..10
 * @param brimMl what it holds to the brim, above 0 up to 50
 */
public record PanKind(
    String id, String name, Extent outer, Extent inner, double taperMm, double brimMl) {
  /** The id of the kind a well made for a pan takes if it names no other. */
  public static final String FULL_ID = "pan";

  /** The id of the kind a well made for a half pan takes if it names no other. */
  public static final String HALF_ID = "half-pan";

  /**
   * Usual pans (common practice; makes differ): full, half, and both things called a quarter pan.
   */
  public static final List<PanKind> USUAL =
      List.of(
          new PanKind(
              FULL_ID, "full pan", new Extent(30, 19, 10.5), new Extent(27.5, 17, 8.5), 1.5, 4),
          new PanKind(
              HALF_ID, "half pan", new Extent(19, 15.5, 10.5), new Extent(17, 13.5, 8.5), 1.5, 2),
          new PanKind(
              "quarter-low",
              "quarter pan, half as high",
              new Extent(19, 15.5, 5.5),
              new Extent(17, 13.5, 4),
              1.5,
              0.9),
          new PanKind(
              "quarter-small",
              "quarter pan, half as long",
              new Extent(19, 8, 10.5),
              new Extent(17, 6.5, 8.5),
              1.5,
              0.85));

  public PanKind {
    if (id.isBlank() || name.isBlank()) {
      throw new IllegalArgumentException("a kind of pan needs an id and a name");
    }
    if (!inner.fitsInside(outer)) {
      throw new IllegalArgumentException(
          "the inside of a %s must be smaller than its outside, was %s in %s"
              .formatted(name, inner, outer));
    }
    if (!(taperMm >= 0 && taperMm <= 10 && taperMm < inner.widthMm())) {
      throw new IllegalArgumentException(
          "taper must lie in 0..10 mm and below the inner width, was " + taperMm);
    }
    if (!(brimMl > 0 && brimMl <= 50)) {
      throw new IllegalArgumentException("a pan holds above 0 up to 50 ml, was " + brimMl);
    }
  }

  /**
   * Length, width and height in millimetres.
   *
   * @param lengthMm the longer side, 2..200
   * @param widthMm the shorter side, 2..200
   * @param heightMm 1..100
   */
  public record Extent(double lengthMm, double widthMm, double heightMm) {
    public Extent {
      if (!(lengthMm >= 2 && lengthMm <= 200 && widthMm >= 2 && widthMm <= 200)) {
        throw new IllegalArgumentException(
            "a pan measures 2..200 mm, was %s x %s".formatted(lengthMm, widthMm));
      }
      if (widthMm > lengthMm) {
        throw new IllegalArgumentException(
            "the length of a pan is its longer side, was %s x %s".formatted(lengthMm, widthMm));
      }
      if (!(heightMm >= 1 && heightMm <= 100)) {
        throw new IllegalArgumentException("a pan is 1..100 mm high, was " + heightMm);
      }
    }

    boolean fitsInside(Extent other) {
      return lengthMm < other.lengthMm && widthMm < other.widthMm && heightMm < other.heightMm;
    }
  }

  /**
   * What the pan holds up to a share of its inner height, in ml.
   *
   * <p>The inside is a trough whose sides grow evenly from the floor to the rim, so up to share z
   *
   * <pre>
   * V(z) ∝ ∫₀ᶻ (l + t·u)(w + t·u) du = l·w·z + (l + w)·t·z²/2 + t²·z³/3
   * </pre>
   *
   * with l, w the floor's sides and t the taper; it is scaled so that V(1) is {@link #brimMl}. A
   * pan without taper holds half of it at half height.
   *
   * @param height 0..1
   */
  public double ml(double height) {
    if (!(height >= 0 && height <= 1)) {
      throw new IllegalArgumentException("a share of the height lies in 0..1, was " + height);
    }
    return brimMl * trough(height) / trough(1);
  }

  /** The same kind under another id. */
  PanKind withId(String changed) {
    return new PanKind(changed, name, outer, inner, taperMm, brimMl);
  }

  /** What the inner sizes alone give to the brim, in ml; to be set against {@link #brimMl}. */
  public double measuredMl() {
    return trough(1) * inner.heightMm() / 1000;
  }

  private double trough(double z) {
    double l = inner.lengthMm() - taperMm;
    double w = inner.widthMm() - taperMm;
    return l * w * z + (l + w) * taperMm * z * z / 2 + taperMm * taperMm * z * z * z / 3;
  }
}
