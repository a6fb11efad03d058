package org.panwright.swatch.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.swatch.picture.Homography;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.picture.Zone;
import org.panwright.swatch.sheet.PatchReading;
import org.panwright.swatch.sheet.ReadingFault;
import org.panwright.swatch.sheet.ReadingFaultException;
import org.panwright.swatch.sheet.ReadingNote;
import org.panwright.swatch.sheet.Survey;

/**
 * All that was read off a hand-painted chart.
 *
 * @param grid what was meant to be painted
 * @param paper the colour its bare paper is taken to have
 * @param cells those with paint in them, row by row
 * @param notes what makes the colours less sure
 */
public record GridReading(
    PaintedGrid grid, Lab paper, List<CellReading> cells, List<ReadingNote> notes) {
  /** A cell this fine, in pixels, is usually 10 mm or more. */
  private static final double USUAL_CELL_MM = 12;

  private static final double LEAST_PIXELS = 8;
  private static final double BARE = 2;
  private static final double LIGHTER_THAN_PAPER = 1.5;

  public GridReading {
    cells = List.copyOf(cells);
    notes = List.copyOf(notes);
  }

  /**
   * Reads a chart.
   *
   * @param corners of the whole chart in pixels, clockwise from its upper left
   * @param paperColour CIELAB under D65 of the paper painted on
   * @param bare further places of bare paper, in pixels
   * @throws ReadingFaultException if nothing can be read
   */
  public static GridReading of(
      Picture picture, List<Point> corners, PaintedGrid grid, Lab paperColour, List<Point> bare)
      throws ReadingFaultException {
    Homography place =
        Homography.of(grid.corners(), corners)
            .orElseThrow(() -> new ReadingFaultException(new ReadingFault.NoArea()));
    Homography back =
        Homography.of(corners, grid.corners())
            .orElseThrow(() -> new ReadingFaultException(new ReadingFault.NoArea()));
    double scale = grid.corners().stream().mapToDouble(place::scaleAt).min().orElseThrow();
    if (scale < LEAST_PIXELS) {
      throw new ReadingFaultException(new ReadingFault.TooCoarse(scale / USUAL_CELL_MM));
    }
    List<Zone> spots = new ArrayList<>(grid.bareZones());
    bare.forEach(spot -> spots.add(Zone.around(back.map(spot), 0.25)));
    Survey survey =
        Survey.of(picture, place, spots, paperColour, Optional.empty(), scale / USUAL_CELL_MM);
    List<CellReading> cells = new ArrayList<>();
    int tooLight = 0;
    for (int row = 0; row < grid.rows(); row++) {
      for (int column = 0; column < grid.columns(); column++) {
        Optional<CellContent> content = grid.content(row, column);
        Optional<PatchReading> patch = survey.read(grid.zone(row, column));
        if (content.isPresent() && patch.isPresent()) {
          Lab lab = patch.get().lab();
          tooLight += lab.l() > survey.paper().l() + LIGHTER_THAN_PAPER ? 1 : 0;
          if (Difference.ciede2000(lab, survey.paper()) >= BARE) {
            cells.add(new CellReading(row, column, content.get(), patch.get()));
          }
        }
      }
    }
    if (3 * tooLight > grid.rows() * grid.columns()) {
      throw new ReadingFaultException(new ReadingFault.NoBarePaper());
    }
    if (cells.isEmpty()) {
      throw new ReadingFaultException(new ReadingFault.NothingPainted());
    }
    return new GridReading(grid, survey.paper(), cells, survey.notes());
  }

  /** The same with two of its cells taken to hold what the other was meant to. */
  public GridReading withExchanged(int first, int second) {
    List<CellReading> changed = new ArrayList<>(cells);
    changed.set(first, cells.get(first).holding(cells.get(second).content()));
    changed.set(second, cells.get(second).holding(cells.get(first).content()));
    return new GridReading(grid, paper, changed, notes);
  }
}
