package org.panwright.analysis;

import java.util.Optional;
import org.panwright.kit.Edit;
import org.panwright.mixing.Recipe;

/**
 * The mix of a lineup's other paints that comes nearest to one of them.
 *
 * @param paintId the paint stood in for
 * @param recipe the mix, in whole strength parts of two or three paints
 * @param masstone ΔE00 between the masstone coats
 * @param tint ΔE00 between the paint's coat of one strength part and the mix thinned to fit it best
 * @param cure the edit that empties the well of the paint
 */
public record StandIn(
    String paintId, Recipe recipe, double masstone, double tint, Optional<Edit> cure)
    implements Finding {
  /** Below this in masstone and in tint the mix is the same colour to the eye. */
  public static final double SAME_BELOW = 3;

  /** Below this it is near. */
  public static final double NEAR_BELOW = 6;

  /** The greater of the two differences. */
  public double worst() {
    return Math.max(masstone, tint);
  }

  /** Whether the mix is the same colour to the eye. */
  public boolean isSame() {
    return worst() < SAME_BELOW;
  }

  /** Whether the mix is near or better. */
  public boolean isNear() {
    return worst() < NEAR_BELOW;
  }

  /** 0.24 for no difference, falling to 0.12 at the bound of the same colour. */
  @Override
  public double severity() {
    return Math.max(0, 0.24 - 0.12 * worst() / SAME_BELOW);
  }
}
