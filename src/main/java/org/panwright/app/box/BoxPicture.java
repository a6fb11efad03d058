package org.panwright.app.box;

import java.util.List;
import org.panwright.app.chip.ToneBook;
import org.panwright.kit.Box;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.paint.Paint;

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

  /** The picture of a lineup of a kit, or of one that could be in it. */
  public static BoxPicture of(Kit kit, Lineup lineup, ToneBook book) {
    Box box = kit.boxOf(lineup);
    return new BoxPicture(
        box,
        lineup.id(),
        box.wells().stream()
            .map(
                well ->
                    new WellPicture(
                        well, lineup.in(well.id()).map(filling -> content(kit, filling, book))))
            .toList());
  }

  private static WellPicture.Content content(Kit kit, Filling filling, ToneBook book) {
    Paint paint = kit.shelf().find(filling.paintId()).orElseThrow();
    return new WellPicture.Content(
        paint, filling.fill(), book.of(paint, kit.paper(), kit.washes()));
  }
}
