package org.panwright.analysis;

/**
 * What the whole shelf can mix: the measure of a lineup.
 *
 * @param ring the shelf's hue ring
 * @param reach the shelf's reach
 */
record ShelfFigures(Ring ring, Reach reach) {
  static ShelfFigures of(NetWalk walk, int[] paints) {
    Ring.Gatherer ring = new Ring.Gatherer();
    Reach.Gatherer reach = new Reach.Gatherer();
    walk.all(paints, Sinks.of(ring, reach));
    return new ShelfFigures(ring.ring(), reach.reach());
  }
}
