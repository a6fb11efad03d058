package org.panwright.app.box;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.app.BenchKit;
import org.panwright.kit.Box;
import org.panwright.kit.Fixture;
import org.panwright.kit.FixtureKind;
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
  void partOfTheTrayHasTheScaleOfTheWells() {
    BoxScale scale = BoxScale.fit(box, 500, 300);
    Fixture dish = new Fixture("dish", FixtureKind.MIXING_AREA, false, 60, 20, 18, 9, 0);
    BoxScale.Place place = scale.of(box, dish);
    BoxScale.Place well = scale.of(box.find("w1").orElseThrow());
    assertThat(place.width() / well.width()).isCloseTo(18.0 / 19, within(1e-9));
    assertThat(place.x() - well.x()).isCloseTo((60 - 2) * scale.pxPerMm(), within(1e-9));
    assertThat(place.y() - well.y()).isCloseTo((20 - 2) * scale.pxPerMm(), within(1e-9));
  }

  /** The lid of the box is 78 × 36 mm, drawn in a strip above the tray. */
  @Test
  void partOfTheLidKeepsItsPlaceInTheStrip() {
    BoxScale scale = BoxScale.fit(box, 500, 300);
    Fixture half = new Fixture("half", FixtureKind.MIXING_AREA, true, 0, 9, 39, 18, 0);
    BoxScale.Place place = scale.of(box, half);
    BoxScale.Place lid = scale.lid(box);
    assertThat(place.x() + place.width())
        .as("the middle of the lid")
        .isCloseTo(lid.x() + lid.width() / 2, within(1e-9));
    assertThat(place.y() - lid.y()).as("a quarter down").isCloseTo(lid.height() / 4, within(1e-9));
    assertThat(place.height()).as("half the strip").isCloseTo(lid.height() / 2, within(1e-9));
  }

  @Test
  void hugeRoomDoesNotBlowTheBoxUp() {
    assertThat(BoxScale.fit(box, 20_000, 20_000).pxPerMm()).isEqualTo(BoxScale.LARGEST);
  }
}
