package org.panwright.kit;

import java.time.LocalDate;

/**
 * What really is in a well of a box, as against what a lineup plans for it; or in a pan cut for
 * that well that lies beside the box.
 *
 * @param boxId the box
 * @param wellId the well of that box
 * @param paintId the paint of the shelf
 * @param filledOn the day the last layer went in
 * @param filledMl dry paint in it on that day, above 0 up to 100
 * @param leftMl dry paint in it now, 0..{@code filledMl}
 */
public record FilledWell(
    String boxId,
    String wellId,
    String paintId,
    LocalDate filledOn,
    double filledMl,
    double leftMl) {
  public FilledWell {
    if (boxId.isBlank() || wellId.isBlank() || paintId.isBlank()) {
      throw new IllegalArgumentException("a filled well names a box, a well and a paint");
    }
    DateSpan.require("the day a well was filled", filledOn);
    if (!(filledMl > 0 && filledMl <= 100)) {
      throw new IllegalArgumentException(
          "a well is filled with above 0 up to 100 ml, was " + filledMl);
    }
    if (!(leftMl >= 0 && leftMl <= filledMl)) {
      throw new IllegalArgumentException(
          "what is left in a well lies in 0..%s ml, was %s".formatted(filledMl, leftMl));
    }
  }

  /** Whether it tells of this well. */
  public boolean isIn(String box, String well) {
    return boxId.equals(box) && wellId.equals(well);
  }

  /** Whether it is a pan of this paint for this well. */
  public boolean isIn(String box, String well, String paint) {
    return isIn(box, well) && paintId.equals(paint);
  }

  /** The well after {@code ml} of dry paint was used up; never below nothing. */
  public FilledWell worn(double ml) {
    return new FilledWell(boxId, wellId, paintId, filledOn, filledMl, Math.max(0, leftMl - ml));
  }

  /** What is left as a share of what went in, 0..1. */
  public double share() {
    return leftMl / filledMl;
  }
}
