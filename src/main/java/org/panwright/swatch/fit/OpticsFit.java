package org.panwright.swatch.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.panwright.colour.Bands;
import org.panwright.colour.Spectrum;
import org.panwright.mixing.Surface;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsSource;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.coat.Swatch;
import org.panwright.swatch.coat.SwatchSet;
import org.panwright.swatch.squares.Equations;

/**
 * The optics that explain a set of swatches best, for all their paints together.
 *
 * <p>Least squares over ln K and ln S of every paint and band: the {@link SwatchTerm}s say how far
 * the coats are off, the {@link Expectations} what to believe where the coats say nothing. Solved
 * by steps after K. Levenberg (Quarterly of Applied Mathematics 2, 1944) and D. W. Marquardt
 * (Journal of the Society for Industrial and Applied Mathematics 11, 1963).
 */
public final class OpticsFit {
  private static final int MOST_STEPS = 80;
  private static final int MOST_TRIALS = 10;
  private static final double SETTLED = 1e-5;

  private final SwatchSet set;
  private final FitSettings settings;
  private final List<String> paints;
  private final double usualLoad;
  private final List<SwatchTerm> terms = new ArrayList<>();
  private final int doubtful;
  private final KnownShapes known;
  private final Expectations expectations;

  private OpticsFit(SwatchSet set, FitSettings settings, Map<String, KnownPaint> pigments) {
    this.set = set;
    this.settings = settings;
    paints = set.paints();
    usualLoad = set.usualLoad();
    int counted = 0;
    for (Swatch swatch : set.swatches()) {
      int place = swatch.loadDoubt() > 0 ? counted++ : SwatchTerm.NOT_DOUBTFUL;
      terms.add(new SwatchTerm(swatch, paints, usualLoad, settings, place));
    }
    doubtful = counted;
    known =
        new KnownShapes(settings.face().map(f -> smoothed(pigments, f)).orElse(pigments), paints);
    expectations = new Expectations(settings, known);
  }

  /**
   * Fits all paints of {@code set}, together or, where they are many, in groups.
   *
   * @throws FitRefusedException if nothing can be learnt from the set
   */
  public static FitReport of(SwatchSet set, FitSettings settings) throws FitRefusedException {
    return of(set, settings, () -> false);
  }

  /**
   * The same, asking before each trial step whether anyone still wants to know.
   *
   * @throws CancellationException if {@code outdated} answers true
   */
  public static FitReport of(SwatchSet set, FitSettings settings, BooleanSupplier outdated)
      throws FitRefusedException {
    return GroupedFit.of(set, settings, Map.of(), outdated);
  }

  /**
   * The same, all together, with what is known of the pigments of some paints.
   *
   * @param pigments optics by paint, per unit load, as estimated from names
   */
  static FitReport of(
      SwatchSet set,
      FitSettings settings,
      Map<String, KnownPaint> pigments,
      BooleanSupplier outdated)
      throws FitRefusedException {
    Optional<FitRefusal> refusal = Sense.check(set);
    if (refusal.isPresent()) {
      throw new FitRefusedException(refusal.get());
    }
    OpticsFit fit = new OpticsFit(set, settings, pigments);
    return fit.report(fit.solve(outdated));
  }

  private Unknowns solve(BooleanSupplier outdated) {
    Unknowns best = start();
    Equations equations = new Equations(best.size());
    double squares = gather(equations, best);
    double damping = 1e-2;
    for (int step = 0; step < MOST_STEPS; step++) {
      boolean better = false;
      double before = squares;
      for (int trial = 0; trial < MOST_TRIALS && !better; trial++) {
        if (outdated.getAsBoolean()) {
          throw new CancellationException();
        }
        Optional<double[]> move = equations.step(damping);
        if (move.isPresent()) {
          Unknowns next = best.plus(move.get());
          Equations nextEquations = new Equations(best.size());
          double nextSquares = gather(nextEquations, next);
          if (nextSquares < squares) {
            best = next;
            equations = nextEquations;
            squares = nextSquares;
            better = true;
          }
        }
        damping = better ? Math.max(1e-7, damping / 8) : damping * 5;
      }
      if (!better || (before - squares) < SETTLED * before) {
        break;
      }
    }
    return best;
  }

  private double gather(Equations equations, Unknowns unknowns) {
    double squares = expectations.addTo(equations, unknowns);
    if (known.any()) {
      squares += known.addTo(equations, unknowns, usualLoad);
    }
    for (SwatchTerm term : terms) {
      squares += term.addTo(equations, unknowns);
    }
    return squares;
  }

