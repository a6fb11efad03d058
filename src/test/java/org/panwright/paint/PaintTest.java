package org.panwright.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.colour.Spectrum;

class PaintTest {
  private static final PigmentShare HALF_BLUE = new PigmentShare(PigmentName.of("PB29"), 0.5);
  private static final PigmentShare HALF_BLACK = new PigmentShare(PigmentName.of("PBk7"), 0.5);

  private static Paint paint(String id, String name, List<PigmentShare> pigments) {
    return new Paint(
        id,
        name,
        "",
        pigments,
        new Handling(Transparency.TRANSPARENT, Staining.LOW, Granulation.STRONG, Lightfastness.I),
        Ownership.OWNED,
        Optional.empty(),
        "");
  }

  @Test
  void codesReadAsOnATube() {
    assertThat(paint("a", "indigo", List.of(HALF_BLUE, HALF_BLACK)).codes())
        .isEqualTo("PB29 + PBk7");
  }

  @Test
  void paintNeedsANameAnIdAndPigments() {
    assertThatThrownBy(() -> paint(" ", "blue", List.of(HALF_BLUE, HALF_BLACK)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> paint("a", " ", List.of(HALF_BLUE, HALF_BLACK)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> paint("a", "blue", List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("paint blue has no pigment");
  }

  @Test
  void sharesThatDoNotSumAreRefused() {
    assertThatThrownBy(() -> paint("a", "blue", List.of(HALF_BLUE)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("shares of blue must sum to 1, sum is 0.5");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, 1.1, Double.NaN})
  void shareLiesWithinThePaint(double share) {
    assertThatThrownBy(() -> new PigmentShare(PigmentName.of("PB29"), share))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("PB29");
  }

  @Test
  void measuredOpticsGoBeforeTheEstimate() {
    Optics own = new Optics(Spectrum.flat(1), Spectrum.flat(0.1), OpticsSource.SWATCHES, 3);
    Paint plain = paint("a", "indigo", List.of(HALF_BLUE, HALF_BLACK));
    Paint measured =
        new Paint(
            plain.id(),
            plain.name(),
            "",
            plain.pigments(),
            plain.handling(),
            plain.ownership(),
            Optional.of(own),
            "");
    PigmentLibrary nothing = new PigmentLibrary(List.of());

    assertThat(measured.optics(nothing)).isEqualTo(own);
    assertThatThrownBy(() -> plain.optics(nothing))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("unknown pigment PB29");
  }

  @Test
  void shelfHoldsEachIdOnce() {
    Paint one = paint("a", "one", List.of(HALF_BLUE, HALF_BLACK));
    Paint two = one.withId("b").withName("two");
    Shelf shelf = new Shelf(List.of(one)).with(two);

    assertThat(shelf.find("b")).contains(two);
    assertThat(shelf.without("a").paints()).containsExactly(two);
    assertThat(shelf.replacing(two.withName("three")).find("b").orElseThrow().name())
        .isEqualTo("three");
    assertThatThrownBy(() -> shelf.with(one.withName("again")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("two paints have the id a");
  }

  @Test
  void opticsArePositiveAndKnowTheirError() {
    assertThatThrownBy(
            () -> new Optics(Spectrum.flat(-1), Spectrum.flat(0), OpticsSource.SPECTRA, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("absorption must lie in");
    assertThatThrownBy(
            () -> new Optics(Spectrum.flat(1), Spectrum.flat(0), OpticsSource.SPECTRA, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("expected error");
  }

  @Test
  void whitePaperIsAsLightAsRealPapers() {
    // Common practice: white watercolour papers lie at L* 94–97, b* up to 5.
    var lab = org.panwright.colour.Light.D65.lab(Paper.WHITE.reflectance());

    assertThat(lab.l()).isBetween(94.0, 97.0);
    assertThat(lab.a()).isBetween(-1.0, 1.0);
    assertThat(lab.b()).isBetween(0.0, 5.0);
    assertThatThrownBy(() -> new Paper("dark", Spectrum.flat(0.01)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void poorLightfastnessBeginsAtIii() {
    // ASTM D5067 admits categories I and II.
    assertThat(Lightfastness.II.isPoor()).isFalse();
    assertThat(Lightfastness.III.isPoor()).isTrue();
    assertThat(Lightfastness.V.isPoor()).isTrue();
    assertThat(Lightfastness.UNRATED.isPoor()).isFalse();
  }
}
