package org.panwright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoxPlanTest {
  // Usual sizes of travel boxes: common practice.
  @ParameterizedTest(name = "{0} half pans")
  @CsvSource({"6, 2", "10, 3", "12, 4", "14, 4", "18, 4", "24, 4"})
  void usualSizesComePlainAndWithDabs(int pans, int dabs) {
    assertThat(BoxPlan.ALL)
        .filteredOn(box -> count(box, WellKind.HALF_PAN) == pans)
        .extracting(box -> count(box, WellKind.DAB))
        .containsExactly(0L, (long) dabs);
  }

  @Test
  void everyUsualBoxHasItsOwnIdAndName() {
    assertThat(BoxPlan.ALL).extracting(Box::id).doesNotHaveDuplicates();
    assertThat(BoxPlan.ALL).extracting(Box::name).doesNotHaveDuplicates();
  }

  // A half pan is 18.5–20 mm by 14.5–17 mm outside: common practice.
  @Test
  void halfPansTakeTheUsualPlace() {
    assertThat(BoxPlan.ALL)
        .flatExtracting(Box::wells)
        .filteredOn(well -> well.kind() == WellKind.HALF_PAN)
        .allSatisfy(
            well -> {
              assertThat(well.widthMm()).isBetween(14.5, 17.0);
              assertThat(well.heightMm()).isBetween(18.5, 20.0);
            });
  }

  @Test
  void wellsAreNumberedRowByRowFromTheHinge() {
    List<Well> wells = BoxPlan.ofHalfPans(2, 3, 1).box("b").wells();
    assertThat(wells)
        .extracting(Well::label)
        .containsExactly("1", "2", "3", "4", "5", "6", "dab 1");
    assertThat(wells.get(2).yMm()).isEqualTo(wells.get(0).yMm());
    assertThat(wells.get(3).yMm()).isGreaterThan(wells.get(2).yMm());
    assertThat(wells.get(3).xMm()).isEqualTo(wells.get(0).xMm());
  }

  @Test
  void dabsLieBetweenTheRows() {
    Box box = BoxPlan.ofHalfPans(2, 6, 4).box("b");
    Well first = box.find("well-1").orElseThrow();
    Well seventh = box.find("well-7").orElseThrow();
    assertThat(box.wells())
        .filteredOn(well -> well.kind() == WellKind.DAB)
        .allSatisfy(
            dab -> {
              assertThat(dab.yMm()).isGreaterThan(first.yMm() + first.heightMm());
              assertThat(dab.yMm() + dab.heightMm()).isLessThan(seventh.yMm());
            });
  }

  @Test
  void theArrangementStandsInTheMiddle() {
    Box box = BoxPlan.ofHalfPans(2, 3, 4).box("b");
    Well first = box.find("well-1").orElseThrow();
    Well third = box.find("well-3").orElseThrow();
    assertThat(first.xMm()).isCloseTo(box.widthMm() - third.xMm() - third.widthMm(), within(1e-9));
  }

  /** Every box a plan allows passes the checks of {@link Box}: nothing outside, nothing on top. */
  @Test
  void everyPlanGivesAProperBox() {
    for (int rows = 1; rows <= 8; rows++) {
      for (int columns = 1; columns <= 16; columns++) {
        for (int dabs = 0; dabs <= 12; dabs += 3) {
          Box box =
              new BoxPlan("x", WellKind.PAN, rows, columns, 19, 30, 0, 0, dabs % 2 * 20, dabs, 11)
                  .box("b");
          assertThat(box.wells()).hasSize(rows * columns + dabs);
        }
      }
    }
  }

  @Test
  void rowsOfDabsAreNoPlan() {
    assertThatThrownBy(() -> new BoxPlan("x", WellKind.DAB, 1, 1, 10, 10, 1, 1, 0, 0, 10))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> BoxPlan.ofHalfPans(0, 1, 0))
        .hasMessage("rows of a box plan must lie in 1.0..8.0, was 0.0");
  }

  private static long count(Box box, WellKind kind) {
    return box.wells().stream().filter(well -> well.kind() == kind).count();
  }
}
