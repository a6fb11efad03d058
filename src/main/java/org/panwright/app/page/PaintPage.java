package org.panwright.app.page;

import java.util.List;
import java.util.Optional;
import org.panwright.colour.Spectrum;
import org.panwright.mixing.Film;
import org.panwright.mixing.Surface;
import org.panwright.paint.FormerOptics;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsOrigin;
import org.panwright.paint.Paint;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.Paper;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.Shelf;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;
import org.panwright.swatch.kept.PaintFit;
import org.panwright.swatch.kept.PaintFitReport.CoatFit;

/**
 * All that is known of one paint's colour.
 *
 * @param optics in use
 * @param origin where they come from
 * @param coats kept with it, in order
 * @param curves what the optics look like
 * @param canEstimate whether the library knows all its pigments
 */
record PaintPage(
    Paint paint,
    Optics optics,
    OpticsOrigin origin,
    List<Line> coats,
    Curves curves,
    boolean canEstimate) {
  private static final Spectrum BLACK = Spectrum.flat(0.04);

  PaintPage {
    coats = List.copyOf(coats);
  }

  /**
   * One coat painted and predicted.
   *
   * @param fit empty if nobody knows what is in the coat
   */
  record Line(PaintedCoat coat, Optional<CoatFit> fit) {}

  /** Reflectances from outside: strong and thin, over the kit's paper and over a black line. */
  record Curves(Spectrum full, Spectrum wash, Spectrum fullOnBlack, Spectrum washOnBlack) {}

  static PaintPage of(
      Paint paint, Shelf shelf, PigmentLibrary library, Paper paper, WashStrengths washes) {
    Optics optics = paint.optics(library);
    double thin = washes.load(Wash.MILK);
    return new PaintPage(
        paint,
        optics,
        paint.origin(),
        paint.swatchbook().coats().stream()
            .map(coat -> new Line(coat, PaintFit.compare(paint, coat, shelf, library, paper)))
            .toList(),
        new Curves(
            seen(optics, 1, paper.reflectance()),
            seen(optics, thin, paper.reflectance()),
            seen(optics, 1, BLACK),
            seen(optics, thin, BLACK)),
        paint.pigments().stream().allMatch(p -> library.find(p.pigment()).isPresent()));
  }

  /** Whether a line of the history can be gone back to. */
  boolean canGoBackTo(FormerOptics former) {
    return former.optics().isPresent() || canEstimate;
  }

  private static Spectrum seen(Optics optics, double load, Spectrum ground) {
    return Film.of(optics, load).seen(ground, Surface.DRY);
  }
}
