package org.panwright.analysis.finding;

import java.util.List;
import java.util.Optional;
import org.panwright.kit.Edit;

/**
 * Two paints of the lineup that look alike both thick and thin.
 *
 * @param keepPaintId the one that earns more
 * @param sparePaintId the one that earns less
 * @param masstone ΔE00 of their masstones
 * @param tint ΔE00 of their tints at one strength part
 * @param doubt how far the differences can be trusted
 * @param cure the edit that empties the well of the second
 */
public record NearTwins(
    String keepPaintId,
    String sparePaintId,
    double masstone,
    double tint,
    Doubt doubt,
    Optional<Edit> cure)
    implements Finding {
  /** Paints nearer than this in masstone and in tint are near twins (common practice). */
  public static final double NEARER_THAN = 5;

  @Override
  public FindingKind kind() {
    return FindingKind.NEAR_TWINS;
  }

  @Override
  public String about() {
    return keepPaintId.compareTo(sparePaintId) < 0
        ? keepPaintId + "+" + sparePaintId
        : sparePaintId + "+" + keepPaintId;
  }

  @Override
  public List<String> paintIds() {
    return List.of(sparePaintId, keepPaintId);
  }

  /** 0.4 for the same colour, falling to 0.2. */
  @Override
  public double severity() {
    return 0.4 - 0.2 * Math.max(masstone, tint) / NEARER_THAN;
  }
}
