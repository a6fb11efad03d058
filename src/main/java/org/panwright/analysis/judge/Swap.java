package org.panwright.analysis.judge;

import java.util.Optional;
import org.panwright.analysis.search.Case;
import org.panwright.kit.Edit;

/**
 * An exchange of one paint that may be tried.
 *
 * @param leavingId the paint that leaves its well
 * @param arrivingId the paint that comes in its place, if one does
 * @param edit what does it
 */
record Swap(String leavingId, Optional<String> arrivingId, Edit edit) {
  /** One paint in the well of another. */
  static Swap of(Case open, String leavingId, String arrivingId) {
    return new Swap(
        leavingId, Optional.of(arrivingId), open.seats().placeInWellOf(leavingId, arrivingId));
  }
}
