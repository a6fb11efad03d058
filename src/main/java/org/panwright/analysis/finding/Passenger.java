package org.panwright.analysis.finding;

import java.util.List;
import java.util.Optional;
import org.panwright.analysis.worth.Earning;
import org.panwright.kit.Edit;

/**
 * A paint that earns its well next to nothing: the others mix what it mixes.
 *
 * @param earning what little it earns
 * @param cure the edit that empties its well
 */
public record Passenger(Earning earning, Optional<Edit> cure) implements Finding {
  @Override
  public FindingKind kind() {
    return FindingKind.PASSENGER;
  }

  @Override
  public String about() {
    return earning.paintId();
  }

  @Override
  public List<String> paintIds() {
    return List.of(earning.paintId());
  }

  /** 0.25 for nothing at all, falling to 0.15 at the bound. */
  @Override
  public double severity() {
    return 0.25 - 0.1 * Math.min(1, earning.total() / 0.03);
  }
}
