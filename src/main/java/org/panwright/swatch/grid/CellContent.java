package org.panwright.swatch.grid;

import java.util.Optional;
import org.panwright.paint.Wash;

/**
 * What a cell is meant to hold.
 *
 * @param first a paint's id
 * @param second another's; empty where one paint stands alone
 * @param firstParts strength parts of the first to one of the second
 * @param wash how thick it was meant to be
 */
public record CellContent(String first, Optional<String> second, double firstParts, Wash wash) {
  public CellContent {
    if (second.filter(first::equals).isPresent()) {
      throw new IllegalArgumentException("a cell names a paint once, twice: " + first);
    }
    if (!(firstParts > 0)) {
      throw new IllegalArgumentException("parts must be above 0, were " + firstParts);
    }
  }

  /** The same with the parts of the first multiplied. */
  CellContent withParts(double factor) {
    return new CellContent(first, second, firstParts * factor, wash);
  }
}
