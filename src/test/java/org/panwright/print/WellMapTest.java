package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.panwright.kit.Box;
import org.panwright.kit.Fixture;
import org.panwright.kit.FixtureKind;

class WellMapTest {
  private static final Area REGION = new Area(10, 20, 110, 40);

  @Test
  void cellsStayInTheRegionAndApart() {
    for (boolean cropped : new boolean[] {false, true}) {
      for (Box box :
          List.of(
              CardKits.twelveWithDabs(),
              CardKits.rows(1, 5, 90, 60),
              CardKits.rows(4, 3, 90, 60))) {
        List<Area> cells = WellMap.of(box, REGION, cropped).cells();
        assertThat(cells).hasSize(box.wells().size()).allMatch(cell -> REGION.contains(cell, 1e-9));
        for (int i = 0; i < cells.size(); i++) {
          for (int j = i + 1; j < cells.size(); j++) {
            assertThat(cells.get(i).overlaps(cells.get(j), 1e-9)).isFalse();
          }
        }
      }
    }
  }

  @Test
  void aRegionOfTheBoxsShapeIsFilledToScale() {
    Box box = CardKits.rows(2, 6, 102, 56);

    WellMap map = WellMap.of(box, new Area(0, 0, 204, 112), false);

    assertThat(map.frame()).isEqualTo(new Area(0, 0, 204, 112));
    assertThat(centreX(map.cells().get(1)) - centreX(map.cells().get(0)))
        .isEqualTo(32, offset(1e-9));
  }

  @Test
  void croppingShowsTheWellsLarger() {
    Box box = CardKits.rows(1, 4, 90, 60);

    double whole = WellMap.of(box, REGION, false).cells().get(0).widthMm();
    double cropped = WellMap.of(box, REGION, true).cells().get(0).widthMm();

    assertThat(cropped).isGreaterThan(whole);
  }

  @Test
  void wellsGrowIntoTheChannelBetweenRows() {
    Box box = CardKits.rows(2, 6, 102, 56);

    List<Area> cells = WellMap.of(box, new Area(0, 0, 102, 56), false).cells();

    assertThat(cells.get(0).heightMm()).isGreaterThan(19);
    assertThat(cells.get(0).heightMm()).isEqualTo(cells.get(6).heightMm(), offset(1e-9));
  }

  /** The free channel of 12 mm lies at 21.5..33.5 mm; see {@link CardKits#rows}. */
  @Test
  void wellsDoNotGrowOverAMixingAreaAndItKeepsItsPlace() {
    Box plain = CardKits.rows(1, 6, 102, 56);
    double below = plain.wells().get(0).yMm() + plain.wells().get(0).heightMm();
    double free = plain.heightMm() - below;
    Fixture dish = new Fixture("dish", FixtureKind.MIXING_AREA, false, 5, below, 80, free, 0);
    Box box = plain.withFixtures(List.of(dish));

    WellMap map = WellMap.of(box, new Area(0, 0, 2 * box.widthMm(), 2 * box.heightMm()), false);

    assertThat(map.mixingAreas()).containsExactly(new Area(10, 2 * below, 160, 2 * free));
    assertThat(map.cells()).noneMatch(cell -> cell.overlaps(map.mixingAreas().get(0), 1e-9));
  }

  @Test
  void aMixingAreaOfTheLidIsNotOnTheMapOfTheTray() {
    Fixture lid = new Fixture("lid", FixtureKind.MIXING_AREA, true, 1, 1, 40, 40, 0);
    Box box = CardKits.rows(1, 6, 102, 56).withFixtures(List.of(lid));

    assertThat(WellMap.of(box, REGION, false).mixingAreas()).isEmpty();
  }

  private static double centreX(Area area) {
    return area.xMm() + area.widthMm() / 2;
  }
}
