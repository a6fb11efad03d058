package org.panwright.analysis.finding;

import java.util.List;
import java.util.Optional;
import org.panwright.kit.Edit;

/**
 * Further paints the lineup could spare as it stands. Each was judged with all others in the box;
 * once one leaves, the others are needed more, so only the best few are told as findings.
 *
 * @param paintIds the paints, the most easily spared first
 */
public record AlsoSpare(List<String> paintIds) implements Finding {
  public AlsoSpare {
    paintIds = List.copyOf(paintIds);
  }

  @Override
  public FindingKind kind() {
    return FindingKind.ALSO_SPARE;
  }

  @Override
  public String about() {
    return "";
  }

  /** A remark. */
  @Override
  public double severity() {
    return 0.06;
  }

  @Override
  public Optional<Edit> cure() {
    return Optional.empty();
  }
}
