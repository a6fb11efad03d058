package org.panwright.swatch.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.panwright.colour.LinearSrgb;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.squares.Equations;

/**
 * How bare paper would look at any place of a sheet: light and camera together, as a smooth surface
 * through the bare spots.
 *
 * <pre>ln P(u, v) = c₀ + c₁ u + c₂ v + c₃ u² + c₄ u v + c₅ v²   for each of red, green, blue</pre>
 *
 * <p>u and v run from −1 to 1 over the spots. Fewer than {@value #FOR_CURVE} spots give a plane,
 * fewer than {@value #FOR_PLANE} a constant. Spots that paint has run into are darker than the
 * surface; they lose their weight step by step (iteratively reweighted least squares). The first
 * rounds minimise absolute deviations, weight 1 / |deviation|, which a third of soiled spots does
 * not draw away (E. J. Schlossmacher, Journal of the American Statistical Association 68, 1973);
 * the others use Tukey's biweight (A. E. Beaton and J. W. Tukey, Technometrics 16, 1974).
 */
final class PaperField {
  private static final int FOR_CURVE = 12;
  private static final int FOR_PLANE = 5;
  private static final int ROUGH_ROUNDS = 10;
  private static final int ROUNDS = 20;
  private static final double BIWEIGHT = 4.7;

  /** Spots in one line leave a curve open; this holds it at nought. */
  private static final double RIDGE = 1e-9;

  private static final double LEAST_SPREAD = 0.004;
  private static final double DARKEST = 0.004;

  private final double[][] curves;
  private final double midX;
  private final double midY;
  private final double half;
  private final double used;
  private final double spread;

  private PaperField(
      double[][] curves, double midX, double midY, double half, double used, double spread) {
    this.curves = curves;
    this.midX = midX;
    this.midY = midY;
    this.half = half;
    this.used = used;
    this.spread = spread;
  }

  /** The surface through spots; empty if none of them is lighter than black. */
  static Optional<PaperField> through(List<SpotColour> spots) {
    List<SpotColour> lit = spots.stream().filter(PaperField::isLit).toList();
    if (lit.isEmpty()) {
      return Optional.empty();
    }
    double left = lit.stream().mapToDouble(s -> s.middle().x()).min().orElseThrow();
    double right = lit.stream().mapToDouble(s -> s.middle().x()).max().orElseThrow();
    double top = lit.stream().mapToDouble(s -> s.middle().y()).min().orElseThrow();
    double bottom = lit.stream().mapToDouble(s -> s.middle().y()).max().orElseThrow();
    double half = Math.max(1e-6, Math.max(right - left, bottom - top) / 2);
    double midX = (left + right) / 2;
    double midY = (top + bottom) / 2;
    int terms = lit.size() >= FOR_CURVE ? 6 : lit.size() >= FOR_PLANE ? 3 : 1;
    double[][] rows = new double[lit.size()][];
    for (int i = 0; i < rows.length; i++) {
      Point p = lit.get(i).middle();
      rows[i] = Arrays.copyOf(terms((p.x() - midX) / half, (p.y() - midY) / half), terms);
    }
    double[] weights = new double[rows.length];
    Arrays.fill(weights, 1);
    double[][] curves = new double[3][6];
    double spread = 0;
    for (int round = 0; round < ROUNDS; round++) {
      double[] worst = new double[rows.length];
      for (int c = 0; c < 3; c++) {
        double[] logs = logs(lit, c);
        curves[c] = Arrays.copyOf(nearest(rows, logs, weights), 6);
        for (int i = 0; i < rows.length; i++) {
          double off = Math.abs(logs[i] - dot(curves[c], rows[i]));
          worst[i] = Math.max(worst[i], off);
        }
      }
      spread = Math.max(LEAST_SPREAD, 1.4826 * median(worst));
      for (int i = 0; i < weights.length; i++) {
        weights[i] =
            round < ROUGH_ROUNDS
                ? LEAST_SPREAD / Math.max(LEAST_SPREAD, worst[i])
                : biweight(worst[i] / (BIWEIGHT * spread));
      }
    }
    double used = Arrays.stream(weights).filter(w -> w > 0.1).count();
    return Optional.of(new PaperField(curves, midX, midY, half, used / spots.size(), spread));
  }

  /** The coefficients c that minimise Σ wᵢ (rowᵢ · c − valueᵢ)². */
  private static double[] nearest(double[][] rows, double[] values, double[] weights) {
    int[] all = IntStream.range(0, rows[0].length).toArray();
    Equations equations = new Equations(all.length);
    for (int i = 0; i < rows.length; i++) {
      equations.add(all, rows[i], -values[i], weights[i]);
    }
    for (int unknown : all) {
      equations.addToDiagonal(unknown, RIDGE);
    }
    return equations.step(RIDGE).orElseThrow();
  }

  private static double biweight(double u) {
    return u >= 1 ? 1e-6 : (1 - u * u) * (1 - u * u);
  }

  /** How bare paper would look at a place. */
  LinearSrgb at(Point p) {
    double[] terms = terms((p.x() - midX) / half, (p.y() - midY) / half);
    return new LinearSrgb(
        Math.exp(dot(curves[0], terms)),
        Math.exp(dot(curves[1], terms)),
        Math.exp(dot(curves[2], terms)));
  }

  /** The share of the spots that lie on the surface. */
  double used() {
    return used;
  }

  /** The robust deviation of the spots from the surface, in ln: 0.01 is one per cent. */
  double spread() {
    return spread;
  }

  private static boolean isLit(SpotColour spot) {
    LinearSrgb c = spot.colour();
    return Math.min(c.red(), Math.min(c.green(), c.blue())) > DARKEST;
  }

  private static double[] logs(List<SpotColour> spots, int channel) {
    List<Double> logs = new ArrayList<>();
    for (SpotColour spot : spots) {
      LinearSrgb c = spot.colour();
      logs.add(Math.log(channel == 0 ? c.red() : channel == 1 ? c.green() : c.blue()));
    }
    return logs.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static double[] terms(double u, double v) {
    return new double[] {1, u, v, u * u, u * v, v * v};
  }

  private static double dot(double[] coefficients, double[] terms) {
    double sum = 0;
    for (int i = 0; i < terms.length; i++) {
      sum += coefficients[i] * terms[i];
    }
    return sum;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
