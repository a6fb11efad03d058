package org.panwright.analysis.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.Nature;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;
import org.panwright.mixing.Film;
import org.panwright.paint.HueFamily;
import org.panwright.paint.Paint;

/** Finds the paints of a lineup that change the nature of mixes. */
public final class NatureSearch {
  private static final int MANY = 3;

  private NatureSearch() {}

  static List<Finding> of(Case open) {
    List<Finding> found = new ArrayList<>();
    for (Nature.Effect effect : Nature.Effect.values()) {
      List<String> ids =
          open.paints().stream().filter(p -> has(effect, open, p)).map(Paint::id).toList();
      if (!ids.isEmpty()) {
        found.add(new Nature(effect, ids, Optional.empty()));
      }
    }
    return found;
  }

  /** Whether a paint does that to mixes. */
  public static boolean has(Nature.Effect effect, Case open, Paint paint) {
    return switch (effect) {
      case WHITE -> holdsWhite(open, paint);
      case HIDING_LIGHT -> hidesLight(open, paint);
      case MANY_PIGMENTS -> paint.pigments().size() >= MANY;
    };
  }

  private static boolean holdsWhite(Case open, Paint paint) {
    return paint.pigments().stream()
        .flatMap(part -> open.library().find(part.pigment()).stream())
        .anyMatch(pigment -> pigment.family() == HueFamily.WHITE);
  }

  /** Over black, under the surface: what the coat itself gives back. */
  private static boolean hidesLight(Case open, Paint paint) {
    Film film = Film.of(open.table().optics(open.table().indexOf(paint.id())), 1);
    double overBlack = Light.D65.xyz(film.over(Spectrum.flat(0))).y();
    double overPaper = Light.D65.xyz(film.over(open.kit().paper())).y();
    return !holdsWhite(open, paint)
        && overBlack >= Nature.LIGHT_FROM
        && overBlack >= Nature.HIDING_FROM * overPaper;
  }
}
