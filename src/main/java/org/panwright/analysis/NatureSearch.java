package org.panwright.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.panwright.paint.HueFamily;
import org.panwright.paint.Paint;

/** Finds the paints of a lineup that change the nature of mixes. */
final class NatureSearch {
  private static final int MANY = 3;

  private NatureSearch() {}

  static List<Finding> of(Case open) {
    List<Finding> found = new ArrayList<>();
    add(found, open, Nature.Kind.WHITE, paint -> holdsWhite(open, paint));
    add(found, open, Nature.Kind.MANY_PIGMENTS, paint -> paint.pigments().size() >= MANY);
    return found;
  }

  private static boolean holdsWhite(Case open, Paint paint) {
    return paint.pigments().stream()
        .flatMap(part -> open.library().find(part.pigment()).stream())
        .anyMatch(pigment -> pigment.family() == HueFamily.WHITE);
  }

  private static void add(
      List<Finding> found, Case open, Nature.Kind kind, Predicate<Paint> changes) {
    List<String> ids = open.paints().stream().filter(changes).map(Paint::id).toList();
    if (!ids.isEmpty()) {
      found.add(new Nature(kind, ids));
    }
  }
}
