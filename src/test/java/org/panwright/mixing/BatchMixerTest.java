package org.panwright.mixing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.panwright.Tolerance;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;
import org.panwright.colour.Xyz;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Paper;

class BatchMixerTest {
  @ParameterizedTest
  @EnumSource
  void coloursAreThoseOfThePlainFilm(Light light) {
    Random random = new Random(42);
    OpticsTable table = randomTable(random, 12);
    BatchMixer batch = new BatchMixer(table, light);
    for (int i = 0; i < 500; i++) {
      double factor = Math.pow(10, -3 * random.nextDouble());
      batch.clear();
      Film film = Film.NONE;
      for (int part = 0; part < 1 + i % 4; part++) {
        int paint = random.nextInt(table.size());
        double load = random.nextDouble();
        batch.add(paint, load);
        film = film.plus(table.optics(paint), load);
      }
      double[] lab = new double[3];
      batch.writeLab(factor, lab, 0);
      double[] xyz = new double[3];
      batch.writeXyz(factor, xyz, 0);

      Xyz expected = light.xyz(film.times(factor).dry(Paper.WHITE));
      assertThat(xyz[0]).isCloseTo(expected.x(), Tolerance.FAST_REFLECTANCE);
      assertThat(xyz[1]).isCloseTo(expected.y(), Tolerance.FAST_REFLECTANCE);
      assertThat(xyz[2]).isCloseTo(expected.z(), Tolerance.FAST_REFLECTANCE);
      assertThat(lab[0]).isCloseTo(expected.toLab(light.white()).l(), Tolerance.FAST_LAB);
      assertThat(lab[1]).isCloseTo(expected.toLab(light.white()).a(), Tolerance.FAST_LAB);
      assertThat(lab[2]).isCloseTo(expected.toLab(light.white()).b(), Tolerance.FAST_LAB);
    }
  }

  @Test
  void noPaintIsPaper() {
    BatchMixer batch = new BatchMixer(Samples.TABLE, Light.D65);
    double[] xyz = new double[3];
    batch.writeXyz(1, xyz, 0);

    assertThat(xyz[1])
        .isCloseTo(Light.D65.xyz(Paper.WHITE.reflectance()).y(), Tolerance.FAST_REFLECTANCE);
  }

  @Test
  void noFactorIsPaper() {
    BatchMixer batch = new BatchMixer(Samples.TABLE, Light.D65);
    batch.add(2, 1);
    double[] xyz = new double[3];
    batch.writeXyz(0, xyz, 0);

    assertThat(xyz[1])
        .isCloseTo(Light.D65.xyz(Paper.WHITE.reflectance()).y(), Tolerance.FAST_REFLECTANCE);
  }

  @Test
  void oneMixIsForgottenBeforeTheNext() {
    BatchMixer batch = new BatchMixer(Samples.TABLE, Light.D65);
    double[] fresh = new double[3];
    batch.add(0, 0.3);
    batch.writeLab(1, fresh, 0);
    batch.add(4, 1);
    batch.clear();
    batch.add(0, 0.3);
    double[] again = new double[3];
    batch.writeLab(1, again, 0);

    assertThat(again).containsExactly(fresh);
  }

  @Test
  void onlyThreeNumbersAreWritten() {
    BatchMixer batch = new BatchMixer(Samples.TABLE, Light.D65);
    batch.add(1, 0.5);
    double[] out = new double[5];
    Arrays.fill(out, -1);
    batch.writeLab(1, out, 1);

    assertThat(out[0]).isEqualTo(-1);
    assertThat(out[4]).isEqualTo(-1);
    assertThat(out[1]).isBetween(0.0, 100.0);
  }

  private static OpticsTable randomTable(Random random, int size) {
    List<String> ids = new ArrayList<>();
    List<Optics> optics = new ArrayList<>();
    for (int paint = 0; paint < size; paint++) {
      ids.add("paint " + paint);
      optics.add(
          new Optics(
              randomBands(random),
              randomBands(random),
              paint % 3 == 0 ? 0 : 2 * random.nextDouble(),
              OpticsSource.SPECTRA,
              5));
    }
    return OpticsTable.of(ids, optics, Paper.WHITE);
  }

  /** Bands over eleven powers of ten and a tenth of them exactly 0. */
  private static Spectrum randomBands(Random random) {
    return Spectrum.ofBands(
        band -> random.nextInt(10) == 0 ? 0 : Math.pow(10, 3 - 11 * random.nextDouble()));
  }
}
