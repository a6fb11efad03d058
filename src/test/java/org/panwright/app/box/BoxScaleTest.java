package org.panwright.app.box;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.app.BenchKit;
import org.panwright.kit.Box;
import org.panwright.kit.Well;

class BoxScaleTest {
  private final Box box = BenchKit.box();

  @ParameterizedTest(name = "{0} x {1} px")
  @CsvSource({"400, 300", "1200, 200", "200, 900", "5000, 5000"})
  void wholeDrawingLiesInItsRoom(double width, double height) {
    BoxScale scale = BoxScale.fit(box, width, height);
    BoxScale.Place lid = scale.lid(box);
    BoxScale.Place tray = scale.tray(box);
    assertThat(lid.x()).isGreaterThanOrEqualTo(-1e-9);
    assertThat(lid.y()).isGreaterThanOrEqualTo(-1e-9);
    assertThat(tray.x() + tray.width()).isLessThanOrEqualTo(width + 1e-9);
    assertThat(tray.y() + tray.height()).isLessThanOrEqualTo(height + 1e-9);
  }

  @Test
  void distancesBetweenWellsKeepTheirProportion() {
    BoxScale scale = BoxScale.fit(box, 500, 300);
    Well first = box.find("w1").orElseThrow();
    Well below = box.find("w6").orElseThrow();
    double dx = scale.of(below).x() - scale.of(first).x();
    double dy = scale.of(below).y() - scale.of(first).y();
    assertThat(dx / dy)
        .isCloseTo((below.xMm() - first.xMm()) / (below.yMm() - first.yMm()), within(1e-9));
    assertThat(scale.of(first).width() / scale.of(first).height())
        .isCloseTo(19.0 / 16, within(1e-9));
  }

  @Test
  void hugeRoomDoesNotBlowTheBoxUp() {
    assertThat(BoxScale.fit(box, 20_000, 20_000).pxPerMm()).isEqualTo(BoxScale.LARGEST);
  }
}
