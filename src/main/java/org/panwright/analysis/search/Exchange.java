package org.panwright.analysis.search;

import java.util.Optional;
import org.panwright.kit.Edit;

/**
 * How a paint of the shelf can come into a lineup at the least loss.
 *
 * @param leavingId the paint that gives up a well for it; empty if there is an empty well
 * @param edit the edit that does it; empty where the lineup would be the poorer for it
 */
public record Exchange(Optional<String> leavingId, Optional<Edit> edit) {
  /**
   * The exchange that brings in a paint.
   *
   * <p>An empty well is taken first, then the second well of a paint that has two. Otherwise that
   * paint leaves whose leaving loses least once the new one is there, see {@link Arrival#losses}.
   * The edit is offered only if the ring after it sums to more than before.
   */
  public static Exchange bringing(Case open, String paintId) {
    Optional<Edit> placed = open.seats().placeInEmptyWell(paintId);
    if (placed.isPresent()) {
      return new Exchange(Optional.empty(), placed);
    }
    Optional<String> doubled = open.seats().doubled();
    if (doubled.isPresent()) {
      return new Exchange(doubled, Optional.of(open.seats().placeInWellOf(doubled.get(), paintId)));
    }
    Arrival arrival = open.arrival(paintId);
    double[] losses = arrival.losses();
    int leaving = 0;
    for (int member = 1; member < losses.length; member++) {
      leaving = losses[member] < losses[leaving] ? member : leaving;
    }
    String leavingId = open.table().ids().get(open.members()[leaving]);
    boolean richer = arrival.leaving().ringSumWithout(leaving) > open.figures().ring().sum();
    return new Exchange(
        Optional.of(leavingId),
        richer ? Optional.of(open.seats().placeInWellOf(leavingId, paintId)) : Optional.empty());
  }
}
