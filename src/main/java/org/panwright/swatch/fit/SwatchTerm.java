package org.panwright.swatch.fit;

import java.util.Arrays;
import java.util.List;
import org.panwright.colour.Bands;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;
import org.panwright.mixing.Surface;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.coat.Swatch;
import org.panwright.swatch.squares.Equations;

/**
 * One swatch's share in the sum of squares: how far the coat the unknowns predict is from the coat
 * that was read.
 *
 * <pre>
 * Σ spectral · w(λ) · (116/6)² (∛(R + 0.01) − ∛(R read + 0.01))²  +  colour · (ColourError)²
 * </pre>
 *
 * <p>The cube root makes a step in the darks count as the eye counts it; 116 ∛R is L* of a grey. w
 * is how much the band moves X + Y + Z, at least 0.3 of the mean, so that the ends of the spectrum
 * are not free.
 */
final class SwatchTerm {
  private static final int BANDS = Bands.COUNT;
  private static final double DARK_OFFSET = 0.01;
  private static final double LIGHTNESS_STEP = 116.0 / 6;
  private static final double LEAST_BAND_WEIGHT = 0.3;
  private static final double[] BAND_WEIGHTS = bandWeights();
  static final int NOT_DOUBTFUL = -1;

  private final FitSettings settings;
  private final int[] paints;
  private final double[] loads;
  private final double totalLoad;
  private final double knownGloss;
  private final double[] read;
  private final double[] ground;
  private final double darkestBelow;
  private final double spectralWeight;
  private final ColourError colour;
  private final double loadDoubt;
  private final int doubtful;

  SwatchTerm(Swatch swatch, List<String> paintNames, double usualLoad, FitSettings settings) {
    this(swatch, paintNames, usualLoad, settings, NOT_DOUBTFUL);
  }

  /**
   * @param doubtful the place of its load among the doubtful ones, from 0; {@link #NOT_DOUBTFUL} if
   *     its load is known
   */
  SwatchTerm(
      Swatch swatch,
      List<String> paintNames,
      double usualLoad,
      FitSettings settings,
      int doubtful) {
    this.settings = settings;
    this.doubtful = doubtful;
    loadDoubt = swatch.loadDoubt();
    paints = swatch.paints().stream().mapToInt(p -> paintNames.indexOf(p.paint())).toArray();
    loads = swatch.paints().stream().mapToDouble(p -> p.load() / usualLoad).toArray();
    knownGloss =
        swatch.paints().stream()
            .mapToDouble(p -> settings.face().map(f -> f.gloss(p.paint()) * p.load()).orElse(0.0))
            .sum();
    totalLoad = swatch.totalLoad() / usualLoad;
    read = swatch.reading().reflectance().toArray();
    ground = swatch.ground().reflectance().toArray();
    darkestBelow = Arrays.stream(ground).min().orElseThrow();
    spectralWeight =
        swatch.reading() instanceof Reading.OfSpectrum
            ? settings.spectral()
            : settings.reconstructed();
    colour = new ColourError(swatch.reading().lab());
  }

  /** What was read of the coat and of what lies beneath. */
  List<FaceCeiling.Place> places() {
    return List.of(
        new FaceCeiling.Place(darkestBelow, 0),
        new FaceCeiling.Place(Arrays.stream(read).min().orElseThrow(), totalLoad));
  }

  /** Adds the swatch to the equations and answers its sum of squares. */
  double addTo(Equations equations, Unknowns unknowns) {
    Prediction prediction = predict(unknowns);
    return addSpectrum(equations, prediction, unknowns)
        + addColour(equations, prediction, unknowns)
        + addDoubt(equations, unknowns);
  }

  /** How uncertain the colour of this coat is, as the mean of a squared CIEDE2000. */
  double variance(Equations.Uncertainty uncertainty, Unknowns unknowns) {
    double[] sum = new double[1];
    forEachColourRow(
        predict(unknowns),
        unknowns,
        (columns, slopes, off) -> sum[0] += uncertainty.variance(columns, slopes));
    return sum[0];
  }

