package org.panwright.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.kit.Edit;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Paint;
import org.panwright.paint.Pigment;

/** Finds the paints of a lineup that fade. */
final class FadingSearch {
  /** A replacement farther off than this is another colour. */
  private static final double NEAR = 10;

  private FadingSearch() {}

  static List<Finding> of(Case open) {
    List<Finding> found = new ArrayList<>();
    for (Paint paint : open.paints()) {
      if (fades(open, paint)) {
        found.add(fading(open, paint));
      }
    }
    return found;
  }

  private static boolean fades(Case open, Paint paint) {
    return paint.handling().lightfastness().isPoor() || fugitive(open, paint);
  }

  /** A fugitive pigment counts unless the tube itself names a category of I or II. */
  private static boolean fugitive(Case open, Paint paint) {
    Lightfastness stated = paint.handling().lightfastness();
    boolean vouchedFor = stated == Lightfastness.I || stated == Lightfastness.II;
    return !vouchedFor
        && paint.pigments().stream()
            .anyMatch(
                part -> open.library().find(part.pigment()).map(Pigment::fugitive).orElse(false));
  }

  private static Fading fading(Case open, Paint paint) {
    String nearest = null;
    double least = NEAR;
    for (Paint other : open.atHand()) {
      double away = open.apart(paint.id(), other.id());
      if (away < least && !fades(open, other)) {
        least = away;
        nearest = other.id();
      }
    }
    Optional<String> instead = Optional.ofNullable(nearest);
    Optional<Edit> cure = instead.map(id -> open.placeInWellOf(paint.id(), id));
    return new Fading(
        paint.id(),
        paint.handling().lightfastness(),
        fugitive(open, paint),
        instead,
        instead.isPresent() ? least : 0,
        cure);
  }
}
