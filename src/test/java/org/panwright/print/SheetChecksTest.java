package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The checks of the other tests must be able to fail. */
class SheetChecksTest {
  @Test
  void aTextOffThePageIsFound() {
    assertThat(faults(text(90, 50, "too far right"))).hasSize(1);
  }

  @Test
  void textsOnEachOtherAreFound() {
    assertThat(faults(text(10, 50, "ultramarine"), text(15, 51, "ochre"))).hasSize(1);
  }

  @Test
  void aTextOnAnEdgeOrALineIsFound() {
    Mark edge =
        new Mark.Rectangle(new Area(12, 40, 30, 30), 0, 0.2, Ink.BLACK, false, Optional.empty());
    Mark upright = new Mark.Line(14, 20, 14, 60, 0.2, Ink.BLACK, false);
    Mark level = new Mark.Line(5, 49, 60, 49, 0.2, Ink.BLACK, false);

    assertThat(faults(text(10, 50, "ultramarine"), edge)).hasSize(1);
    assertThat(faults(text(10, 50, "ultramarine"), upright)).hasSize(1);
    assertThat(faults(text(10, 50, "ultramarine"), level)).hasSize(1);
  }

  @Test
  void cellsOnEachOtherAreFound() {
    Mark one = new Mark.Swatch(new Area(10, 10, 10, 10), List.of(Ink.FAINT));
    Mark two = new Mark.Swatch(new Area(15, 15, 10, 10), List.of(Ink.FAINT));

    assertThat(faults(one, two)).hasSize(1);
  }

  @Test
  void aTextInsideACellIsNoFault() {
    Mark cell =
        new Mark.Rectangle(new Area(5, 40, 50, 30), 0, 0.2, Ink.BLACK, false, Optional.empty());

    assertThat(faults(cell, text(10, 50, "ultramarine"))).isEmpty();
  }

  private static Mark text(double xMm, double baselineMm, String text) {
    return new Mark.Text(Typeface.REGULAR, 8, xMm, baselineMm, false, Ink.BLACK, text);
  }

  private static List<String> faults(Mark... marks) {
    return SheetChecks.faults(new Sheet("t", 100, 100, List.of(marks)));
  }
}
