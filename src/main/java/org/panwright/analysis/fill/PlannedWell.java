package org.panwright.analysis.fill;

import java.util.Optional;
import org.panwright.kit.Fill;

/**
 * One well of a fill plan.
 *
 * @param lineupId the lineup that asks for it
 * @param boxId its box
 * @param wellId the well
 * @param paintId the paint that goes in
 * @param fill how far the lineup wants it filled
 * @param panId the kind of pan in it; empty for a bare dab place
 * @param targetMl dry paint it is to hold
 * @param heldMl dry paint of this kind it holds already
 * @param otherPaintId the other paint that sits in it now, so that the pan has to be exchanged
 * @param needMl wet paint that brings it from {@code heldMl} to {@code targetMl}
 * @param givenMl wet paint the tubes have for it, 0..{@code needMl}
 * @param layers the layers of {@code givenMl}; none if nothing is given
 * @param spare whether an earlier lineup of the plan fills the same well with another paint, so
 *     that this needs a second pan
 * @param beside whether what it holds is in a pan that lies beside the box
 */
public record PlannedWell(
    String lineupId,
    String boxId,
    String wellId,
    String paintId,
    Fill fill,
    Optional<String> panId,
    double targetMl,
    double heldMl,
    Optional<String> otherPaintId,
    double needMl,
    double givenMl,
    FillLayers layers,
    boolean spare,
    boolean beside) {
  /**
   * A drop of wet paint, in ml (20 drops to the millilitre, common practice): a well that lacks
   * less is not topped up, and no tube is bought for less.
   */
  public static final double LEAST_ML = 0.05;

  /** Dry paint in it when the plan is carried out, given what wet paint loses on drying. */
  public double reachedMl(double shrinkage) {
    return heldMl + givenMl * (1 - shrinkage);
  }

  /** Wet paint that is missing. */
  public double shortMl() {
    return needMl - givenMl;
  }

  /** Whether a drop or more is missing. */
  public boolean isShort() {
    return shortMl() >= LEAST_ML;
  }
}
