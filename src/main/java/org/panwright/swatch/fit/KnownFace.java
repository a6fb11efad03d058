package org.panwright.swatch.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.panwright.colour.Light;
import org.panwright.mixing.Surface;
import org.panwright.paint.Optics;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.coat.Swatch;

/**
 * The face of the coats of a set, chosen before its paints are fitted: that of a bare ground, and
 * how the gum of each paint smooths it.
 *
 * <pre>k1(coat) = min(k1 bare, 0.95 · darkest of the ground) · exp(−Σ glossᵢ · loadᵢ)</pre>
 *
 * @param bare the face before any paint
 * @param gloss by paint, per unit of the swatches' loads; a paint without an entry has none
 */
public record KnownFace(Surface bare, Map<String, Double> gloss) {
  /** The engine's dry face, as matt under every coat as on paper. */
  static final KnownFace MATT = new KnownFace(Surface.DRY, Map.of());

  /** At this gloss a full-strength coat throws back less than a fiftieth of what paper does. */
  private static final double MOST_GLOSS = 4;

  /**
   * No reading counts as darker: a thousandth is what an instrument or a picture takes for black.
   */
  private static final double NOISE = 0.001;

  public KnownFace {
    gloss = Map.copyOf(gloss);
  }

  /**
   * The engine's dry face with the least gloss at which no coat's face throws back more than
   * {@value Surface#BELOW_DARKEST} of the darkest value read of the coat.
   *
   * <pre>
   * gloss = max over coats of (ln(k1 ground / (0.95 · darkest)) − Σ known glossⱼ loadⱼ) / Σ sought loads
   * </pre>
   *
   * <p>One hand lays all the paints that are sought, so they share it. Example: full-strength coats
   * whose darkest band reads 0.012 give ln(0.03 / 0.0114) = 0.97.
   *
   * @param swatches none that {@link #isTooDark}
   * @param sought the paints whose optics are looked for
   * @param known the optics of others that lie in the coats; an absent one is matt
   */
  public static KnownFace of(List<Swatch> swatches, Set<String> sought, Map<String, Optics> known) {
    Map<String, Double> gloss = new LinkedHashMap<>();
    known.forEach((paint, optics) -> gloss.put(paint, optics.gloss()));
    double least = 0;
    for (Swatch swatch : swatches) {
      least = Math.max(least, needed(swatch, sought, gloss));
    }
    double shared = Math.min(MOST_GLOSS, least);
    sought.forEach(paint -> gloss.put(paint, shared));
    return new KnownFace(Surface.DRY, gloss);
  }

  /**
   * Whether a coat is darker than any dry one: all of it below a thousandth of white, or below what
   * the face of the glossiest paints throws back.
   */
  public static boolean isTooDark(Swatch swatch, Set<String> sought) {
    return Light.D65.xyz(swatch.reading().reflectance()).y() < NOISE * Light.D65.white().y()
        || needed(swatch, sought, Map.of()) > MOST_GLOSS;
  }

  /** The gloss the sought paints must share for one coat; 0 or below where none is needed. */
  private static double needed(Swatch swatch, Set<String> sought, Map<String, Double> known) {
    double toHide =
        Math.log(
            Surface.DRY.below(swatch.ground().darkest()).seen()
                / (Surface.BELOW_DARKEST * darkest(swatch)));
    double soughtLoad = 0;
    for (PaintLoad share : swatch.paints()) {
      if (sought.contains(share.paint())) {
        soughtLoad += share.load();
      } else {
        toHide -= known.getOrDefault(share.paint(), 0.0) * share.load();
      }
    }
    return soughtLoad == 0 ? 0 : toHide / soughtLoad;
  }

  /** Whether the face of a coat throws back no more than the darkest value read of it. */
  public boolean allows(Swatch swatch) {
    double smoothing =
        swatch.paints().stream().mapToDouble(share -> gloss(share.paint()) * share.load()).sum();
    Surface face = bare.below(swatch.ground().darkest()).smoothed(smoothing);
    return face.seen() <= darkest(swatch);
  }

  private static double darkest(Swatch swatch) {
    return Math.max(NOISE, swatch.reading().darkest());
  }

  /** That of a paint; 0 if it has none. */
  double gloss(String paint) {
    return gloss.getOrDefault(paint, 0.0);
  }
}
