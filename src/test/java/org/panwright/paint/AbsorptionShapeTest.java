package org.panwright.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.Tolerance;
import org.panwright.colour.Bands;
import org.panwright.colour.Spectrum;
import org.panwright.paint.AbsorptionShape.Band;
import org.panwright.paint.AbsorptionShape.Edge;
import org.panwright.paint.AbsorptionShape.Flat;

class AbsorptionShapeTest {
  @Test
  void highestVisibleAbsorptionIsTheMasstoneDepth() {
    Spectrum k =
        new AbsorptionShape(List.of(new Band(610, 80, 3), new Flat(0.1)), 7.5).absorption();
    double highest = 0;
    for (int band = 0; band < Bands.COUNT; band++) {
      int nm = Bands.wavelengthNm(band);
      if (nm >= 400 && nm <= 700) {
        highest = Math.max(highest, k.at(band));
      }
    }

    assertThat(highest).isCloseTo(7.5, Tolerance.ROUND_TRIP);
    assertThat(k.at(23)).isCloseTo(7.5, Tolerance.ROUND_TRIP);
  }

  @Test
  void onlyTheProportionsOfHeightsCount() {
    AbsorptionShape small = new AbsorptionShape(List.of(new Edge(500, 8, 1), new Flat(0.01)), 6);
    AbsorptionShape large = new AbsorptionShape(List.of(new Edge(500, 8, 50), new Flat(0.5)), 6);

    for (int band = 0; band < Bands.COUNT; band++) {
      assertThat(large.absorption().at(band))
          .isCloseTo(small.absorption().at(band), Tolerance.ROUND_TRIP);
    }
  }

  @Test
  void edgeFallsToHalfAtItsPlace() {
    Edge edge = new Edge(500, 8, 2);

    assertThat(edge.at(500)).isEqualTo(1);
    assertThat(edge.at(400)).isGreaterThan(1.99);
    assertThat(edge.at(600)).isLessThan(0.01);
  }

  @Test
  void bandFallsToHalfAtHalfItsWidth() {
    Band band = new Band(600, 80, 2);

    assertThat(band.at(600)).isCloseTo(2.0, Tolerance.ROUND_TRIP);
    assertThat(band.at(560)).isCloseTo(1.0, Tolerance.ROUND_TRIP);
    assertThat(band.at(640)).isCloseTo(1.0, Tolerance.ROUND_TRIP);
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "-1, 1", "1, 0", "1, -2", "NaN, 1", "1, Infinity"})
  void widthsAndHeightsArePositive(double width, double height) {
    assertThatThrownBy(() -> new Band(500, width, height))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Edge(500, width, height))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void shapeNeedsATermAndADepth() {
    assertThatThrownBy(() -> new AbsorptionShape(List.of(), 5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("needs a term");
    assertThatThrownBy(() -> new AbsorptionShape(List.of(new Flat(1)), 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new AbsorptionShape(List.of(new Flat(1)), Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
