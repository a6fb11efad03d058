package org.panwright.swatch.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.coat.Swatch;
import org.panwright.swatch.coat.SwatchSet;
import org.panwright.swatch.fit.FitReport;
import org.panwright.swatch.fit.FitSettings;
import org.panwright.swatch.fit.OpticsFit;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.PictureFile;
import org.panwright.swatch.picture.Point;

/**
 * From known paints to a printed, painted, photographed, read and fitted sheet and back. What is
 * expected are the colours put in; no figure comes from the reader.
 */
class RoundTripTest {
  private static final List<String> PAINTS = List.copyOf(InventedShelf.OPTICS.keySet());
  private static final Lab PAPER = Light.D65.lab(PaintedPage.PAPER);

  @TempDir Path folder;

  /**
   * Common practice: two coats painted alike differ by 1 to 2; below 3 the trade calls a match
   * good. The phone's lamp gives the paper a chroma well above that of daylight, which must be
   * said.
   */
  @Test
  void aScanBringsTheColoursBack() throws Exception {
    SheetReading reading = read(SimulatedCamera.scanner(1300, 1840), SheetFormat.A4);

    assertThat(errors(reading)).satisfies(within(0.8, 3.5));
    assertThat(reading.notes()).isEmpty();
    assertThat(errorsOfMixes(reading)).satisfies(within(3, 9));
  }

  @Test
  void aTiltedPhotoUnderALampBringsTheColoursBack() throws Exception {
    SheetReading reading = read(SimulatedCamera.phone(1500, 2000), SheetFormat.A4);

    assertThat(errors(reading)).satisfies(within(0.8, 3.5));
    assertThat(reading.notes())
        .singleElement()
        .satisfies(note -> assertThat(note).isInstanceOf(ReadingNote.ColouredLight.class));
    assertThat(errorsOfMixes(reading)).satisfies(within(3, 9));
  }

  @Test
  void theRowsNameTheirPaintsAndBlankOnesAreLeftOut() throws Exception {
    SheetReading reading = read(SimulatedCamera.phone(1500, 2000), SheetFormat.A4);

    assertThat(reading.sheet().code()).map(PageCode::format).contains(SheetFormat.A4);
    assertThat(reading.rows().stream().map(row -> row.mark().orElseThrow()))
        .containsExactlyElementsOf(PAINTS.stream().map(PaintMark::of).toList());
  }

  @ParameterizedTest
  @EnumSource(SheetFormat.class)
  void everyPaperIsFoundAndRead(SheetFormat format) throws Exception {
    SheetReading reading = read(SimulatedCamera.phone(1100, 1500), format);

    assertThat(reading.sheet().format()).isEqualTo(format);
    assertThat(reading.rows()).hasSize(Math.min(PAINTS.size(), new SheetPlan(format).rows()));
    assertThat(errors(reading)).satisfies(within(1, 4.5));
  }

  /** A sheet photographed upside down or on its side is the same sheet. */
  @ParameterizedTest(name = "turned by {0} quarters")
  @ValueSource(ints = {1, 2, 3})
  void aTurnedSheetIsReadAlike(int quarters) throws Exception {
    SimulatedCamera upright = SimulatedCamera.phone(1500, 1500);
    List<Point> turned = new ArrayList<>(upright.corners());
    Collections.rotate(turned, quarters);

    SheetReading reading = read(upright.withCorners(turned), SheetFormat.A4);

    assertThat(reading.rows().get(0).mark()).contains(PaintMark.of(PAINTS.get(0)));
    assertThat(errors(reading)).satisfies(within(1, 4.5));
  }

  private SheetReading read(SimulatedCamera camera, SheetFormat format) throws Exception {
    Path file = camera.save(Sheets.painted(format), folder.resolve("sheet.jpg"));
    Picture picture = PictureFile.read(file, share -> {}, () -> false);
    FoundSheet sheet = SheetFinder.find(picture).orElseThrow();
    return SheetReading.of(picture, sheet, PAPER, Optional.empty());
  }

  /** Of every patch whose colour the picture could hold, on paper and on the line. */
  private static double[] errors(SheetReading reading) {
    List<Double> errors = new ArrayList<>();
    for (RowReading row : reading.rows()) {
      for (PatchKind kind : PatchKind.values()) {
        List<PaintLoad> loads = PaintedPage.four(PAINTS.get(row.row())).get(kind.ordinal());
        if (!loads.isEmpty()) {
          error(errors, row.onPaper().get(kind), loads, PaintedPage.PAPER);
          error(errors, row.onLine().get(kind), loads, PaintedPage.INK);
        }
      }
    }
    return errors.stream().mapToDouble(Double::doubleValue).sorted().toArray();
  }

  private static void error(
      List<Double> errors, PatchReading read, List<PaintLoad> loads, Spectrum ground) {
    if (!read.isBeyondPicture()) {
      Lab truth = Light.D65.lab(InventedShelf.coat(loads, ground));
      errors.add(Difference.ciede2000(truth, read.lab()));
    }
  }

  /** Pairs that were never painted, predicted from the reading, at two strengths. */
  private static double[] errorsOfMixes(SheetReading reading) throws Exception {
    FitReport fit = OpticsFit.of(new SwatchSet(swatches(reading)), FitSettings.FOR_ENGINE);
    Reading paper = new Reading.OfSpectrum(PaintedPage.PAPER);
    List<Double> errors = new ArrayList<>();
    for (int i = 2; i < PAINTS.size(); i++) {
      for (int j = i + 1; j < PAINTS.size(); j++) {
        for (double load : new double[] {0.8, 0.2}) {
          List<PaintLoad> mix =
              List.of(
                  new PaintLoad(PAINTS.get(i), load / 2), new PaintLoad(PAINTS.get(j), load / 2));
          Lab truth = Light.D65.lab(InventedShelf.coat(mix, PaintedPage.PAPER));
          errors.add(Difference.ciede2000(truth, Light.D65.lab(fit.predict(mix, paper))));
        }
      }
    }
    return errors.stream().mapToDouble(Double::doubleValue).sorted().toArray();
  }

  private static List<Swatch> swatches(SheetReading reading) {
    List<Swatch> swatches = new ArrayList<>();
    for (RowReading row : reading.rows()) {
      String paint = PAINTS.get(row.row());
      for (PatchKind kind : PatchKind.values()) {
        List<PaintLoad> loads = PaintedPage.four(paint).get(kind.ordinal());
        PatchReading read = row.onPaper().get(kind);
        if (!loads.isEmpty() && !read.isBeyondPicture()) {
          swatches.add(swatch(paint + " " + kind, loads, read, PaintedPage.PAPER));
        }
      }
      swatches.add(
          swatch(
              paint + " on the line",
              List.of(new PaintLoad(paint, 1)),
              row.onLine().get(PatchKind.FULL),
              PaintedPage.INK));
    }
    return swatches;
  }

  private static Swatch swatch(
      String name, List<PaintLoad> loads, PatchReading read, Spectrum ground) {
    return new Swatch(
        name, loads, new Reading.OfColour(read.lab()), new Reading.OfSpectrum(ground));
  }

  /** The median and the largest of sorted errors; both are told when it fails. */
  private static Consumer<double[]> within(double median, double most) {
    return errors -> {
      assertThat(errors[errors.length / 2])
          .as("median of %s", Arrays.toString(errors))
          .isLessThan(median);
      assertThat(errors[errors.length - 1])
          .as("largest of %s", Arrays.toString(errors))
          .isLessThan(most);
    };
  }
}
