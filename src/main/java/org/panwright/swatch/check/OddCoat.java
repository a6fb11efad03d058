package org.panwright.swatch.check;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
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
 * The one coat of a set that disagrees with the rest: mislabelled, contaminated, or misread.
 *
 * <p>A wrong coat bends the fit of its paints, so its own residual tells little. The coats with the
 * largest residuals are left out one at a time, the rest is fitted again and predicts the coat left
 * out. It is odd if that prediction is far off, farther than the rest expects of itself, while the
 * coats that share its paints come out clearly better without it. First only the coats of its
 * paints and of those mixed into others most often are fitted, which is quick; what looks odd
 * beside them is asked once more beside the coats of eight paints.
 *
 * @param swatch the odd coat
 * @param foretold how far, in CIEDE2000, the rest's prediction is from its reading
 */
public record OddCoat(Swatch swatch, double foretold) {
  private static final int TRIALS = 4;
  private static final int FEW_PAINTS = 3;
  private static final int MORE_PAINTS = 8;
  private static final double LEAST = 8;
  private static final double TIMES_THE_REST = 4;
  private static final double TIMES_EXPECTED = 2;
  private static final double CLEARLY_BETTER = 0.75;

  /**
   * The coat that disagrees most, if one does. Takes a few fits.
   *
   * @param report the fit of the whole set under the same settings
   */
  public static Optional<OddCoat> in(SwatchSet set, FitSettings settings, FitReport report) {
    return in(set, settings, Map.of(), report, () -> false);
  }

  /** The same, asking now and then whether anyone still wants to know. */
  public static Optional<OddCoat> in(
      SwatchSet set,
      FitSettings settings,
      Map<String, KnownPaint> pigments,
      FitReport report,
      BooleanSupplier outdated) {
    List<SwatchResidual> residuals = report.residuals();
    return IntStream.range(0, residuals.size())
        .boxed()
        .sorted(Comparator.comparingDouble(i -> -residuals.get(i).ciede2000()))
        .limit(TRIALS)
        .map(i -> leftOut(set, settings, pigments, report, i, outdated))
        .flatMap(Optional::stream)
        .max(Comparator.comparingDouble(OddCoat::foretold));
  }

  private static Optional<OddCoat> leftOut(
      SwatchSet set,
      FitSettings settings,
      Map<String, KnownPaint> pigments,
      FitReport whole,
      int index,
      BooleanSupplier outdated) {
    Swatch swatch = set.swatches().get(index);
    FitSettings held = settings.on(whole.face());
    try {
      OptionalDouble error = OptionalDouble.empty();
      for (SwatchSet near : nearer(set, swatch)) {
        error = foretoldOdd(near, held, pigments, swatch, outdated);
        if (error.isEmpty()) {
          return Optional.empty();
        }
      }
      return Optional.of(new OddCoat(swatch, error.orElseThrow()));
    } catch (FitRefusedException tooFewLeft) {
      return Optional.empty();
    }
  }

  /** The coats to ask beside a coat, the nearest first. */
  private static List<SwatchSet> nearer(SwatchSet set, Swatch swatch) {
    return IntStream.of(FEW_PAINTS, MORE_PAINTS)
        .mapToObj(paints -> GroupedFit.around(set, swatch, paints))
        .distinct()
        .toList();
  }

  /** How far the others foretell a coat of theirs, if that makes it odd. */
  private static OptionalDouble foretoldOdd(
      SwatchSet set,
      FitSettings settings,
      Map<String, KnownPaint> pigments,
      Swatch swatch,
      BooleanSupplier outdated)
      throws FitRefusedException {
    SwatchSet rest = set.without(set.swatches().indexOf(swatch));
    if (!rest.paints().equals(set.paints())) {
      return OptionalDouble.empty();
    }
    FitReport report = GroupedFit.of(rest, settings, pigments, outdated);
    double error = foretold(report, swatch);
    if (!isFar(error, report, swatch)) {
      return OptionalDouble.empty();
    }
    FitReport with = GroupedFit.of(set, settings, pigments, outdated);
    boolean better = meanSquare(report, swatch) < CLEARLY_BETTER * meanSquare(with, swatch);
    return better ? OptionalDouble.of(error) : OptionalDouble.empty();
  }

  private static boolean isFar(double error, FitReport rest, Swatch swatch) {
    double expected = TIMES_EXPECTED * expectedError(rest, swatch);
    return error > Math.max(Math.max(LEAST, TIMES_THE_REST * rest.medianError()), expected);
  }

  /** What the rest itself expects to be off by for the least known paint of a coat. */
  private static double expectedError(FitReport report, Swatch swatch) {
    return swatch.paints().stream()
        .mapToDouble(share -> report.optics().get(share.paint()).expectedError())
        .max()
        .orElseThrow();
  }

  /** How far a prediction is from a coat; a doubtful load may be any that is likely. */
  private static double foretold(FitReport report, Swatch swatch) {
    double nearest = Double.POSITIVE_INFINITY;
    for (double doubts = -2; doubts <= 2; doubts += 0.5) {
      double factor = Math.exp(doubts * swatch.loadDoubt());
      Spectrum predicted = report.predict(swatch.paints(factor), swatch.ground());
      nearest = Math.min(nearest, new Reading.OfSpectrum(predicted).ciede2000(swatch.reading()));
    }
    return nearest;
  }

  /** Over the other coats that share a paint with the swatch. */
  private static double meanSquare(FitReport report, Swatch swatch) {
    return report.residuals().stream()
        .filter(residual -> !residual.swatch().equals(swatch) && shares(residual.swatch(), swatch))
        .mapToDouble(residual -> residual.ciede2000() * residual.ciede2000())
        .average()
        .orElse(0);
  }

  private static boolean shares(Swatch first, Swatch second) {
    return first.paints().stream().anyMatch(share -> second.holds(share.paint()));
  }
}
