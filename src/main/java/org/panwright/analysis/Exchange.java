package org.panwright.analysis;

import java.util.Optional;
import org.panwright.kit.Edit;
import org.panwright.mixing.OpticsTable;

/**
 * How a paint of the shelf can come into a lineup at the least loss.
 *
 * @param leavingId the paint that gives up a well for it; empty if there is an empty well
 * @param edit the edit that does it; empty where the lineup would be the poorer for it
 */
record Exchange(Optional<String> leavingId, Optional<Edit> edit) {
  /**
   * The exchange that brings in a paint.
   *
   * <p>An empty well is taken first, then the second well of a paint that has two. Otherwise that
   * paint leaves whose leaving loses least once the new one is there:
   *
   * <pre>
   * loss(q) = (Σ ring of all − Σ ring without q) / Σ ring of all
   *         + (cells of all − cells without q) / cells of all
   *         + 1 − Σ near without q / Σ near                          all = lineup and new paint
   * </pre>
   *
   * <p>near as in {@link SubjectsWithout}. The edit is offered only if the ring after it sums to
   * more than before.
   */
  static Exchange bringing(Case open, String paintId) {
    Optional<Edit> placed = open.placeInEmptyWell(paintId);
    if (placed.isPresent()) {
      return new Exchange(Optional.empty(), placed);
    }
    Optional<String> doubled = open.doubled();
    if (doubled.isPresent()) {
      return new Exchange(doubled, Optional.of(open.placeInWellOf(doubled.get(), paintId)));
    }
    OpticsTable table = open.table();
    int added = table.indexOf(paintId);
    LeaveOneOut trial = open.figures().leaving().copy();
    Ring.Gatherer all = new Ring.Gatherer(open.figures().ring());
    SubjectsWithout subjects = open.figures().subjects().copy();
    open.walk().with(added, open.members(), Sinks.of(trial, all, subjects));
    double sum = all.ring().sum();
    int[] lost = trial.reachLost();
    int leaving = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int member = 0; member < lost.length; member++) {
      double loss =
          1
              - trial.ringSumWithout(member) / sum
              + (double) lost[member] / trial.reach()
              + subjects.lost(member).share();
      if (loss < least) {
        least = loss;
        leaving = member;
      }
    }
    String leavingId = table.ids().get(open.members()[leaving]);
    boolean richer = trial.ringSumWithout(leaving) > open.figures().ring().sum();
    return new Exchange(
        Optional.of(leavingId),
        richer ? Optional.of(open.placeInWellOf(leavingId, paintId)) : Optional.empty());
  }
}
