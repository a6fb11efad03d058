package org.panwright.print;

import java.util.List;
import java.util.Optional;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.paint.Optics;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;

/**
 * One well with all a card says of it.
 *
 * @param filled what is in it, if anything
 */
record CardWell(Well well, Optional<Filled> filled) {
  /**
   * What is in a well.
   *
   * @param metals chemical symbols of metals its pigments hold that call for care
   */
  record Filled(Paint paint, Fill fill, WashRun run, double expectedError, List<String> metals) {}

  /** All wells of a lineup's box in their order. */
  static List<CardWell> of(Kit kit, Lineup lineup, PigmentLibrary library) {
    return kit.boxOf(lineup).wells().stream()
        .map(
            well ->
                new CardWell(
                    well, lineup.in(well.id()).map(filling -> filled(kit, filling, library))))
        .toList();
  }

  private static Filled filled(Kit kit, Filling filling, PigmentLibrary library) {
    Paint paint = kit.shelf().find(filling.paintId()).orElseThrow();
    Optics optics = paint.optics(library);
    List<String> metals =
        paint.pigments().stream()
            .flatMap(share -> library.find(share.pigment()).stream())
            .flatMap(pigment -> pigment.metals().stream())
            .distinct()
            .toList();
    return new Filled(
        paint,
        filling.fill(),
        WashRun.of(optics, kit.paper(), kit.washes()),
        optics.expectedError(),
        metals);
  }
}
