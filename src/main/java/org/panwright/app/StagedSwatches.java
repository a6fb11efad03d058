package org.panwright.app;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.function.Consumer;
import org.panwright.colour.Spectrum;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.mixing.Film;
import org.panwright.mixing.TintLoad;
import org.panwright.paint.Optics;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Wash;
import org.panwright.print.ChartOptions;
import org.panwright.print.MixingChart;
import org.panwright.print.Sheet;
import org.panwright.print.SwatchSheet;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.picture.Zone;
import org.panwright.swatch.sheet.SheetFormat;

/**
 * Painted sheets and charts of a kit's paints for the pictures of the guide. The tubes painted from
 * differ a little from what their pigments' names let expect, as real ones do.
 */
final class StagedSwatches {
  private static final int PATCHES = 4;
  private static final double WASH = 0.25;

  private final Kit kit;
  private final PigmentLibrary library;

  StagedSwatches(Kit kit, PigmentLibrary library) {
    this.kit = kit;
    this.library = library;
  }

  /** A photo of a painted swatch sheet of a lineup's paints. */
  Path sheet(Lineup lineup, Path file) {
    List<Paint> rows =
        paints(lineup).stream().map(id -> kit.shelf().find(id).orElseThrow()).toList();
    Sheet sheet = SwatchSheet.of(kit.name(), rows, SheetFormat.A4).sheets().get(0);
    StagedPaper paper = new StagedPaper(sheet);
    List<Zone> fields = StagedPaper.fields(sheet);
    for (int i = 0; i < fields.size(); i++) {
      List<Film> four = four(rows.get(i / PATCHES));
      paper.paint(fields.get(i), four.get(i % PATCHES));
    }
    return paper.photograph(file);
  }

  private List<Film> four(Paint paint) {
    Film alone = Film.of(tube(paint), 1);
    return List.of(
        alone,
        alone.times(WASH),
        alone.times(0.5).plus(pigment("PW6"), 0.5),
        alone.times(0.5).plus(pigment("PBk7"), 0.5));
  }

  private Optics pigment(String code) {
    return library.estimate(List.of(new PigmentShare(PigmentName.of(code), 1)));
  }

  private List<String> paints(Lineup lineup) {
    return List.copyOf(new LinkedHashSet<>(lineup.paintIds(kit.boxOf(lineup))));
  }

  /**
   * A photo of a painted chart of a lineup, two cells of which were exchanged.
   *
   * @param corners told where its corners lie in the photo
   */
  Path chart(Lineup lineup, Path file, Consumer<List<Point>> corners) {
    List<String> ids = paints(lineup);
    Sheet sheet = MixingChart.of(kit, lineup.id(), library, ChartOptions.USUAL).sheets().get(0);
    StagedPaper paper = new StagedPaper(sheet);
    List<Zone> fields = StagedPaper.fields(sheet);
    int size = ids.size();
    for (int cell = 0; cell < size * size; cell++) {
      int meant = cell == 3 ? size + 6 : cell == size + 6 ? 3 : cell;
      paper.paint(fields.get(cell), mix(ids.get(meant / size), ids.get(meant % size)));
    }
    Zone first = fields.get(0);
    Zone last = fields.get(size * size - 1);
    corners.accept(
        paper.seen(
            new Zone(first.x(), first.y(), last.right() - first.x(), last.bottom() - first.y())));
    return paper.photograph(file);
  }

  /** Equal strength, in a milk wash. */
  private Film mix(String first, String second) {
    Optics one = tube(kit.shelf().find(first).orElseThrow());
    Optics two = tube(kit.shelf().find(second).orElseThrow());
    double share = TintLoad.of(one, kit.paper());
    double other = TintLoad.of(two, kit.paper());
    double load = kit.washes().load(Wash.MILK) / (share + other);
    return Film.of(one, share * load).plus(two, other * load);
  }

  private Optics tube(Paint paint) {
    Optics known = paint.optics(library);
    double turn = Math.floorMod(paint.id().hashCode(), 7);
    Spectrum absorption =
        Spectrum.ofBands(
            band -> known.absorption().at(band) * (1 + 0.12 * Math.sin(band / 5.5 + turn)));
    return new Optics(absorption, known.scattering(), known.source(), known.expectedError());
  }
}
