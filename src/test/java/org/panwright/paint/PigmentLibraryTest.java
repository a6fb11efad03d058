package org.panwright.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.panwright.Tolerance;
import org.panwright.colour.Bands;

class PigmentLibraryTest {
  private static final Pigment BLUE = pigment("PB29", "", 600, 8);
  private static final Pigment RED = pigment("PR101", "red", 450, 12);
  private static final Pigment CLEAR = pigment("PR101", "transparent", 470, 5);
  private static final PigmentLibrary LIBRARY = new PigmentLibrary(List.of(CLEAR, BLUE, RED));

  private static Pigment pigment(String code, String variant, double atNm, double depth) {
    Map<Pigment.Facts, Evidence> evidence = new EnumMap<>(Pigment.Facts.class);
    for (Pigment.Facts facts : Pigment.Facts.values()) {
      evidence.put(facts, new Evidence("made up", "", Evidence.Confidence.C));
    }
    return new Pigment(
        new PigmentName(code, variant),
        "made up",
        "",
        HueFamily.BLUE,
        new Handling(Transparency.TRANSPARENT, Staining.LOW, Granulation.NONE, Lightfastness.I),
        1,
        List.of(),
        false,
        "",
        new AbsorptionShape(List.of(new AbsorptionShape.Band(atNm, 80, 1)), depth),
        new ScatteringShape(0.1, 0),
        evidence);
  }

  @Test
  void pigmentsAreFoundByNameAndKind() {
    assertThat(LIBRARY.find(PigmentName.of("PB29"))).contains(BLUE);
    assertThat(LIBRARY.find(PigmentName.parse("PR101 transparent"))).contains(CLEAR);
    assertThat(LIBRARY.find(PigmentName.of("PR101"))).contains(RED);
    assertThat(LIBRARY.find(PigmentName.parse("PR101 purple"))).isEmpty();
    assertThat(LIBRARY.find(PigmentName.of("PY3"))).isEmpty();
    assertThat(LIBRARY.pigments()).containsExactly(BLUE, RED, CLEAR);
  }

  @Test
  void oneNameTwiceIsRefused() {
    assertThatThrownBy(() -> new PigmentLibrary(List.of(BLUE, BLUE)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("PB29");
  }

  @Test
  void estimateOfOnePigmentIsItsOwnShape() {
    Optics optics = LIBRARY.estimate(List.of(new PigmentShare(BLUE.name(), 1)));

    assertThat(optics.absorption()).isEqualTo(BLUE.absorption().absorption());
    assertThat(optics.source()).isEqualTo(OpticsSource.PIGMENTS);
    assertThat(optics.expectedError()).isEqualTo(PigmentLibrary.EXPECTED_ERROR);
  }

  @Test
  void estimateOfSeveralIsWeightedByShareAndOrderIsNothing() {
    PigmentShare quarter = new PigmentShare(BLUE.name(), 0.25);
    PigmentShare rest = new PigmentShare(RED.name(), 0.75);
    Optics one = LIBRARY.estimate(List.of(quarter, rest));
    Optics other = LIBRARY.estimate(List.of(rest, quarter));

    for (int band = 0; band < Bands.COUNT; band++) {
      double expected =
          0.25 * BLUE.absorption().absorption().at(band)
              + 0.75 * RED.absorption().absorption().at(band);
      assertThat(one.absorption().at(band)).isCloseTo(expected, Tolerance.ROUND_TRIP);
      assertThat(other.absorption().at(band)).isCloseTo(expected, Tolerance.ROUND_TRIP);
    }
  }

  @Test
  void factGroupWithoutSourceIsRefused() {
    assertThatThrownBy(
            () ->
                new Pigment(
                    BLUE.name(),
                    "made up",
                    "",
                    HueFamily.BLUE,
                    BLUE.handling(),
                    1,
                    List.of(),
                    false,
                    "",
                    BLUE.absorption(),
                    BLUE.scattering(),
                    Map.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("names no source");
  }
}
