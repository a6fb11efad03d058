package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.panwright.kit.Box;

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

  private static double centreX(Area area) {
    return area.xMm() + area.widthMm() / 2;
  }
}
