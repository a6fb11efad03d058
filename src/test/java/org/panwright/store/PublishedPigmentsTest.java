package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.panwright.colour.Light;
import org.panwright.colour.LinearSrgb;
import org.panwright.colour.Oklab;
import org.panwright.colour.Oklch;
import org.panwright.mixing.Coat;
import org.panwright.mixing.Film;
import org.panwright.paint.Optics;
import org.panwright.paint.Paper;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;

/**
 * The library's pigments beside those of Curtis et al., "Computer-Generated Watercolor", SIGGRAPH
 * 1997, figure 5: K and S in red, green and blue, which its authors worked out from colours picked
 * by eye over white and over black. So hues may differ by a step or two of the colour circle.
 *
 * <p>Left out: Hooker's green (a blend that differs by maker), brilliant orange (its S is passed on
 * in two versions), interference lilac (no pigment of the library).
 */
class PublishedPigmentsTest {
  private static final double MASSTONE_HUE_DEG = 30;
  private static final double TINT_HUE_DEG = 36;
  private static final double LIGHTNESS_STEP = 0.1;
  private static final List<String> TABLE =
      List.of(
          "PV19 rose,        0.22, 1.47, 0.57, 0.05,  0.003, 0.03",
          "PR101 Indian red, 0.46, 1.07, 1.50, 1.28,  0.38,  0.21",
          "PY35,             0.10, 0.36, 3.45, 0.97,  0.65,  0.007",
          "PB35,             1.52, 0.32, 0.25, 0.06,  0.26,  0.40",
          "PBr7 burnt umber, 0.74, 1.54, 2.10, 0.09,  0.09,  0.004",
          "PR108,            0.14, 1.08, 1.68, 0.77,  0.015, 0.018",
          "PY97,             0.06, 0.21, 1.78, 0.50,  0.88,  0.009",
          "PG7,              1.55, 0.47, 0.63, 0.01,  0.05,  0.035",
          "PB29,             0.86, 0.86, 0.06, 0.005, 0.005, 0.09");

  static List<Row> rows() {
    return TABLE.stream().map(Row::of).toList();
  }

  /** One pigment of the table. */
  record Row(String pigment, List<Double> k, List<Double> s) {
    static Row of(String line) {
      List<String> cells = Pattern.compile("\\s*,\\s*").splitAsStream(line).toList();
      List<Double> figures = cells.stream().skip(1).map(Double::valueOf).toList();
      return new Row(cells.get(0), figures.subList(0, 3), figures.subList(3, 6));
    }

    /** The published layer of a thickness over ideal white. */
    Oklch layer(double thickness) {
      double[] r = new double[3];
      for (int i = 0; i < 3; i++) {
        r[i] = Coat.reflectance(k.get(i), s.get(i), thickness, 1);
      }
      return Oklab.ofD65(new LinearSrgb(r[0], r[1], r[2]).toXyzD65()).toOklch();
    }

    double scattering() {
      return (s.get(0) + s.get(1) + s.get(2)) / 3;
    }

    Optics library() {
      return PigmentLibraryReader.read()
          .estimate(List.of(new PigmentShare(PigmentName.parse(pigment), 1)));
    }

    @Override
    public String toString() {
      return pigment;
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void aCoatAsLightAsThePublishedOneHasItsHue(Row row) {
    assertThat(turned(row, 1)).as("masstone").isLessThan(MASSTONE_HUE_DEG);
    assertThat(turned(row, 0.25)).as("quarter of it").isLessThan(TINT_HUE_DEG);
  }

  /** Relative strength: how much lighter a coat gets when three quarters of it are taken away. */
  @ParameterizedTest
  @CsvSource({"PV19 rose", "PR101 Indian red", "PB35", "PBr7 burnt umber", "PR108", "PG7", "PB29"})
  void thinnedToAQuarterItGetsLighterByAsMuch(String pigment) {
    Row row = rows().stream().filter(r -> r.pigment().equals(pigment)).findFirst().orElseThrow();
    double load = loadOfLightness(row.library(), row.layer(1).l());
    double published = row.layer(0.25).l() - row.layer(1).l();
    double ours = coat(row.library(), load / 4).l() - coat(row.library(), load).l();
    assertThat(ours).isCloseTo(published, within(LIGHTNESS_STEP));
  }

  @Test
  void whatCoversInTheTableCoversInTheLibrary() {
    List<Double> published = new ArrayList<>();
    List<Double> ours = new ArrayList<>();
    for (Row row : rows()) {
      published.add(row.scattering());
      ours.add(row.library().scattering().at(17));
    }
    assertThat(rankCorrelation(published, ours)).isGreaterThan(0.75);
  }

  private static double turned(Row row, double thickness) {
    Oklch published = row.layer(thickness);
    Optics library = row.library();
    Oklch ours = coat(library, loadOfLightness(library, published.l()));
    return Math.abs((ours.hueDeg() - published.hueDeg() + 540) % 360 - 180);
  }

  private static Oklch coat(Optics optics, double load) {
    return Oklab.ofD65(Light.D65.xyz(Film.of(optics, load).dry(Paper.WHITE))).toOklch();
  }

  private static double loadOfLightness(Optics optics, double lightness) {
    double thin = Math.log(1e-3);
    double thick = Math.log(4);
    for (int i = 0; i < 60; i++) {
      double middle = (thin + thick) / 2;
      if (coat(optics, Math.exp(middle)).l() > lightness) {
        thin = middle;
      } else {
        thick = middle;
      }
    }
    return Math.exp(thick);
  }

  /** Spearman's: 1 − 6 Σ d² / (n (n² − 1)). */
  private static double rankCorrelation(List<Double> first, List<Double> second) {
    int n = first.size();
    double squares =
        IntStream.range(0, n)
            .mapToDouble(i -> rank(first, i) - rank(second, i))
            .map(d -> d * d)
            .sum();
    return 1 - 6 * squares / (n * (n * (double) n - 1));
  }

  private static long rank(List<Double> values, int of) {
    return values.stream().filter(value -> value < values.get(of)).count();
  }
}