  /** (ln factor / doubt)². */
  private double addDoubt(Equations equations, Unknowns unknowns) {
    if (doubtful == NOT_DOUBTFUL) {
      return 0;
    }
    int unknown = unknowns.loadFactor(doubtful);
    double off = unknowns.at(unknown) / loadDoubt;
    equations.add(new int[] {unknown}, new double[] {1 / loadDoubt}, off, 1);
    return off * off;
  }

  /** How many times its noted load the coat has. */
  double loadFactor(Unknowns unknowns) {
    return doubtful == NOT_DOUBTFUL ? 1 : Math.exp(unknowns.at(unknowns.loadFactor(doubtful)));
  }

  /** Slopes that belong to no paint: u, k2, gloss, and the load where it is in doubt. */
  private int ofTheCoat() {
    return doubtful == NOT_DOUBTFUL ? 3 : 4;
  }

  private double addSpectrum(Equations equations, Prediction prediction, Unknowns unknowns) {
    double squares = 0;
    int[] columns = new int[2 * paints.length + ofTheCoat()];
    for (int band = 0; band < BANDS; band++) {
      fillColumns(columns, unknowns, band);
      double root = Math.cbrt(prediction.reflectance[band] + DARK_OFFSET);
      double off = LIGHTNESS_STEP * (root - Math.cbrt(read[band] + DARK_OFFSET));
      double chain = LIGHTNESS_STEP / (3 * root * root);
      double[] slopes = prediction.slopes[band].clone();
      for (int i = 0; i < slopes.length; i++) {
        slopes[i] *= chain;
      }
      double weight = spectralWeight * BAND_WEIGHTS[band];
      equations.add(columns, slopes, off, weight);
      squares += weight * off * off;
    }
    return squares;
  }

  private double addColour(Equations equations, Prediction prediction, Unknowns unknowns) {
    double[] squares = new double[1];
    forEachColourRow(
        prediction,
        unknowns,
        (columns, slopes, off) -> {
          equations.add(columns, slopes, off, settings.colour());
          squares[0] += settings.colour() * off * off;
        });
    return squares[0];
  }

  private interface ColourRow {
    void take(int[] columns, double[] slopes, double off);
  }

  private void forEachColourRow(Prediction prediction, Unknowns unknowns, ColourRow taker) {
    ColourError.Rows rows = colour.of(prediction.reflectance);
    int perBand = 2 * paints.length;
    int shared = ofTheCoat();
    int[] columns = new int[perBand * BANDS + shared];
    int[] ofBand = new int[perBand + shared];
    for (int row = 0; row < 3; row++) {
      double[] slopes = new double[columns.length];
      double[] byBand = rows.slopes()[row];
      for (int band = 0; band < BANDS; band++) {
        fillColumns(ofBand, unknowns, band);
        for (int i = 0; i < perBand; i++) {
          columns[band * perBand + i] = ofBand[i];
          slopes[band * perBand + i] = byBand[band] * prediction.slopes[band][i];
        }
        for (int i = 0; i < shared; i++) {
          columns[perBand * BANDS + i] = ofBand[perBand + i];
          slopes[perBand * BANDS + i] += byBand[band] * prediction.slopes[band][perBand + i];
        }
      }
      taker.take(columns, slopes, rows.errors()[row]);
    }
  }

  private void fillColumns(int[] columns, Unknowns unknowns, int band) {
    for (int i = 0; i < paints.length; i++) {
      columns[2 * i] = unknowns.absorption(paints[i], band);
      columns[2 * i + 1] = unknowns.scattering(paints[i], band);
    }
    columns[2 * paints.length] = unknowns.face();
    columns[2 * paints.length + 1] = unknowns.inner();
    columns[2 * paints.length + 2] = unknowns.gloss();
    if (doubtful != NOT_DOUBTFUL) {
      columns[2 * paints.length + 3] = unknowns.loadFactor(doubtful);
    }
  }

