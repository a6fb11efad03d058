package org.panwright.app.ring;

import java.util.List;
import java.util.Optional;
import org.panwright.analysis.compare.Comparison;
import org.panwright.analysis.finding.HueGap;
import org.panwright.analysis.reach.Ring;
import org.panwright.colour.Lab;
import org.panwright.colour.Oklch;

/**
 * The ring as it is to be drawn.
 *
 * @param lineup the ring of the lineup as it stands
 * @param shelf the ring of the whole shelf
 * @param trial the ring after the edit being tried
 * @param part which mixes of each ring to draw
 * @param gaps the gaps to mark
 * @param paints the lineup's paints at their purest
 * @param lost arcs marked as lost by going to the trial
 * @param won arcs marked as won
 */
record RingPicture(
    Ring lineup,
    Ring shelf,
    Optional<Ring> trial,
    Ring.Part part,
    List<HueGap> gaps,
    List<Dot> paints,
    List<Comparison.Shift> lost,
    List<Comparison.Shift> won) {
  /** A paint's place on the circle. */
  record Dot(String name, String codes, Oklch place, Lab lab) {}

  RingPicture {
    gaps = List.copyOf(gaps);
    paints = List.copyOf(paints);
    lost = List.copyOf(lost);
    won = List.copyOf(won);
  }
}
