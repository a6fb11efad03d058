package org.panwright.analysis.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.analysis.finding.Fading;
import org.panwright.analysis.finding.Finding;
import org.panwright.kit.Edit;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Paint;
import org.panwright.paint.Pigment;
import org.panwright.paint.PigmentLibrary;

/** Finds the paints of a lineup that fade. */
public final class FadingSearch {
  /** A replacement farther off than this is another colour. */
  private static final double NEAR = 10;

  private FadingSearch() {}

  static List<Finding> of(Case open) {
    List<Finding> found = new ArrayList<>();
    for (Paint paint : open.paints()) {
      if (fades(paint, open.library())) {
        found.add(fading(open, paint));
      }
    }
    return found;
  }

  /** The ids of the paints that fade. */
  public static List<String> fading(List<Paint> paints, PigmentLibrary library) {
    return paints.stream().filter(paint -> fades(paint, library)).map(Paint::id).toList();
  }

  private static boolean fades(Paint paint, PigmentLibrary library) {
    return paint.handling().lightfastness().isPoor() || fugitive(paint, library);
  }

  /** A fugitive pigment counts unless the tube itself names a category of I or II. */
  private static boolean fugitive(Paint paint, PigmentLibrary library) {
    Lightfastness stated = paint.handling().lightfastness();
    boolean vouchedFor = stated == Lightfastness.I || stated == Lightfastness.II;
    return !vouchedFor
        && paint.pigments().stream()
            .anyMatch(part -> library.find(part.pigment()).map(Pigment::fugitive).orElse(false));
  }

  private static Fading fading(Case open, Paint paint) {
    String nearest = null;
    double least = NEAR;
    for (Paint other : open.atHand()) {
      double away = open.apart(paint.id(), other.id());
      if (away < least && !fades(other, open.library())) {
        least = away;
        nearest = other.id();
      }
    }
    Optional<String> instead = Optional.ofNullable(nearest);
    Optional<Edit> cure = instead.map(id -> open.seats().placeInWellOf(paint.id(), id));
    return new Fading(
        paint.id(),
        paint.handling().lightfastness(),
        fugitive(paint, open.library()),
        instead,
        instead.isPresent() ? least : 0,
        cure);
  }
}
