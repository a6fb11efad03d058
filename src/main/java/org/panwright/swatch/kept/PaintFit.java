package org.panwright.swatch.kept;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.panwright.colour.Spectrum;
import org.panwright.mixing.Surface;
import org.panwright.paint.Optics;
import org.panwright.paint.Paint;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.Paper;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.Shelf;
import org.panwright.swatch.check.DoubtedLoad;
import org.panwright.swatch.check.OddCoat;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.coat.Swatch;
import org.panwright.swatch.fit.FitRefusal;
import org.panwright.swatch.fit.FitRefusedException;
import org.panwright.swatch.fit.FitReport;
import org.panwright.swatch.fit.FitWatch;
import org.panwright.swatch.fit.SwatchResidual;

/**
 * The optics of a painter's paints from the coats kept with them: the way from a {@link
 * org.panwright.paint.Swatchbook} to colours that can be predicted from.
 *
 * <p>All paints asked for are fitted together, so a coat that mixes two of them tells of both. What
 * is stirred in but not asked for (a white, a black, another paint of the shelf) is taken as it is
 * known so far.
 */
public final class PaintFit {
  /** One fit of all coats, and one without each of the few that may be odd. */
  private static final double FIRST_OF_ALL = 0.2;

  private PaintFit() {}

  /**
   * Fits paints.
   *
   * @param shelf with the paints and all coats to learn from
   * @param paintIds the paints whose optics are sought; each has a coat that can be used
   * @param library what is known of their pigments
   * @param paper beneath every coat whose own ground was not read
   * @param outdated asked now and then; if it answers true the fit stops
   * @throws FitRefusedException if nothing can be learnt from the coats
   * @throws java.util.concurrent.CancellationException if {@code outdated} said so
   */
  public static PaintFitReport of(
      Shelf shelf,
      Set<String> paintIds,
      PigmentLibrary library,
      Paper paper,
      BooleanSupplier outdated)
      throws FitRefusedException {
    return of(shelf, paintIds, library, paper, FitWatch.of(outdated));
  }

  /** The same, watched by somebody who waits for it. */
  public static PaintFitReport of(
      Shelf shelf, Set<String> paintIds, PigmentLibrary library, Paper paper, FitWatch watch)
      throws FitRefusedException {
    KeptCoats kept = KeptCoats.of(shelf, paintIds, library, paper);
    if (kept.coats().isEmpty()) {
      throw new FitRefusedException(new FitRefusal.NoSwatches());
    }
    FacedFit fit = FacedFit.of(kept, paintIds, watch.part(0, FIRST_OF_ALL, FitWatch.ONE_FIT));
    return report(fit, paintIds, watch);
  }

  private static PaintFitReport report(FacedFit fit, Set<String> paintIds, FitWatch watch) {
    KeptCoats kept = fit.kept();
    FitReport report = fit.report();
    BooleanSupplier others = watch.part(FIRST_OF_ALL, 1, FitWatch.ONE_FIT / FIRST_OF_ALL);
    Optional<OddCoat> odd = OddCoat.in(kept.set(), fit.settings(), kept.pigments(), report, others);
    Map<String, Optics> optics = new LinkedHashMap<>();
    report
        .optics()
        .forEach(
            (id, found) -> {
              if (paintIds.contains(id)) {
                optics.put(id, found);
              }
            });
    List<PaintFitReport.CoatFit> coats = new ArrayList<>();
    for (int i = 0; i < kept.coats().size(); i++) {
      KeptCoats.Kept coat = kept.coats().get(i);
      SwatchResidual residual = report.residuals().get(i);
      coats.add(
          new PaintFitReport.CoatFit(
              coat.paintId(),
              coat.coat(),
              residual.fitted(),
              residual.ciede2000(),
              residual.swatch().totalLoad() * residual.loadFactor()));
    }
    Optional<DoubtedLoad> doubted =
        DoubtedLoad.in(kept.set(), fit.settings(), kept.pigments(), report, others);
    return new PaintFitReport(
        optics,
        coats,
        kept.unused(),
        kept.tooDark(),
        odd.flatMap(
            o ->
                fitOf(kept, coats, o.swatch())
                    .map(coat -> new PaintFitReport.Odd(coat, o.foretold()))),
        doubted.flatMap(d -> fitOf(kept, coats, d.swatch()).flatMap(coat -> otherLoad(coat, d))));
  }

  /**
   * Of a load that was noted and one that a coat can have; the full coat is load 1 by definition.
   */
  private static Optional<PaintFitReport.OtherLoad> otherLoad(
      PaintFitReport.CoatFit fit, DoubtedLoad doubted) {
    double load = doubted.swatch().totalLoad() * doubted.factor();
    return fit.coat().load().isPresent() && load <= PaintedCoat.MOST_LOAD
        ? Optional.of(new PaintFitReport.OtherLoad(fit, load, doubted.foretold()))
        : Optional.empty();
  }

  private static Optional<PaintFitReport.CoatFit> fitOf(
      KeptCoats kept, List<PaintFitReport.CoatFit> coats, Swatch swatch) {
    int place = kept.set().swatches().indexOf(swatch);
    return place >= 0 && place < coats.size() ? Optional.of(coats.get(place)) : Optional.empty();
  }

  /**
   * What the optics in use make of a coat kept with a paint, dry. A load nobody noted is the one,
   * of those that are likely, at which the coat comes nearest.
   *
   * @return empty if nobody knows what is mixed into the coat
   */
  public static Optional<PaintFitReport.CoatFit> compare(
      Paint paint, PaintedCoat coat, Shelf shelf, PigmentLibrary library, Paper paper) {
    Map<String, Optics> optics = new LinkedHashMap<>();
    optics.put(paint.id(), paint.optics(library));
    if (coat.mixedWith().isPresent()) {
      Optional<Optics> other = Companions.optics(coat.mixedWith().get(), shelf, library);
      if (other.isEmpty()) {
        return Optional.empty();
      }
      optics.put(Companions.id(coat.mixedWith().get()), other.get());
    }
    FitReport known = new FitReport(optics, Surface.DRY, List.of());
    Reading ground = KeptCoats.ground(coat, paper);
    Reading dry = Reading.of(coat.dry());
    PaintFitReport.CoatFit best = null;
    double least = Double.POSITIVE_INFINITY;
    double doubt = KeptCoats.doubt(coat);
    for (double off = -2; off <= 2; off += doubt > 0 ? 0.125 : 4) {
      double load = KeptCoats.presumedLoad(coat) * Math.exp(doubt > 0 ? off * doubt : 0);
      Spectrum seen = known.predict(KeptCoats.loads(paint.id(), coat, load), ground);
      double error = new Reading.OfSpectrum(clamped(seen)).ciede2000(dry);
      double cost = doubt > 0 ? error * error + off * off : error;
      if (cost < least) {
        least = cost;
        best = new PaintFitReport.CoatFit(paint.id(), coat, seen, error, load);
      }
    }
    return Optional.ofNullable(best);
  }

  private static Spectrum clamped(Spectrum reflectance) {
    return reflectance.map(r -> Math.max(0, Math.min(1, r)));
  }
}
