package org.panwright.app.swatches;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.colour.Lab;
import org.panwright.swatch.picture.Homography;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.sheet.Card;
import org.panwright.swatch.sheet.FoundSheet;
import org.panwright.swatch.sheet.PatchKind;
import org.panwright.swatch.sheet.ReadingFaultException;
import org.panwright.swatch.sheet.RowReading;
import org.panwright.swatch.sheet.SheetFinder;
import org.panwright.swatch.sheet.SheetFormat;
import org.panwright.swatch.sheet.SheetPlan;
import org.panwright.swatch.sheet.SheetReading;

/**
 * A printed sheet as it was read off a picture.
 *
 * @param measuredPaper whether a card told the colour of the paper
 */
record ReadPage(SheetReading reading, boolean measuredPaper) {
  /** Reads a sheet between its four corner marks. */
  static ReadPage of(
      Picture picture,
      SheetFormat format,
      List<Point> corners,
      Lab paperColour,
      Optional<Card> card)
      throws ReadingFaultException {
    FoundSheet placed = new FoundSheet(format, corners, Optional.empty());
    FoundSheet sheet = new FoundSheet(format, corners, SheetFinder.code(picture, placed));
    SheetReading read = SheetReading.of(picture, sheet, paperColour, card);
    return new ReadPage(read, card.isPresent() && !read.paper().equals(paperColour));
  }

  /** What was read, outlined on the picture. */
  List<List<Point>> outlines() {
    Homography place = reading.sheet().place().orElseThrow();
    SheetPlan plan = new SheetPlan(reading.sheet().format());
    List<List<Point>> outlines = new ArrayList<>();
    for (RowReading row : reading.rows()) {
      for (PatchKind kind : PatchKind.values()) {
        outlines.add(place.map(plan.onPaper(row.row(), kind)));
      }
      outlines.add(place.map(plan.onLine(row.row(), PatchKind.FULL)));
    }
    return outlines;
  }
}
