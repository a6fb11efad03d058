package org.panwright.mixing;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.paint.DryingShift;
import org.panwright.paint.Shelf;

/**
 * The colour of a freshly wet coat: by the rule of {@link Surface#WET}, or better by what the
 * painter read of the paints in it wet and dry.
 *
 * <pre>
 * wet = dry + Σ vᵢ · shiftᵢ
 * shiftᵢ = read wet − dry, times min(1, (L paper − L dry) / (L paper − L of the places read))
 *        = by the rule, where a paint was never read wet
 * </pre>
 *
 * <p>The shift fades with the coat: bare paper has none of a paint's own. Half of a shift of (−6,
 * 2, −4) read at L* 40 on paper of L* 95 is left at L* 67.5.
 */
public final class WetLook {
  private final Mixer mixer;
  private final Function<String, Optional<DryingShift>> shifts;

  /**
   * @param shifts what was read of a paint, by its id
   */
  public WetLook(Mixer mixer, Function<String, Optional<DryingShift>> shifts) {
    this.mixer = mixer;
    this.shifts = shifts;
  }

  /** The wet look of the paints of a shelf: as the painter read them, else by the rule. */
  public static WetLook of(Mixer mixer, Shelf shelf) {
    return new WetLook(
        mixer, id -> shelf.find(id).flatMap(paint -> paint.swatchbook().dryingShift()));
  }

  /** CIELAB of the wet coat of a recipe at a load, under D65. */
  public Lab lab(Recipe recipe, double load) {
    Lab dry = mixer.lab(recipe, load);
    Lab rule = Light.D65.lab(mixer.wet(recipe, load));
    double paper = Light.D65.lab(mixer.table().paper().reflectance()).l();
    List<Portion> portions = recipe.portions();
    double[] volumes = mixer.volumes(recipe);
    double l = 0;
    double a = 0;
    double b = 0;
    for (int i = 0; i < volumes.length; i++) {
      Lab wet =
          shifts
              .apply(portions.get(i).paintId())
              .map(shift -> shift.wet(dry, share(shift, dry, paper)))
              .orElse(rule);
      l += volumes[i] * wet.l();
      a += volumes[i] * wet.a();
      b += volumes[i] * wet.b();
    }
    return new Lab(l, a, b);
  }

  private static double share(DryingShift shift, Lab dry, double paper) {
    double read = Math.max(1, paper - shift.dryLightness());
    return Math.max(0, Math.min(1, (paper - dry.l()) / read));
  }
}
