package org.panwright.app.grid;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GridGeometryTest {
  @ParameterizedTest(name = "{0} paints in {1} x {2}")
  @CsvSource({"2, 700, 500", "12, 560, 320", "24, 560, 320", "48, 900, 600"})
  void gridStaysWithinItsSpace(int size, double width, double height) {
    GridGeometry geometry = GridGeometry.fitting(size, width, height, 120, 58);

    assertThat(geometry.x(size)).isLessThanOrEqualTo(width);
    assertThat(geometry.y(size)).isLessThanOrEqualTo(height);
  }

  @Test
  void pointInsideACellFindsIt() {
    GridGeometry geometry = GridGeometry.fitting(12, 800, 600, 120, 58);

    assertThat(geometry.cellAt(geometry.x(3) + 1, geometry.y(7) + 1))
        .hasValueSatisfying(at -> assertThat(at).containsExactly(7, 3));
  }

  @Test
  void headsAreNoCells() {
    GridGeometry geometry = GridGeometry.fitting(12, 800, 600, 120, 58);

    assertThat(geometry.cellAt(60, 200)).isEmpty();
    assertThat(geometry.cellAt(200, 30)).isEmpty();
    assertThat(geometry.cellAt(geometry.x(12) + 1, geometry.y(0) + 1)).isEmpty();
  }
}
