package org.panwright.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.panwright.colour.Lab;
import org.panwright.colour.Spectrum;
import org.panwright.paint.PaintedCoat.Strength;

class SwatchbookTest {
  private static final CoatReading READ = new CoatReading.OfColour(new Lab(40, 10, -30));
  private static final Paint PAINT =
      new Paint(
          "blue",
          "blue",
          "",
          List.of(new PigmentShare(PigmentName.of("PB29"), 1)),
          new Handling(Transparency.TRANSPARENT, Staining.LOW, Granulation.STRONG, Lightfastness.I),
          Ownership.OWNED,
          Optional.empty(),
          "");
  private static final Optics FIRST = optics(1);
  private static final Optics SECOND = optics(2);

  @Test
  void aCoatOfTheSameIdTakesTheOldOnesPlace() {
    Swatchbook book =
        Swatchbook.EMPTY.with(
            List.of(
                PaintedCoat.of("a", READ, Strength.FULL),
                PaintedCoat.of("b", READ, Strength.WASH)));
    PaintedCoat again = PaintedCoat.of("a", READ, Strength.WASH);
    assertThat(book.with(List.of(again)).coats())
        .containsExactly(again, PaintedCoat.of("b", READ, Strength.WASH));
    assertThat(book.freshId()).isNotIn("a", "b");
  }

  @Test
  void everyChangeOfOpticsCanBeGoneBackFrom() {
    Paint second =
        PAINT.using(Optional.of(FIRST), from("file")).using(Optional.of(SECOND), from("coats"));
    assertThat(second.measured()).contains(SECOND);
    assertThat(second.swatchbook().former())
        .containsExactly(
            new FormerOptics(Optional.empty(), OpticsOrigin.ESTIMATE),
            new FormerOptics(Optional.of(FIRST), from("file")));

    Paint back = second.goingBackTo(1);
    assertThat(back.measured()).contains(FIRST);
    assertThat(back.origin()).isEqualTo(from("file"));
    Paint forth = back.goingBackTo(1);
    assertThat(forth).isEqualTo(second);
    assertThat(second.goingBackTo(0).measured()).isEmpty();
  }

  @Test
  void theDryingShiftIsTheMeanOfUnmixedCoatsReadWetAndDry() {
    CoatReading wet = new CoatReading.OfColour(new Lab(36, 11, -34));
    CoatReading wetter = new CoatReading.OfColour(new Lab(34, 13, -32));
    Swatchbook book =
        Swatchbook.EMPTY.with(
            List.of(
                PaintedCoat.of("a", READ, Strength.FULL).withWet(wet),
                PaintedCoat.of("b", READ, Strength.FULL).withWet(wetter),
                PaintedCoat.of("c", READ, Strength.FULL),
                PaintedCoat.of("d", READ, Strength.FULL)
                    .withWet(wet)
                    .withMixedWith(Admixture.white())));
    assertThat(book.dryingShift()).contains(new DryingShift(-5, 2, -3, 40));
    assertThat(Swatchbook.EMPTY.dryingShift()).isEmpty();
  }

  @Test
  void nonsenseIsNoCoat() {
    assertThatThrownBy(() -> PaintedCoat.of("a", READ, Strength.FULL).withLoad(0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("load");
    assertThatThrownBy(() -> new CoatReading.OfColour(new Lab(100, 0, 0)))
        .hasMessageContaining("L*");
    assertThatThrownBy(() -> Admixture.of("", 0.5)).hasMessageContaining("admixture");
    assertThatThrownBy(() -> Admixture.of("p", 1)).hasMessageContaining("share");
  }

  private static OpticsOrigin from(String detail) {
    return new OpticsOrigin(
        Optional.of(LocalDate.of(2026, 5, 1)), OpticsOrigin.Reason.FITTED, detail);
  }

  private static Optics optics(double k) {
    return new Optics(Spectrum.flat(k), Spectrum.flat(0.1), OpticsSource.SWATCHES, 3);
  }
}
