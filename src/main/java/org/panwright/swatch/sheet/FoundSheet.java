package org.panwright.swatch.sheet;

import java.util.List;
import java.util.Optional;
import org.panwright.swatch.picture.Homography;
import org.panwright.swatch.picture.Point;

/**
 * A swatch sheet of ours in a picture.
 *
 * @param format of its paper
 * @param corners the middles of its marks in pixels: upper left, upper right, lower right, lower
 *     left of the sheet, however it lies
 * @param code what its head says; empty if it cannot be read
 */
public record FoundSheet(SheetFormat format, List<Point> corners, Optional<PageCode> code) {
  public FoundSheet {
    corners = List.copyOf(corners);
    if (corners.size() != 4) {
      throw new IllegalArgumentException("a sheet has four corners, were " + corners.size());
    }
  }

  /** From millimetres on the sheet to pixels; empty if the corners do not go round an area. */
  public Optional<Homography> place() {
    return Homography.of(new SheetPlan(format).corners(), corners);
  }
}
