package org.panwright.swatch.sheet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.colour.Lab;
import org.panwright.swatch.picture.Homography;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.picture.Zone;

/**
 * All that was read off one page of a swatch sheet.
 *
 * @param sheet where it lies
 * @param paper the colour its bare paper is taken to have
 * @param rows those with paint on them, in order
 * @param notes what makes the colours less sure
 */
public record SheetReading(
    FoundSheet sheet, Lab paper, List<RowReading> rows, List<ReadingNote> notes) {
  private static final double LEAST_PIXELS = 1.6;

  public SheetReading {
    rows = List.copyOf(rows);
    notes = List.copyOf(notes);
  }

  /**
   * Reads a page.
   *
   * @param paperColour CIELAB under D65 of the paper painted on
   * @param card a neutral card, if one lies on the sheet
   * @throws ReadingFaultException if nothing can be read
   */
  public static SheetReading of(
      Picture picture, FoundSheet sheet, Lab paperColour, Optional<Card> card)
      throws ReadingFaultException {
    SheetPlan plan = new SheetPlan(sheet.format());
    Homography place =
        sheet.place().orElseThrow(() -> new ReadingFaultException(new ReadingFault.NoArea()));
    for (Point corner : sheet.corners()) {
      if (!picture.holds(corner.x(), corner.y())) {
        throw new ReadingFaultException(new ReadingFault.OutsidePicture());
      }
    }
    double scale = plan.corners().stream().mapToDouble(place::scaleAt).min().orElseThrow();
    if (scale < LEAST_PIXELS) {
      throw new ReadingFaultException(new ReadingFault.TooCoarse(scale));
    }
    Survey survey = Survey.of(picture, place, plan.paperSpots(), paperColour, card, scale);
    List<RowReading> rows = new ArrayList<>();
    for (int row = 0; row < plan.rows(); row++) {
      RowReading reading = row(picture, place, plan, survey, row);
      if (!reading.isBlank(survey.paper())) {
        rows.add(reading);
      }
    }
    if (rows.isEmpty()) {
      throw new ReadingFaultException(new ReadingFault.NothingPainted());
    }
    List<ReadingNote> notes = new ArrayList<>(survey.notes());
    if (sheet.code().isEmpty()) {
      notes.add(new ReadingNote.NoCode());
    }
    return new SheetReading(sheet, survey.paper(), rows, notes);
  }

  private static RowReading row(
      Picture picture, Homography place, SheetPlan plan, Survey survey, int row) {
    Map<PatchKind, PatchReading> onPaper = new EnumMap<>(PatchKind.class);
    Map<PatchKind, PatchReading> onLine = new EnumMap<>(PatchKind.class);
    List<PatchReading> lines = new ArrayList<>();
    for (PatchKind kind : PatchKind.values()) {
      survey.read(plan.onPaper(row, kind)).ifPresent(reading -> onPaper.put(kind, reading));
      survey.read(plan.onLine(row, kind)).ifPresent(reading -> onLine.put(kind, reading));
      survey.read(plan.bareLine(row, kind)).ifPresent(lines::add);
    }
    lines.sort(java.util.Comparator.comparingDouble(reading -> reading.lab().l()));
    Optional<PatchReading> line =
        lines.isEmpty() ? Optional.empty() : Optional.of(lines.get(lines.size() / 2));
    List<Zone> cells = plan.paintCells(row);
    Optional<PaintMark> mark =
        CodeReader.squares(picture, place, cells, cells.size()).flatMap(PaintMark::of);
    return new RowReading(row, mark, onPaper, onLine, line);
  }
}
