package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.panwright.store.PigmentPractice.coat;
import static org.panwright.store.PigmentPractice.contrastRatio;
import static org.panwright.store.PigmentPractice.greyest;
import static org.panwright.store.PigmentPractice.mix;
import static org.panwright.store.PigmentPractice.optics;
import static org.panwright.store.PigmentPractice.overBlack;
import static org.panwright.store.PigmentPractice.strength;
import static org.panwright.store.PigmentPractice.tintLoad;

import java.util.Collection;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.panwright.colour.Lab;
import org.panwright.paint.HueFamily;
import org.panwright.paint.Pigment;
import org.panwright.paint.Wash;

/**
 * The library against what watercolour painters know of their pigments.
 *
 * <p>Every bound here is common practice of the trade unless another source is named: directions
 * and wide ranges, not figures of our own. Hue and chroma are CIELAB under D65 on white watercolour
 * paper.
 */
class PigmentPracticeTest {
  private static final List<HueFamily> NEUTRAL =
      List.of(HueFamily.BLACK, HueFamily.GREY, HueFamily.WHITE);

  // Hue bounds of painters' families: common practice. Hues beyond 360 wrap round the red.
  @ParameterizedTest(name = "{0}: hue {1}–{2}, chroma {3}–{4}")
  @CsvSource({
    "YELLOW,        68, 106, 40, 110",
    "ORANGE,        36,  66, 50, 110",
    "RED,           14,  42, 35, 100",
    "ROSE,         330, 382, 18, 100",
    "VIOLET,       285, 338, 18, 100",
    "BLUE,         225, 297, 12, 100",
    "TURQUOISE,    185, 262, 12, 100",
    "GREEN,        115, 190,  8, 100",
    "YELLOW_GREEN,  80, 135, 30, 100",
    "EARTH_YELLOW,  60,  92, 12,  80",
    "EARTH_ORANGE,  38,  62, 12,  70",
    "EARTH_RED,     15,  46, 12,  62",
    "BROWN,         40,  92,  8,  40"
  })
  void masstonesLieInTheirHueFamily(
      HueFamily family, double from, double to, double leastChroma, double mostChroma) {
    assertThat(of(family))
        .isNotEmpty()
        .allSatisfy(
            pigment -> {
              Lab masstone = coat(pigment.name().toString(), 1);
              double hue = masstone.hueDeg();
              assertThat(to > 360 && hue < 180 ? hue + 360 : hue).isBetween(from, to);
              assertThat(masstone.chroma()).isBetween(leastChroma, mostChroma);
            });
  }

  @ParameterizedTest(name = "{0}: L* {1}–{2}, chroma below {3}")
  @CsvSource({"BLACK, 0, 27, 8", "WHITE, 80, 100, 18"})
  void neutralMasstonesAreDarkOrLight(
      HueFamily family, double darkest, double lightest, double chroma) {
    assertThat(of(family))
        .isNotEmpty()
        .allSatisfy(
            pigment -> {
              Lab masstone = coat(pigment.name().toString(), 1);
              assertThat(masstone.l()).isBetween(darkest, lightest);
              assertThat(masstone.chroma()).isLessThan(chroma);
            });
  }

  @ParameterizedTest
  @MethodSource("everyPigmentButWhites")
  void morePaintIsNeverLighter(Pigment pigment) {
    double before = 100;
    for (double load = 0.02; load < 3; load *= 1.24) {
      double lightness = coat(pigment.name().toString(), load).l();
      assertThat(lightness).as("at load " + load).isLessThanOrEqualTo(before + 1e-9);
      before = lightness;
    }
  }

  // A transparent stroke vanishes on a black line. Contrast ratio as in ASTM D2805.
  @ParameterizedTest
  @MethodSource("everyPigmentButNeutrals")
  void transparentPaintsVanishOverBlackAndOpaqueOnesCover(Pigment pigment) {
    String name = pigment.name().toString();
    double ratio = contrastRatio(name);
    switch (pigment.handling().transparency()) {
      case TRANSPARENT -> assertThat(overBlack(name)).isLessThan(0.03);
      case SEMI_TRANSPARENT -> assertThat(ratio).isBetween(0.10, 0.33);
      case SEMI_OPAQUE -> assertThat(ratio).isBetween(0.30, 0.50);
      case OPAQUE -> assertThat(ratio).isGreaterThan(0.55);
    }
  }

