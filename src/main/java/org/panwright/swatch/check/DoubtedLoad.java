package org.panwright.swatch.check;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.DoublePredicate;
import java.util.stream.DoubleStream;
import org.panwright.colour.Spectrum;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.coat.Swatch;
import org.panwright.swatch.coat.SwatchSet;
import org.panwright.swatch.fit.FitRefusedException;
import org.panwright.swatch.fit.FitReport;
import org.panwright.swatch.fit.FitSettings;
import org.panwright.swatch.fit.GroupedFit;
import org.panwright.swatch.fit.KnownPaint;
import org.panwright.swatch.fit.SwatchResidual;

/**
 * A coat whose noted load the other coats contradict, while another load would agree with them.
 *
 * <p>A load that was noted is believed in a fit, and a wrong one bends it. So the coat is left out,
 * the coats near it are fitted again, and the load is sought at which they foretell its colour
 * best. Asked are only coats of one paint that lie between a thinner and a thicker one: beyond the
 * others a fit does not know what a load looks like. A wrong load makes its neighbours look wrong,
 * too; named is the coat with which, at the load that fits, all coats of its paint come out best,
 * and clearly better than as noted.
 *
 * @param swatch the coat, with its load as noted
 * @param factor how many times that load would fit
 * @param foretold how far, in CIEDE2000, the others foretell it off with the load noted
 * @param remains the share, 0..1, that is left of the squares of its paint's residuals with the
 *     load that fits
 */
public record DoubtedLoad(Swatch swatch, double factor, double foretold, double remains) {
  private static final int TRIALS = 6;
  private static final double FARTHEST = Math.log(4);
  private static final double STEP = 0.02;
  private static final double LEAST_FACTOR = Math.log(1.3);
  private static final double LEAST = 4;
  private static final double CLEARLY_NEARER = 0.5;
  private static final double CLEARLY_BETTER = 0.5;

  /**
   * The coat whose load is most doubtful, if one is. Takes a few fits of a few coats.
   *
   * @param report the fit of the whole set under the same settings
   */
  public static Optional<DoubtedLoad> in(
      SwatchSet set,
      FitSettings settings,
      Map<String, KnownPaint> pigments,
      FitReport report,
      BooleanSupplier outdated) {
    FitSettings held = settings.on(report.face());
    return report.residuals().stream()
        .sorted(Comparator.comparingDouble(residual -> -residual.ciede2000()))
        .map(SwatchResidual::swatch)
        .filter(swatch -> isBetweenOthers(swatch, set))
        .limit(TRIALS)
        .map(swatch -> leftOut(set, held, pigments, swatch, outdated))
        .flatMap(Optional::stream)
        .min(Comparator.comparingDouble(DoubtedLoad::remains));
  }

  private static boolean isBetweenOthers(Swatch swatch, SwatchSet set) {
    return swatch.isSingle()
        && swatch.loadDoubt() == 0
        && hasAlike(set, swatch, load -> load < swatch.totalLoad())
        && hasAlike(set, swatch, load -> load > swatch.totalLoad());
  }

  /** Whether the same paint alone was laid over the same ground with such a known load. */
  private static boolean hasAlike(SwatchSet set, Swatch swatch, DoublePredicate load) {
    return set.swatches().stream()
        .filter(other -> other.isSingle() && other.loadDoubt() == 0)
        .filter(other -> other.ground().equals(swatch.ground()))
        .filter(other -> other.holds(swatch.paints().get(0).paint()))
        .anyMatch(other -> load.test(other.totalLoad()));
  }

  private static Optional<DoubtedLoad> leftOut(
      SwatchSet set,
      FitSettings settings,
      Map<String, KnownPaint> pigments,
      Swatch swatch,
      BooleanSupplier outdated) {
    SwatchSet near = GroupedFit.around(set, swatch, 1);
    int place = near.swatches().indexOf(swatch);
    try {
      FitReport rest = GroupedFit.of(near.without(place), settings, pigments, outdated);
      double foretold = error(rest, swatch, 1);
      double factor = bestFactor(rest, swatch);
      boolean plain =
          foretold > LEAST
              && error(rest, swatch, factor) < CLEARLY_NEARER * foretold
              && Math.abs(Math.log(factor)) > LEAST_FACTOR;
      if (!plain) {
        return Optional.empty();
      }
      FitReport noted = GroupedFit.of(near, settings, pigments, outdated);
      FitReport mended =
          GroupedFit.of(near.with(place, swatch.loaded(factor)), settings, pigments, outdated);
      double remains = squares(mended, swatch) / squares(noted, swatch);
      return remains < CLEARLY_BETTER
          ? Optional.of(new DoubtedLoad(swatch, factor, foretold, remains))
          : Optional.empty();
    } catch (FitRefusedException tooFewLeft) {
      return Optional.empty();
    }
  }

  private static double bestFactor(FitReport rest, Swatch swatch) {
    return DoubleStream.iterate(-FARTHEST, log -> log <= FARTHEST, log -> log + STEP)
        .map(Math::exp)
        .boxed()
        .min(Comparator.comparingDouble(factor -> error(rest, swatch, factor)))
        .orElseThrow();
  }

  /** Of all coats of the paint of a coat. */
  private static double squares(FitReport report, Swatch swatch) {
    return report.residuals().stream()
        .filter(residual -> residual.swatch().holds(swatch.paints().get(0).paint()))
        .mapToDouble(residual -> residual.ciede2000() * residual.ciede2000())
        .sum();
  }

  private static double error(FitReport rest, Swatch swatch, double factor) {
    Spectrum seen = rest.predict(swatch.paints(factor), swatch.ground());
    return new Reading.OfSpectrum(seen).ciede2000(swatch.reading());
  }
}
