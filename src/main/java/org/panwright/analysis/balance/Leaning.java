package org.panwright.analysis.balance;

import java.util.Optional;
import org.panwright.colour.Hue;
import org.panwright.paint.HueFamily;

/**
 * Which neighbour a paint's hue leans to within its family: what painters mean by a warm or a cool
 * red, said by name.
 *
 * <p>Bounds in OKLCh degrees of a milk wash, ours, laid so that the pigments painters call leaning
 * (common practice: PB29 to violet, PB15:3 to green, PY3 to green, PY83 to orange, PV19 rose to
 * neither) fall on their side. Earths, browns and neutrals have none.
 */
enum Leaning {
  YELLOW(HueFamily.YELLOW, HueFamily.ORANGE, 97, 106, HueFamily.GREEN),
  ORANGE(HueFamily.ORANGE, HueFamily.RED, 48, 60, HueFamily.YELLOW),
  RED(HueFamily.RED, HueFamily.ROSE, 15, 30, HueFamily.ORANGE),
  ROSE(HueFamily.ROSE, HueFamily.VIOLET, 342, 352, HueFamily.RED),
  VIOLET(HueFamily.VIOLET, HueFamily.BLUE, 300, 316, HueFamily.ROSE),
  BLUE(HueFamily.BLUE, HueFamily.GREEN, 240, 250, HueFamily.VIOLET),
  TURQUOISE(HueFamily.TURQUOISE, HueFamily.GREEN, 200, 214, HueFamily.BLUE),
  GREEN(HueFamily.GREEN, HueFamily.YELLOW, 150, 178, HueFamily.BLUE);

  private final HueFamily family;
  private final HueFamily below;
  private final double fromDeg;
  private final double toDeg;
  private final HueFamily above;

  Leaning(HueFamily family, HueFamily below, double fromDeg, double toDeg, HueFamily above) {
    this.family = family;
    this.below = below;
    this.fromDeg = fromDeg;
    this.toDeg = toDeg;
    this.above = above;
  }

  /** The family a paint leans to; empty within its own middle or where leaning means nothing. */
  static Optional<HueFamily> of(HueFamily family, double hueDeg) {
    for (Leaning leaning : values()) {
      if (leaning.family == family) {
        return leaning.of(hueDeg);
      }
    }
    return Optional.empty();
  }

  private Optional<HueFamily> of(double hueDeg) {
    double middle = (fromDeg + toDeg) / 2;
    double half = (toDeg - fromDeg) / 2;
    if (Hue.between(hueDeg, middle) <= half) {
      return Optional.empty();
    }
    return Optional.of(Hue.arc(middle, hueDeg) < 180 ? above : below);
  }
}
