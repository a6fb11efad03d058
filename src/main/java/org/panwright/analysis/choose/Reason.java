package org.panwright.analysis.choose;

import java.util.Optional;
import org.panwright.kit.Aim;

/**
 * Why a paint is in a proposal.
 *
 * @param paintId the paint
 * @param asked whether the painter said that it must be in
 * @param aim what would suffer most without it
 * @param lost the worth lost if it leaves and nothing comes, 0..1
 * @param arc where the ring would fall back most without it, if it would
 * @param instead the paint that would replace it best, if any may
 * @param insteadLost the worth lost by that exchange; below 0 never where the proposal is the best
 */
public record Reason(
    String paintId,
    boolean asked,
    Aim aim,
    double lost,
    Optional<Arc> arc,
    Optional<String> instead,
    double insteadLost) {
  /** A stretch of hue, OKLCh degrees going up. */
  public record Arc(double fromDeg, double toDeg) {}
}
