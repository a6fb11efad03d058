package org.panwright.swatch.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.colour.Spectrum;
import org.panwright.swatch.table.TableFault;
import org.panwright.swatch.table.TableFaultException;

class ResamplingTest {
  @ParameterizedTest(name = "{0}–{1} nm by {2}")
  @CsvSource({"360, 780, 5", "380, 730, 10", "380, 780, 20", "370, 750, 1"})
  void aStraightLineStaysStraightInside(int from, int to, int step) throws TableFaultException {
    Spectrum found = resample(from, to, step, nm -> 0.001 * nm - 0.3);

    assertThat(found.at(17)).isCloseTo(0.25, within(1e-12));
    assertThat(found.at(2)).isCloseTo(0.10, within(1e-12));
    assertThat(found.at(32)).isCloseTo(0.40, within(1e-12));
  }

  @Test
  void tenNanometresAreTakenAsTheyAre() throws TableFaultException {
    Spectrum found = resample(380, 730, 10, nm -> nm == 500 ? 0.9 : 0.1);

    assertThat(found.at(12)).isEqualTo(0.9);
    assertThat(found.at(11)).isEqualTo(0.1);
  }

  @Test
  void aPeakOfAFineReadingSpreadsOverItsNeighbours() throws TableFaultException {
    Spectrum found = resample(380, 730, 5, nm -> nm == 505 ? 1 : 0);

    assertThat(found.at(12)).isCloseTo(found.at(13), within(1e-12));
    assertThat(found.at(12)).isBetween(0.2, 0.4);
    assertThat(found.at(10)).isZero();
  }

  @Test
  void beyondTheEndsItStaysWhatItWas() throws TableFaultException {
    Spectrum found = resample(400, 700, 10, nm -> nm / 1000);

    assertThat(found.at(0)).isEqualTo(0.4);
    assertThat(found.at(35)).isEqualTo(0.7);
  }

  @ParameterizedTest(name = "{0}–{1} nm by {2}")
  @CsvSource({"420, 700, 10", "400, 690, 10", "450, 650, 5"})
  void refusesWhatLeavesOutPartOfTheSpectrum(int from, int to, int step) {
    assertThatThrownBy(() -> resample(from, to, step, nm -> 0.5))
        .isInstanceOfSatisfying(
            TableFaultException.class,
            e -> assertThat(e.fault()).isEqualTo(new TableFault.BandsMissing(from, to)));
  }

  @Test
  void refusesSteps() {
    assertThatThrownBy(() -> resample(400, 700, 25, nm -> 0.5))
        .isInstanceOfSatisfying(
            TableFaultException.class,
            e -> assertThat(e.fault()).isEqualTo(new TableFault.BandsTooWide(400, 425)));
  }

  private static Spectrum resample(int from, int to, int step, DoubleUnaryOperator reading)
      throws TableFaultException {
    double[] wavelengths = new double[(to - from) / step + 1];
    Arrays.setAll(wavelengths, i -> from + i * step);
    return new Resampling(wavelengths).spectrum(Arrays.stream(wavelengths).map(reading).toArray());
  }
}
