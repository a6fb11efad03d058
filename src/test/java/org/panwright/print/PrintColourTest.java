package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;
import org.panwright.colour.GamutFit;
import org.panwright.colour.Spectrum;
import org.panwright.colour.Srgb;
import org.panwright.mixing.Film;
import org.panwright.paint.Optics;
import org.panwright.paint.Paper;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

class PrintColourTest {
  private static final double STEP = 0.6 / 255;

  /** The perfect diffuser is the paper's bare white in any light. */
  @Test
  void perfectWhiteStaysWhite() {
    Srgb shown = PrintColour.of(Spectrum.flat(1)).shown();

    assertThat(shown.red()).isEqualTo(1, offset(STEP));
    assertThat(shown.green()).isEqualTo(1, offset(STEP));
    assertThat(shown.blue()).isEqualTo(1, offset(STEP));
  }

  /** CSS Color 4: lab(50% 0 0), relative to D50, is the grey #777777; Y = ((50 + 16) / 116)³. */
  @Test
  void middleGreyIsTheGreyOfCss() {
    GamutFit fit = PrintColour.of(Spectrum.flat(Math.pow(66.0 / 116, 3)));

    assertThat(fit.exact()).isTrue();
    assertThat(fit.shown().toHex()).isEqualTo("#777777");
  }

  @Test
  void aRunHasEachWashAtItsPlace() {
    Optics optics = CardKits.paint("p", "blue", "PB29").optics(CardKits.LIBRARY);

    WashRun run = WashRun.of(optics, Paper.WHITE, WashStrengths.USUAL);

    for (Wash wash : Wash.values()) {
      double load = WashStrengths.USUAL.load(wash);
      Srgb alone = PrintColour.of(Film.of(optics, load).dry(Paper.WHITE)).shown();
      assertThat(run.colours().get(wash.ordinal() * WashRun.BETWEEN).toHex())
          .isEqualTo(alone.toHex());
    }
    assertThat(run.colours()).hasSize(4 * WashRun.BETWEEN + 1);
  }

  /**
   * A phthalocyanine wash is more vivid than sRGB can be: its green-blue lies outside (common
   * practice).
   */
  @Test
  void aColourBeyondPrintIsMarked() {
    Optics phthalo = CardKits.paint("p", "blue", "PB15:3").optics(CardKits.LIBRARY);
    Optics black = CardKits.paint("p", "black", "PBk7").optics(CardKits.LIBRARY);

    assertThat(WashRun.of(phthalo, Paper.WHITE, WashStrengths.USUAL).exact()).isFalse();
    assertThat(WashRun.of(black, Paper.WHITE, WashStrengths.USUAL).exact()).isTrue();
  }
}
