package org.panwright.analysis.finding;

import java.util.List;
import java.util.Optional;
import org.panwright.kit.Edit;

/**
 * No well holds a paint.
 *
 * @param shelfIsEmpty whether there is no owned paint to put in either
 */
public record EmptyLineup(boolean shelfIsEmpty) implements Finding {
  @Override
  public FindingKind kind() {
    return FindingKind.EMPTY_LINEUP;
  }

  @Override
  public String about() {
    return "";
  }

  @Override
  public List<String> paintIds() {
    return List.of();
  }

  @Override
  public double severity() {
    return 1;
  }

  @Override
  public Optional<Edit> cure() {
    return Optional.empty();
  }
}
