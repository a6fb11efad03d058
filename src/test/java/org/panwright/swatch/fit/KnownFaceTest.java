package org.panwright.swatch.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.panwright.colour.Lab;
import org.panwright.colour.Spectrum;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsSource;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.coat.Swatch;

/**
 * Expected figures are worked by hand from k1 = 0.03 and the formula above {@code KnownFace.of}.
 */
class KnownFaceTest {
  private static final Reading PAPER = measured(0.87);
  private static final Set<String> BLUE = Set.of("blue");

  @Test
  void theDarkestCoatDecides() {
    // ln(0.03 / (0.95 · 0.012)) = 0.9676; a wash of 0.4 that reads 0.025: ln(0.03 / 0.02375) / 0.4
    // =
    // 0.5840.
    Swatch full = coat(measured(0.012), PAPER, new PaintLoad("blue", 1));
    Swatch wash = coat(measured(0.025), PAPER, new PaintLoad("blue", 0.4));

    assertThat(gloss(full, wash)).isCloseTo(0.9676, within(0.0001));
    assertThat(gloss(wash)).isCloseTo(0.5840, within(0.0001));
    assertThat(gloss(coat(measured(0.04), PAPER, new PaintLoad("blue", 1)))).isZero();
  }

  @Test
  void whatIsKnownOfAnotherPaintCounts() {
    // (ln(0.03 / (0.95 · 0.012)) − 0.5 · 1) / 0.5 = 0.9352
    Swatch tone =
        coat(measured(0.012), PAPER, new PaintLoad("blue", 0.5), new PaintLoad("black", 0.5));
    Optics black = new Optics(Spectrum.flat(9), Spectrum.flat(0.2), 1, OpticsSource.SWATCHES, 2);

    KnownFace face = KnownFace.of(List.of(tone), BLUE, Map.of("black", black));

    assertThat(face.gloss("blue")).isCloseTo(0.9352, within(0.0001));
    assertThat(face.gloss("black")).isEqualTo(1);
    assertThat(face.gloss("white")).isZero();
    assertThat(face.allows(tone)).isTrue();
    assertThat(KnownFace.MATT.allows(tone)).isFalse();
  }

  @Test
  void aLineDarkerThanTheFaceHasLessOfOne() {
    // The line reads 0.02, so its face turns back 0.019, and so much may a coat over it read /
    // 0.95.
    Swatch over = coat(measured(0.0201), measured(0.02), new PaintLoad("blue", 1));

    assertThat(gloss(over)).isZero();
  }

  @Test
  void aColourIsReadByItsDarkestTristimulusValue() {
    // CIELAB (30, 0, 30) under D65: fz = 46/116 − 30/200 = 0.24655, Z/Zn = 0.24655³ = 0.014987,
    // ln(0.03 / (0.95 · 0.014987)) = 0.7453.
    Swatch ochre = coat(new Reading.OfColour(new Lab(30, 0, 30)), PAPER, new PaintLoad("blue", 1));

    assertThat(ochre.reading().darkest()).isCloseTo(0.014987, within(2e-6));
    assertThat(gloss(ochre)).isCloseTo(0.7453, within(0.0002));
  }

  @Test
  void aBandOfNoiseDecidesLittle() {
    // 0 counts as 0.001: ln(0.03 / 0.00095) = 3.4525.
    Spectrum oneBand = Spectrum.ofBands(band -> band == 3 ? 0 : 0.05);
    Swatch noisy = coat(new Reading.OfSpectrum(oneBand), PAPER, new PaintLoad("blue", 1));

    assertThat(KnownFace.isTooDark(noisy, BLUE)).isFalse();
    assertThat(gloss(noisy)).isCloseTo(3.4525, within(0.0001));
    assertThat(KnownFace.of(List.of(noisy), BLUE, Map.of()).allows(noisy)).isTrue();
  }

  @Test
  void darkerThanAnyDryCoatIsTooDark() {
    // A quarter of a coat that reads 0.011 would need ln(0.03 / (0.95 · 0.011)) / 0.25 = 4.22, more
    // than 4; one of 0.0125 needs 3.71.
    PaintLoad quarter = new PaintLoad("blue", 0.25);

    assertThat(KnownFace.isTooDark(coat(measured(0.011), PAPER, quarter), BLUE)).isTrue();
    assertThat(KnownFace.isTooDark(coat(measured(0.0125), PAPER, quarter), BLUE)).isFalse();
    assertThat(KnownFace.isTooDark(coat(measured(5e-4), PAPER, new PaintLoad("blue", 1)), BLUE))
        .isTrue();
  }

  private static double gloss(Swatch... swatches) {
    return KnownFace.of(List.of(swatches), BLUE, Map.of()).gloss("blue");
  }

  private static Swatch coat(Reading reading, Reading ground, PaintLoad... paints) {
    return new Swatch("coat", List.of(paints), reading, ground);
  }

  private static Reading measured(double reflectance) {
    return new Reading.OfSpectrum(Spectrum.flat(reflectance));
  }
}