  /**
   * Strength as stated against strength as painted: one common factor within half as much again.
   */
  @ParameterizedTest
  @MethodSource("everyPigmentButWhites")
  void paintedStrengthFollowsTheStatedOne(Pigment pigment) {
    double common = strength("PB28");
    assertThat(strength(pigment.name().toString()) / pigment.strength() / common)
        .isBetween(1 / 2.25, 2.25);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '>',
      value = {
        "PB15:3 > PY154 > PB28 > PV14 > PG23",
        "PBk7 > PBk9 > PB29",
        "PB27 > PB28 > PG18",
        "PV23 > PV16",
        "PR254 > PR108",
        "PB60 > PB35"
      })
  void strengthsStandInTheTradesOrder(org.junit.jupiter.params.aggregator.ArgumentsAccessor order) {
    for (int i = 1; i < order.size(); i++) {
      assertThat(strength(order.getString(i - 1)))
          .as(order.getString(i - 1) + " over " + order.getString(i))
          .isGreaterThan(strength(order.getString(i)));
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Wash.class,
      names = {"MILK", "CREAM"})
  void lemonAndPhthaloBlueGiveABrightGreenAndDeepYellowAndUltramarineAnOlive(Wash wash) {
    Lab bright = mix("PY175", 1, "PB15:3", 1, wash);
    Lab olive = mix("PY83", 1, "PB29", 1, wash);
    assertThat(bright.hueDeg()).isBetween(130.0, 165.0);
    assertThat(bright.chroma()).isGreaterThan(40);
    assertThat(olive.hueDeg()).isBetween(95.0, 150.0);
    assertThat(olive.chroma()).isLessThan(0.6 * bright.chroma());
  }

  @ParameterizedTest
  @EnumSource(
      value = Wash.class,
      names = {"MILK", "CREAM"})
  void magentaAndPhthaloBlueGiveACleanVioletAndScarletAndUltramarineADullOne(Wash wash) {
    Lab clean = mix("PR122", 1, "PB15:3", 1, wash);
    assertThat(clean.hueDeg()).isBetween(270.0, 316.0);
    assertThat(clean.chroma()).isGreaterThan(38);
    assertThat(mix("PR254", 1, "PB29", 1, wash).chroma()).isLessThan(0.6 * clean.chroma());
  }

  @ParameterizedTest
  @EnumSource(
      value = Wash.class,
      names = {"MILK", "CREAM"})
  void ochreAndUltramarineGiveAGreyedGreen(Wash wash) {
    assertThat(mix("PY43", 1.5, "PB29", 1, wash).hueDeg()).isBetween(100.0, 175.0);
    for (double ochre : List.of(1.0, 1.5, 2.0)) {
      assertThat(mix("PY43", ochre, "PB29", 1, wash).chroma()).isLessThan(25);
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Wash.class,
      names = {"MILK", "CREAM"})
  void dioxazineVioletAndGreenGoldAreDullTogether(Wash wash) {
    assertThat(mix("PV23", 1, "PY129", 1, wash).chroma()).isLessThan(16);
  }

  @ParameterizedTest(name = "{0} with {1}")
  @CsvSource({
    "PB29, PBr7 burnt sienna, 8",
    "PR254, PG7, 8",
    "PG18, PR177, 8",
    "PG18, PR264, 8",
    "PG7, PR179, 8",
    "PR108, PB36, 8",
    "PB15:3, PO48, 14",
    "PB15:3, PR101 transparent, 14"
  })
  void complementsMeetInGrey(String first, String second, double chroma) {
    assertThat(greyest(first, second, Wash.CREAM)).isLessThan(chroma);
    assertThat(greyest(first, second, Wash.BUTTER)).isLessThan(chroma);
  }

  @Test
  void ultramarineAndBurntSiennaMakeADark() {
    assertThat(mix("PB29", 1, "PBr7 burnt sienna", 1, Wash.BUTTER).l()).isLessThan(29);
  }

  // Green overprints lie near chroma 45 on uncoated and near 70 on coated paper (ISO 12647-2, from
  // memory); no watercolour mixture on rough paper goes much beyond.
  @ParameterizedTest
  @CsvSource({"PY3, PB15:3", "PY154, PB15:3", "PY154, PG7", "PY175, PG36"})
  void yellowsMakeNoGreensBrighterThanPrintingInks(String yellow, String other) {
    for (double parts = 0.25; parts <= 6; parts *= 1.3) {
      Lab green = mix(yellow, parts, other, 1, Wash.CREAM);
      if (green.hueDeg() > 135 && green.hueDeg() < 165) {
        assertThat(green.chroma()).isLessThan(75);
      }
    }
  }

  @ParameterizedTest(name = "{0} shifts by {1} degrees or more")
  @CsvSource({"PB29, -5", "PR122, -5", "PY129, 12", "PY150, 12", "PO49, 12"})
  void tintsShiftTheirHueTheKnownWay(String pigment, double shift) {
    double turned = coat(pigment, tintLoad(pigment)).hueDeg() - coat(pigment, 1).hueDeg();
    assertThat(turned * Math.signum(shift)).isGreaterThan(Math.abs(shift));
  }

  @ParameterizedTest
  @CsvSource({"PY35", "PY37"})
  void cadmiumYellowsScatterMoreThanOrganicOnes(String cadmium) {
    int green = 17;
    for (String organic : List.of("PY3", "PY74", "PY97", "PY151", "PY154", "PY175", "PY65")) {
      assertThat(optics(cadmium).scattering().at(green))
          .isGreaterThan(optics(organic).scattering().at(green));
    }
  }

  static Collection<Pigment> everyPigmentButWhites() {
    return PigmentPractice.LIBRARY.pigments().stream()
        .filter(pigment -> pigment.family() != HueFamily.WHITE)
        .toList();
  }

  static Collection<Pigment> everyPigmentButNeutrals() {
    return PigmentPractice.LIBRARY.pigments().stream()
        .filter(pigment -> !NEUTRAL.contains(pigment.family()))
        .toList();
  }

  private static Collection<Pigment> of(HueFamily family) {
    return PigmentPractice.LIBRARY.pigments().stream()
        .filter(pigment -> pigment.family() == family)
        .toList();
  }
}
