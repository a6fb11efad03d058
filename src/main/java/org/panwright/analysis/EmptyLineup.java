package org.panwright.analysis;

import java.util.Optional;
import org.panwright.kit.Edit;

/**
 * No well holds a paint.
 *
 * @param shelfIsEmpty whether there is no owned paint to put in either
 */
public record EmptyLineup(boolean shelfIsEmpty) implements Finding {
  @Override
  public double severity() {
    return 1;
  }

  @Override
  public Optional<Edit> cure() {
    return Optional.empty();
  }
}
