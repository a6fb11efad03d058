package org.panwright.swatch.sheet;

import java.util.Map;
import java.util.Optional;
import org.panwright.colour.Difference;

/**
 * One row of a sheet as it was read.
 *
 * @param row from 0
 * @param mark the paint its head names; empty if that cannot be read
 * @param onPaper the painted patches
 * @param onLine the same over the black line
 * @param line the bare line
 */
public record RowReading(
    int row,
    Optional<PaintMark> mark,
    Map<PatchKind, PatchReading> onPaper,
    Map<PatchKind, PatchReading> onLine,
    Optional<PatchReading> line) {
  public RowReading {
    onPaper = Map.copyOf(onPaper);
    onLine = Map.copyOf(onLine);
  }

  /**
   * Whether all patches are as bare as the paper, within 2 in CIEDE2000 on it and 2.5 on the line.
   */
  boolean isBlank(org.panwright.colour.Lab paper) {
    boolean plain =
        onPaper.values().stream().allMatch(p -> Difference.ciede2000(p.lab(), paper) < 2);
    boolean dark =
        line.isEmpty()
            || onLine.values().stream()
                .allMatch(p -> Difference.ciede2000(p.lab(), line.get().lab()) < 2.5);
    return plain && dark;
  }
}
