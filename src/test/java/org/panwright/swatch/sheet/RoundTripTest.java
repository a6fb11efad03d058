package org.panwright.swatch.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.print.Papers;
import org.panwright.print.SwatchSheet;
import org.panwright.swatch.FitReport;
import org.panwright.swatch.FitSettings;
import org.panwright.swatch.OpticsFit;
import org.panwright.swatch.PaintLoad;
import org.panwright.swatch.Reading;
import org.panwright.swatch.Swatch;
import org.panwright.swatch.SwatchSet;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.PictureFile;
import org.panwright.swatch.picture.Zone;

/**
 * From known paints to a printed, painted, photographed, read and fitted sheet and back. What is
 * expected are the colours put in; no figure comes from the reader.
 */
class RoundTripTest {
  private static final List<String> PAINTS = List.copyOf(InventedShelf.OPTICS.keySet());
  private static final Lab PAPER = Light.D65.lab(PaintedPage.PAPER);

  @TempDir Path folder;

  @Test
  void aScanBringsTheColoursBack() throws Exception {
    report("scanner", SimulatedCamera.scanner(1700, 2400));
    report("phone", SimulatedCamera.phone(1800, 2400));
  }

  private void report(String name, SimulatedCamera camera) throws Exception {
    PaintedPage page = painted(SheetFormat.A4);
    Path file = camera.save(page, folder.resolve(name + ".jpg"));
    java.nio.file.Files.copy(file, Path.of("/tmp/sheet-" + name + ".jpg"), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    long t = System.nanoTime();
    Picture picture = PictureFile.read(file, share -> {}, () -> false);
    System.out.println("decode " + (System.nanoTime() - t) / 1000000 + " ms");
    t = System.nanoTime();
    FoundSheet sheet = SheetFinder.find(picture).orElseThrow();
    System.out.println("find " + (System.nanoTime() - t) / 1000000 + " ms " + sheet);
    t = System.nanoTime();
    SheetReading reading = SheetReading.of(picture, sheet, PAPER, Optional.empty());
    System.out.println("read " + (System.nanoTime() - t) / 1000000 + " ms " + reading.notes());
    List<Double> errors = new ArrayList<>();
    List<Swatch> swatches = new ArrayList<>();
    for (RowReading row : reading.rows()) {
      String paint = PAINTS.get(row.row());
      assertThat(row.mark()).contains(PaintMark.of(paint));
      for (PatchKind kind : PatchKind.values()) {
        List<PaintLoad> loads = PaintedPage.four(paint).get(kind.ordinal());
        if (loads.isEmpty()) {
          continue;
        }
        Lab truth = Light.D65.lab(InventedShelf.coat(loads, PaintedPage.PAPER));
        PatchReading got = row.onPaper().get(kind);
        double e = Difference.ciede2000(truth, got.lab());
        Lab truthInk = Light.D65.lab(InventedShelf.coat(loads, PaintedPage.INK));
        PatchReading gotInk = row.onLine().get(kind);
        double e2 = Difference.ciede2000(truthInk, gotInk.lab());
        errors.add(e);
        System.out.printf("%-10s %-5s %5.2f  spread %.2f empty %.2f out %.3f L %.1f/%.1f  C %.1f/%.1f ink %.2f L %.1f/%.1f%n", paint, kind, e, got.spread(), got.empty(), got.leftOut(), got.lab().l(), truth.l(), got.lab().chroma(), truth.chroma(), e2, gotInk.lab().l(), truthInk.l());
        swatches.add(new Swatch(paint + kind + (got.empty() > 0.5 ? "beyond" : ""), loads, new Reading.OfColour(got.lab()), new Reading.OfSpectrum(PaintedPage.PAPER)));
        if (kind == PatchKind.FULL) {
          swatches.add(new Swatch(paint + kind + "ink", loads, new Reading.OfColour(gotInk.lab()), new Reading.OfSpectrum(PaintedPage.INK)));
        }
      }
    }
    summary("patches", errors);
    mixes("with ink", swatches);
    mixes("with ink no beyond", swatches.stream().filter(s -> !s.name().endsWith("beyond")).toList());
    mixes("no ink no beyond", swatches.stream().filter(s -> !s.name().endsWith("ink") && !s.name().endsWith("beyond")).toList());
    mixes("no ink", swatches.stream().filter(s -> !s.name().endsWith("ink")).toList());
  }

  private static void mixes(String name, List<Swatch> swatches) throws Exception {
    FitReport fit = OpticsFit.of(new SwatchSet(swatches), FitSettings.FOR_ENGINE);
    List<Double> errors = new ArrayList<>();
    Reading paper = new Reading.OfSpectrum(PaintedPage.PAPER);
    for (int i = 2; i < PAINTS.size(); i++) {
      for (int j = i + 1; j < PAINTS.size(); j++) {
        for (double load : new double[] {0.8, 0.2}) {
          List<PaintLoad> mix = List.of(new PaintLoad(PAINTS.get(i), load / 2), new PaintLoad(PAINTS.get(j), load / 2));
          Lab truth = Light.D65.lab(InventedShelf.coat(mix, PaintedPage.PAPER));
          errors.add(Difference.ciede2000(truth, Light.D65.lab(fit.predict(mix, paper))));
        }
      }
    }
    summary(name + " fit residual " + fit.medianError() + " mixes", errors);
  }

  private static void summary(String what, List<Double> errors) {
    double[] e = errors.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    System.out.printf("== %s n %d median %.2f p90 %.2f max %.2f%n", what, e.length, e[e.length / 2], e[(int) (0.9 * e.length)], e[e.length - 1]);
  }

  private static PaintedPage painted(SheetFormat format) {
    Papers papers = SwatchSheet.of("round trip", InventedShelf.paints(), format);
    PaintedPage page = new PaintedPage(papers, 0);
    List<Zone> outlines = PaintedPage.outlines(papers.sheets().get(0));
    for (int row = 0; row < PAINTS.size(); row++) {
      List<List<PaintLoad>> four = PaintedPage.four(PAINTS.get(row));
      for (int i = 0; i < 4; i++) {
        if (!four.get(i).isEmpty()) {
          page.paint(outlines.get(4 * row + i), four.get(i));
        }
      }
    }
    return page;
  }
}
