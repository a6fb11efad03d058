package org.panwright.swatch.grid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.panwright.kit.Box;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.mixing.TintLoad;
import org.panwright.paint.Paper;
import org.panwright.paint.Shelf;
import org.panwright.print.ChartOptions;
import org.panwright.print.MixingChart;
import org.panwright.print.PaperFormat;
import org.panwright.print.Papers;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.picture.Zone;
import org.panwright.swatch.sheet.InventedShelf;
import org.panwright.swatch.sheet.PaintedPage;
import org.panwright.swatch.sheet.SimulatedCamera;

/**
 * Printed mixing charts of some invented paints, painted by hand.
 *
 * @param paints in the order of rows and columns
 */
public record PaintedCharts(List<String> paints) {
  /** A kit whose only lineup holds these paints in order, on a shelf of all invented ones. */
  public Kit kit() {
    List<Well> wells = new ArrayList<>();
    Map<String, Filling> fillings = new LinkedHashMap<>();
    for (int i = 0; i < paints.size(); i++) {
      wells.add(new Well("w" + i, "" + (i + 1), WellKind.HALF_PAN, 3 + 17 * i, 3, 16, 19));
      fillings.put("w" + i, new Filling(paints.get(i), Fill.FULL));
    }
    Box box = new Box("box", "tin", 110, 30, 110, 30, wells);
    return Kit.empty("invented")
        .withShelf(new Shelf(InventedShelf.paints()))
        .withBoxes(List.of(box), List.of(new Lineup("l", "all", "box", fillings)));
  }

  /** Equal strength by the true optics, a little uneven from cell to cell; by row and column. */
  public Map<List<Integer>, List<PaintLoad>> truth() {
    Map<List<Integer>, List<PaintLoad>> cells = new HashMap<>();
    for (int row = 0; row < paints.size(); row++) {
      for (int column = 0; column < paints.size(); column++) {
        double load = 0.25 * (1 + 0.3 * Math.sin(row * 5 + column * 3));
        String a = paints.get(row);
        String b = paints.get(column);
        double ta = TintLoad.of(InventedShelf.OPTICS.get(a), Paper.WHITE);
        double tb = TintLoad.of(InventedShelf.OPTICS.get(b), Paper.WHITE);
        cells.put(
            List.of(row, column),
            row == column
                ? List.of(new PaintLoad(a, load))
                : List.of(
                    new PaintLoad(a, load * ta / (ta + tb)),
                    new PaintLoad(b, load * tb / (ta + tb))));
      }
    }
    return cells;
  }

  /** The printed chart with these mixes in its cells. */
  public PaintedPage page(Map<List<Integer>, List<PaintLoad>> cells) {
    PaintedPage page = new PaintedPage(papers(), 0);
    List<Zone> outlines = outlines();
    cells.forEach((at, paints) -> page.paint(outlines.get(size() * at.get(0) + at.get(1)), paints));
    return page;
  }

  /** Where the chart's corners come to lie: the camera's own knowledge. */
  public List<Point> corners(PaintedPage page, SimulatedCamera camera) {
    List<Zone> outlines = outlines();
    Zone first = outlines.get(0);
    Zone last = outlines.get(size() * size() - 1);
    Zone whole =
        new Zone(first.x(), first.y(), last.right() - first.x(), last.bottom() - first.y());
    return camera.place(page).map(whole);
  }

  private int size() {
    return paints.size();
  }

  private List<Zone> outlines() {
    return PaintedPage.outlines(papers().sheets().get(0));
  }

  private Papers papers() {
    return MixingChart.of(
        kit(),
        "l",
        PigmentLibraryReader.read(),
        new ChartOptions(ChartOptions.Shape.SQUARE, OptionalDouble.empty(), PaperFormat.A4, false));
  }
}
