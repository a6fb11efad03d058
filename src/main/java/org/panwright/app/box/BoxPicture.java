package org.panwright.app.box;

import java.util.List;
import org.panwright.kit.Box;

/**
 * A box with what is in its wells.
 *
 * @param box the box
 * @param lineupId the lineup shown
 * @param wells one for each well of the box, in its order
 */
public record BoxPicture(Box box, String lineupId, List<WellPicture> wells) {
  public BoxPicture {
    wells = List.copyOf(wells);
    if (wells.size() != box.wells().size()) {
      throw new IllegalArgumentException(
          "box " + box.name() + " has " + box.wells().size() + " wells, was " + wells.size());
    }
  }

  /** How many wells hold a paint. */
  public int filled() {
    return (int) wells.stream().filter(w -> w.content().isPresent()).count();
  }
}
