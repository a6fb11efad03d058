package org.panwright.analysis.finding;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.panwright.analysis.mud.Dark;
import org.panwright.kit.Edit;

/**
 * The lineup mixes no real dark once dry.
 *
 * @param darkest its darkest mix
 * @param suggestPaintId the owned paint that brings the darkest mix, if it brings a real dark
 * @param suggestL L* of the darkest dry mix with that paint; that of {@code darkest} without one
 * @param giveUpPaintId the paint that could leave for it at the least loss, if the box is full
 * @param cure the edit that brings it in
 */
public record NoDark(
    Dark darkest,
    Optional<String> suggestPaintId,
    double suggestL,
    Optional<String> giveUpPaintId,
    Optional<Edit> cure)
    implements Finding {
  @Override
  public FindingKind kind() {
    return FindingKind.NO_DARK;
  }

  @Override
  public String about() {
    return "";
  }

  @Override
  public List<String> paintIds() {
    return Stream.concat(suggestPaintId.stream(), giveUpPaintId.stream()).toList();
  }

  /** 0.3 just missed, 0.7 from L* 45. */
  @Override
  public double severity() {
    return Math.min(0.7, 0.3 + (darkest.dryL() - Dark.REAL_BELOW) * 0.02);
  }
}
