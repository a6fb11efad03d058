package org.panwright.analysis.finding;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.panwright.kit.Edit;
import org.panwright.mixing.Recipe;

/**
 * The mix of a lineup's other paints that comes nearest to one of them.
 *
 * @param paintId the paint stood in for
 * @param recipe the mix, in whole strength parts of two or three paints
 * @param masstone ΔE00 between the masstone coats
 * @param tint ΔE00 between the paint's coat of one strength part and the mix thinned to fit it best
 * @param doubt how far the differences can be trusted
 * @param handy whether the paint is an earth or a tube of several pigments, which painters keep to
 *     save mixing
 * @param cure the edit that empties the well of the paint
 */
public record StandIn(
    String paintId,
    Recipe recipe,
    double masstone,
    double tint,
    Doubt doubt,
    boolean handy,
    Optional<Edit> cure)
    implements Finding {
  /**
   * Below this in masstone and in tint the mix is hard to tell apart in a painted wash: about what
   * one painter's own coats differ by (common practice).
   */
  public static final double CLOSE_BELOW = 3;

  /** The greater of the two differences. */
  public double worst() {
    return Math.max(masstone, tint);
  }

  /** Whether the mix is hard to tell apart from the paint. */
  public boolean isClose() {
    return worst() < CLOSE_BELOW;
  }

  @Override
  public FindingKind kind() {
    return FindingKind.STAND_IN;
  }

  @Override
  public String about() {
    return paintId;
  }

  @Override
  public List<String> paintIds() {
    return Stream.concat(
            Stream.of(paintId), recipe.portions().stream().map(portion -> portion.paintId()))
        .toList();
  }

  /** 0.24 for no difference, falling to 0.12 at the bound of close; half of it for handy paints. */
  @Override
  public double severity() {
    return Math.max(0, 0.24 - 0.12 * worst() / CLOSE_BELOW) * (handy ? 0.5 : 1);
  }
}