  /** The coat and its slopes by ln K and ln S of each paint in the band, u, k2 and gloss. */
  private Prediction predict(Unknowns unknowns) {
    boolean faceKnown = settings.face().isPresent();
    Surface bare =
        settings.face().map(KnownFace::bare).orElseGet(unknowns::surface).below(darkestBelow);
    double k2 = bare.inner();
    double factor = loadFactor(unknowns);
    double wholeLoad = totalLoad * factor;
    double gloss =
        settings
            .face()
            .map(face -> knownGloss * factor)
            .orElseGet(() -> unknowns.at(unknowns.gloss()) * wholeLoad);
    double fade = Math.exp(-gloss);
    double k1 = bare.seen() * fade;
    double bareK1ByU = faceKnown ? 0 : unknowns.k1Slope();
    double bareK1ByGloss = faceKnown ? 0 : unknowns.k1ByGloss() * bare.seen();
    Prediction prediction = new Prediction(2 * paints.length + ofTheCoat());
    double[] k = new double[paints.length];
    double[] s = new double[paints.length];
    for (int band = 0; band < BANDS; band++) {
      double sumK = 0;
      double sumS = 0;
      for (int i = 0; i < paints.length; i++) {
        k[i] = factor * loads[i] * Math.exp(unknowns.at(unknowns.absorption(paints[i], band)));
        s[i] = factor * loads[i] * Math.exp(unknowns.at(unknowns.scattering(paints[i], band)));
        sumK += k[i];
        sumS += s[i];
      }
      double above = Math.max(0, ground[band] - bare.seen());
      double below = 1 - bare.seen() - k2 * (1 - ground[band]);
      CoatSlope coat = CoatSlope.at(sumK, sumS, above / below);
      double inside = coat.reflectance();
      double open = 1 - k2 * inside;
      double byInside = (1 - k1) * (1 - k2) / (open * open);
      prediction.reflectance[band] = k1 + (1 - k1) * (1 - k2) * inside / open;
      double[] slopes = prediction.slopes[band];
      for (int i = 0; i < paints.length; i++) {
        slopes[2 * i] = byInside * coat.byAbsorption() * k[i];
        slopes[2 * i + 1] = byInside * coat.byScattering() * s[i];
      }
      int at = 2 * paints.length;
      double byK1 = 1 - (1 - k2) * inside / open;
      if (!faceKnown) {
        double byGround = byInside * coat.byGround();
        double groundByK1 = above > 0 ? (above - below) / (below * below) : 0;
        double groundByK2 = above * (1 - ground[band]) / (below * below);
        double byBareK1 = byK1 * fade + byGround * groundByK1;
        slopes[at] = bareK1ByU * byBareK1;
        slopes[at + 1] = (1 - k1) * inside * (inside - 1) / (open * open) + byGround * groundByK2;
        slopes[at + 2] = bareK1ByGloss * byBareK1 - wholeLoad * k1 * byK1;
      }
      if (doubtful != NOT_DOUBTFUL) {
        slopes[at + 3] =
            byInside * (coat.byAbsorption() * sumK + coat.byScattering() * sumS)
                - gloss * k1 * byK1;
      }
    }
    return prediction;
  }

  private static double[] bandWeights() {
    double[] weights = new double[BANDS];
    for (int c = 0; c < 3; c++) {
      double[] row = Light.D65.weights(c);
      for (int band = 0; band < BANDS; band++) {
        weights[band] += row[band];
      }
    }
    double mean = Arrays.stream(weights).average().orElseThrow();
    return Spectrum.of(weights).map(w -> Math.max(LEAST_BAND_WEIGHT, w / mean)).toArray();
  }

  private static final class Prediction {
    final double[] reflectance = new double[BANDS];
    final double[][] slopes;

    Prediction(int perBand) {
      slopes = new double[BANDS][perBand];
    }
  }
}
