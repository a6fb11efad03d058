package org.panwright.app.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SideWidthsTest {
  private static final SideWidths WIDE = new SideWidths(340, 400);

  @Test
  void aWideWindowLeavesTheSidesAsTheyAre() {
    assertThat(WIDE.within(1440)).isEqualTo(WIDE);
  }

  /** 340 + 400 + 480 + 8 is 128 more than 1100; they can spare 78 and 158, 236 together. */
  @Test
  void aNarrowWindowTakesTheSamePartOfWhatEachCanSpare() {
    SideWidths narrow = WIDE.within(1100);
    assertThat(narrow.shelf()).isCloseTo(340 - 78 * 128 / 236.0, within(1e-9));
    assertThat(narrow.right()).isCloseTo(400 - 158 * 128 / 236.0, within(1e-9));
  }

  @Test
  void noWindowMakesThemNarrowerThanCanBeRead() {
    assertThat(WIDE.within(700)).isEqualTo(SideWidths.LEAST);
  }

  @Test
  void placesOfDividersComeBack() {
    SideWidths widths = SideWidths.of(0.24, 0.72, 1920);
    assertThat(widths.shelf()).isCloseTo(0.24 * 1920, within(1e-9));
    assertThat(widths.leftPlace(1920)).isCloseTo(0.24, within(1e-9));
    assertThat(widths.rightPlace(1920)).isCloseTo(0.72, within(1e-9));
  }

  @Test
  void onlyADividerThatWasMovedChangesWhatIsWanted() {
    SideWidths put = WIDE.within(1100);
    SideWidths found = new SideWidths(put.shelf() - 30, put.right() + 1);
    assertThat(WIDE.moved(put, found)).isEqualTo(new SideWidths(put.shelf() - 30, 400));
  }
}