  /** K as if each coat of a paint alone hid its ground, S as usual. */
  private Unknowns start() {
    FaceCeiling ceiling =
        new FaceCeiling(terms.stream().flatMap(term -> term.places().stream()).toList());
    Unknowns unknowns = Unknowns.of(paints.size(), ceiling, known.any(), doubtful);
    for (int paint = 0; paint < paints.size(); paint++) {
      for (int band = 0; band < Bands.COUNT; band++) {
        unknowns.start(unknowns.absorption(paint, band), startingAbsorption(paint, band));
      }
    }
    known.start(unknowns, usualLoad);
    unknowns.start(unknowns.inner(), Expectations.K2);
    unknowns.start(unknowns.gloss(), Expectations.GLOSS);
    return unknowns;
  }

  private double startingAbsorption(int paint, int band) {
    double sum = 0;
    int coats = 0;
    for (Swatch swatch : set.swatches()) {
      if (swatch.isSingle() && swatch.paints().get(0).paint().equals(paints.get(paint))) {
        double ratio =
            swatch.reading().reflectance().at(band)
                / Math.max(0.05, swatch.ground().reflectance().at(band));
        double r = Math.max(0.03, Math.min(0.97, ratio));
        sum += (1 - r) * (1 - r) / (2 * r);
        coats++;
      }
    }
    return coats == 0 ? 0 : Math.log(sum / coats);
  }

  private FitReport report(Unknowns unknowns) {
    Surface surface = settings.face().map(KnownFace::bare).orElseGet(unknowns::surface);
    Map<String, Optics> optics = new LinkedHashMap<>();
    for (int paint = 0; paint < paints.size(); paint++) {
      optics.put(paints.get(paint), opticsOf(unknowns, paint, 1));
    }
    List<SwatchResidual> residuals = new ArrayList<>();
    for (int i = 0; i < terms.size(); i++) {
      Swatch swatch = set.swatches().get(i);
      double factor = terms.get(i).loadFactor(unknowns);
      Spectrum fitted = FitReport.predict(optics, surface, swatch.paints(factor), swatch.ground());
      residuals.add(new SwatchResidual(swatch, factor, fitted));
    }
    FitDoubt doubt = doubt(unknowns, surface, optics);
    for (int paint = 0; paint < paints.size(); paint++) {
      double error = doubt.expectedError(paints.get(paint), residuals);
      optics.put(paints.get(paint), opticsOf(unknowns, paint, error));
    }
    return new FitReport(optics, surface, residuals);
  }

  private FitDoubt doubt(Unknowns unknowns, Surface surface, Map<String, Optics> optics) {
    Equations equations = new Equations(unknowns.size());
    gather(equations, unknowns);
    Reading paper = lightestGround();
    return new FitDoubt(
        equations.uncertainty(),
        (paint, load, ground) -> {
          List<PaintLoad> coat = List.of(new PaintLoad(paint, load * usualLoad));
          Spectrum seen = FitReport.predict(optics, surface, coat, ground);
          Reading read = new Reading.OfSpectrum(seen.map(r -> Math.max(0, Math.min(1, r))));
          Swatch probe = new Swatch("probe", coat, read, ground);
          SwatchTerm term = new SwatchTerm(probe, paints, usualLoad, settings);
          return uncertainty -> term.variance(uncertainty, unknowns);
        },
        paper,
        paint -> known.knows(paints.indexOf(paint)));
  }

  private Reading lightestGround() {
    return set.swatches().stream()
        .map(Swatch::ground)
        .max(Comparator.comparingDouble(ground -> ground.lab().l()))
        .orElseThrow();
  }

  private Optics opticsOf(Unknowns unknowns, int paint, double error) {
    boolean measured =
        set.swatches().stream().allMatch(s -> s.reading() instanceof Reading.OfSpectrum);
    return new Optics(
        Spectrum.ofBands(
            band -> Math.exp(unknowns.at(unknowns.absorption(paint, band))) / usualLoad),
        Spectrum.ofBands(
            band -> Math.exp(unknowns.at(unknowns.scattering(paint, band))) / usualLoad),
        gloss(unknowns, paint),
        measured ? OpticsSource.SPECTRA : OpticsSource.SWATCHES,
        error);
  }

  private double gloss(Unknowns unknowns, int paint) {
    return settings
        .face()
        .map(face -> face.gloss(paints.get(paint)))
        .orElseGet(() -> unknowns.at(unknowns.gloss()) / usualLoad);
  }

  private static Map<String, KnownPaint> smoothed(
      Map<String, KnownPaint> pigments, KnownFace face) {
    Map<String, KnownPaint> smoothed = new LinkedHashMap<>();
    pigments.forEach((paint, known) -> smoothed.put(paint, known.smoothed(face.gloss(paint))));
    return smoothed;
  }
}
