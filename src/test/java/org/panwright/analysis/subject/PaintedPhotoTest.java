package org.panwright.analysis.subject;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.Lineups;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.colour.Srgb;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Paper;
import org.panwright.paint.WashStrengths;

class PaintedPhotoTest {
  private static final List<String> IDS =
      List.of("PY175", "PY65", "PR254", "PV19", "PB29", "PB15:3", "PY43", "PBr7");
  private static final OpticsTable TABLE =
      OpticsTable.of(Lineups.paints(IDS.toArray(new String[0])), Lineups.LIBRARY, Paper.WHITE);
  private static final WashStrengths WASHES = WashStrengths.USUAL;
  private static final float[] CLOUD = ReachCloud.of(TABLE, IDS, WASHES, () -> false);
  private static final NearestColour NEAREST = new NearestColour(CLOUD);
  private static final PaintedPhoto PHOTO = PaintedPhoto.with(TABLE, IDS, WASHES, () -> false);

  @Test
  void theTreeFindsTheNearestByBruteForce() {
    Random random = new Random(5);
    for (int i = 0; i < 300; i++) {
      double l = random.nextDouble();
      double a = 0.6 * random.nextDouble() - 0.3;
      double b = 0.6 * random.nextDouble() - 0.3;
      int found = NEAREST.nearest(l, a, b);
      double away = squared(l - NEAREST.l(found), a - NEAREST.a(found), b - NEAREST.b(found));
      assertThat(away).isCloseTo(least(l, a, b), within(1e-6));
    }
  }

  /** Every mix of the net lies within a cell's diagonal of a colour of the cloud. */
  @Test
  void theCloudHoldsTheNet() {
    Mixer mixer = new Mixer(TABLE);
    double diagonal = squared(ReachCloud.L_EDGE, ReachCloud.AB_EDGE, ReachCloud.AB_EDGE);
    for (Recipe recipe :
        List.of(
            Recipe.of("PB29"),
            Recipe.of("PY65", 1, "PB15:3", 3),
            Recipe.of("PV19", 3, "PBr7", 2))) {
      for (double load : new double[] {1, 0.55, 0.25, 0.1, 0.04}) {
        Oklab mix = Oklab.ofD65(Light.D65.xyz(mixer.dry(recipe, load)));
        assertThat(least(mix.l(), mix.a(), mix.b())).isLessThan(3 * diagonal);
      }
    }
  }

  /** Colours that can be mixed stay what they are, within what a wash varies by. */
  @Test
  void reachableColoursStay() {
    Mixer mixer = new Mixer(TABLE);
    for (Recipe recipe :
        List.of(Recipe.of("PB29"), Recipe.of("PY43"), Recipe.of("PV19", 1, "PBr7", 1))) {
      Srgb shown =
          org.panwright.colour.GamutFit.ofXyzD65(mixer.lab(recipe, 0.25).toXyz(Light.D65.white()))
              .shown();
      int rgb = shown.redByte() << 16 | shown.greenByte() << 8 | shown.blueByte();
      assertThat(Difference.ciede2000(lab(rgb), lab(PHOTO.paint(rgb)))).isLessThan(2.5);
    }
  }

  /** Against the nearest of all colours of the cloud: the lookup costs little. */
  @Test
  void theLookupIsNearlyAsNearAsTheNearest() {
    Random random = new Random(8);
    double excess = 0;
    int pixels = 400;
    for (int i = 0; i < pixels; i++) {
      int rgb = random.nextInt(1 << 24);
      Oklab colour = Oklab.ofD65(srgb(rgb).toXyzD65());
      int nearest = NEAREST.nearest(colour.l(), colour.a(), colour.b());
      Lab best =
          Lab.of(
              new Oklab(NEAREST.l(nearest), NEAREST.a(nearest), NEAREST.b(nearest)).toXyzD65(),
              Light.D65.white());
      excess +=
          Difference.ciede2000(lab(rgb), lab(PHOTO.paint(rgb)))
              - Difference.ciede2000(lab(rgb), best);
    }
    assertThat(excess / pixels).isLessThan(1);
  }

  @Test
  void withoutAnyPaintThereIsOnlyPaper() {
    PaintedPhoto bare = PaintedPhoto.with(TABLE, List.of(), WASHES, () -> false);
    assertThat(bare.colours()).isEqualTo(1);
    Lab paper = Light.D65.lab(Paper.WHITE.reflectance());
    for (int rgb : new int[] {0, 0xff0000, 0x123456, 0xffffff}) {
      assertThat(Difference.ciede2000(lab(bare.paint(rgb)), paper)).isLessThan(1);
    }
  }

  @Test
  void oneBluePaintsOnlyBluesAndPaper() {
    PaintedPhoto blue = PaintedPhoto.with(TABLE, List.of("PB29"), WASHES, () -> false);
    int red = blue.paint(0xc02020);
    assertThat(red & 255).isGreaterThanOrEqualTo(red >> 16 & 255);
  }

  @Test
  void everyPixelIsPaintedAndProgressRisesToOne() {
    int[] pixels = new Random(2).ints(50 * 37L, 0, 1 << 24).toArray();
    List<Double> progress = new ArrayList<>();
    int[] painted = PHOTO.paint(pixels, 50, progress::add, () -> false);
    assertThat(painted).hasSize(pixels.length);
    for (int i = 0; i < pixels.length; i++) {
      assertThat(painted[i]).isEqualTo(PHOTO.paint(pixels[i]));
    }
    assertThat(progress).isSorted().endsWith(1.0);
  }

  @Test
  void stopsWhenNoLongerWanted() {
    assertThatThrownBy(() -> PHOTO.paint(new int[100], 10, done -> {}, () -> true))
        .isInstanceOf(CancellationException.class);
  }

  private static double least(double l, double a, double b) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < CLOUD.length; i += 3) {
      least = Math.min(least, squared(l - CLOUD[i], a - CLOUD[i + 1], b - CLOUD[i + 2]));
    }
    return least;
  }

  private static double squared(double l, double a, double b) {
    return l * l + 4 * a * a + 4 * b * b;
  }

  private static Srgb srgb(int rgb) {
    return Srgb.ofBytes(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255);
  }

  private static Lab lab(int rgb) {
    return Lab.of(srgb(rgb).toXyzD65(), Light.D65.white());
  }
}
