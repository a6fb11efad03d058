package org.panwright.analysis.search;

import org.panwright.analysis.mud.DarkestWithout;
import org.panwright.analysis.reach.Ring;
import org.panwright.analysis.reach.Sinks;
import org.panwright.analysis.worth.LeaveOneOut;
import org.panwright.analysis.worth.SubjectsWithout;

/**
 * What a lineup can mix once one more paint is in it, and what without each of its own; from one
 * walk over the mixes that hold the new paint.
 *
 * @param ring the hue ring with all
 * @param leaving ring and reach without each of the lineup's own
 * @param darks the darkest mix without each
 * @param subjects the colours of its places without each
 */
public record Arrival(
    Ring ring, LeaveOneOut leaving, DarkestWithout darks, SubjectsWithout subjects) {
  static Arrival of(Case open, String paintId) {
    Ring.Gatherer ring = new Ring.Gatherer(open.figures().ring());
    LeaveOneOut leaving = open.figures().leaving().copy();
    DarkestWithout darks = open.figures().darks().copy();
    SubjectsWithout subjects = open.figures().subjects().copy();
    int added = open.table().indexOf(paintId);
    open.walk().with(added, open.members(), Sinks.of(ring, leaving, darks, subjects));
    return new Arrival(ring.ring(), leaving, darks, subjects);
  }

  /**
   * What is lost when one of the lineup's own leaves:
   *
   * <pre>
   * loss(q) = (Σ ring of all − Σ ring without q) / Σ ring of all
   *         + (cells of all − cells without q) / cells of all
   *         + 1 − Σ near without q / Σ near                   all = lineup and new paint
   * </pre>
   *
   * near as in {@link SubjectsWithout}.
   */
  double[] losses() {
    double sum = ring.sum();
    int[] cells = leaving.reachLost();
    double[] losses = new double[cells.length];
    for (int member = 0; member < losses.length; member++) {
      losses[member] =
          1
              - leaving.ringSumWithout(member) / sum
              + (double) cells[member] / leaving.reach()
              + subjects.lost(member).share();
    }
    return losses;
  }
}
