package org.panwright.analysis.balance;

import java.util.HashMap;
import java.util.Map;
import org.panwright.colour.Difference;
import org.panwright.colour.Hue;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.colour.Oklch;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

/** How the paints of a table look alone, each mixed once when first asked for; one thread. */
public final class Looks {
  /** A paint whose milk wash lies farther off is of another hue, OKLCh degrees. */
  private static final double SAME_HUE_DEG = 30;

  private final OpticsTable table;
  private final WashStrengths washes;
  private final Map<String, Lab> masstones = new HashMap<>();
  private final Map<String, Lab> tints = new HashMap<>();
  private final Map<String, Oklch> bodies = new HashMap<>();

  /** The looks of the paints of a table; {@code washes} says how strong a milk wash is. */
  public Looks(OpticsTable table, WashStrengths washes) {
    this.table = table;
    this.washes = washes;
  }

  /** The milk wash of a paint: what its hue is judged by. */
  public Oklch body(String paintId) {
    return bodies.computeIfAbsent(
        paintId,
        id -> {
          Lab lab = new Mixer(table).lab(Recipe.of(id), washes.load(Wash.MILK));
          return Oklab.ofD65(lab.toXyz(Light.D65.white())).toOklch();
        });
  }

  /** Whether two paints are of nearly the same hue, or both neutral. */
  public boolean sameHue(String first, String second) {
    Oklch one = body(first);
    Oklch other = body(second);
    return (one.isNeutral() || other.isNeutral())
        ? one.isNeutral() && other.isNeutral()
        : Hue.between(one.hueDeg(), other.hueDeg()) <= SAME_HUE_DEG;
  }

  /** How far two paints are from each other: mean ΔE00 of masstone and of tint. */
  public double apart(String first, String second) {
    return (Difference.ciede2000(masstone(first), masstone(second))
            + Difference.ciede2000(tint(first), tint(second)))
        / 2;
  }

  /** The dry masstone coat of a paint. */
  public Lab masstone(String paintId) {
    return masstones.computeIfAbsent(paintId, id -> new Mixer(table).lab(Recipe.of(id), 1));
  }

  /** The dry coat of one strength part of a paint. */
  public Lab tint(String paintId) {
    return tints.computeIfAbsent(
        paintId, id -> new Mixer(table).lab(Recipe.of(id), table.tintLoad(table.indexOf(id))));
  }
}
