package org.panwright.app.recipes;

import java.util.List;
import java.util.Optional;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.colour.GamutFit;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklch;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Paint;
import org.panwright.paint.Wash;
import org.panwright.words.RecipeViewWords;

/** Picks colours to look for recipes for, from wherever they are seen. */
public final class Wanted {
  private static final double STEP = 0.02;

  private Wanted() {}

  /** A colour of any origin. */
  public static Selection.OfColour colour(Lab lab, String name) {
    return new Selection.OfColour(lab, name, Optional.empty(), List.of());
  }

  /** A colour to start from. */
  public static Selection.OfColour middleGrey() {
    return colour(new Lab(50, 0, 0), RecipeViewWords.GREY);
  }

  /** Picks the cream wash of a paint, to be mixed from the others of the box. */
  public static void pickPaint(Session session, String paintId) {
    session
        .judgementProperty()
        .get()
        .ifPresent(
            judgement -> {
              Optional<Paint> paint = judgement.kit().shelf().find(paintId);
              double load = judgement.kit().washes().load(Wash.CREAM);
              paint.ifPresent(
                  p ->
                      session
                          .selectionProperty()
                          .set(
                              new Selection.OfColour(
                                  new Mixer(judgement.table()).lab(Recipe.of(paintId), load),
                                  RecipeViewWords.creamOf(p.name()),
                                  Optional.of(paintId),
                                  List.of())));
            });
  }

  /**
   * A place of the hue circle, at the middle of the lightnesses at which the screen can show it.
   */
  public static Selection.OfColour hue(double chroma, double hueDeg) {
    double sum = 0;
    int shown = 0;
    for (double l = STEP; l < 1; l += STEP) {
      if (GamutFit.of(new Oklch(l, chroma, hueDeg)).exact()) {
        sum += l;
        shown++;
      }
    }
    Oklch colour = new Oklch(shown == 0 ? 0.65 : sum / shown, chroma, hueDeg);
    Lab lab = Lab.of(colour.toOklab().toXyzD65(), Light.D65.white());
    return colour(lab, RecipeViewWords.hue(colour));
  }
}
