package org.panwright.swatch.sheet;

import java.util.List;
import java.util.Optional;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.mixing.Film;
import org.panwright.paint.Optics;
import org.panwright.paint.Paper;

/** Whether rows of a sheet may have been painted in each other's place. */
public final class RowCheck {
  private static final double[] LOADS = {1, 0.25};
  private static final PatchKind[] ALONE = {PatchKind.FULL, PatchKind.WASH};

  private static final int FEW = 3;
  private static final double ALIKE = 3;

  private RowCheck() {}

  /**
   * Whether the painted patches of a row, three or more, all have one colour, within {@value
   * #ALIKE} in CIEDE2000. A paint alone, a wash of it and its mix with black never have.
   *
   * @param paper bare; patches as bare as it are not counted
   */
  public static boolean isAllAlike(RowReading row, Lab paper) {
    List<Lab> painted =
        row.onPaper().values().stream()
            .map(PatchReading::lab)
            .filter(lab -> Difference.ciede2000(lab, paper) >= 2)
            .toList();
    return painted.size() >= FEW
        && painted.stream()
            .allMatch(
                one -> painted.stream().allMatch(two -> Difference.ciede2000(one, two) < ALIKE));
  }

  /**
   * The two rows that look exchanged, if two do; judged by what is known of the paints so far.
   *
   * @param rows as read
   * @param known the optics of each row's paint, in the order of the rows
   */
  public static Optional<SwappedRows> swapped(
      List<RowReading> rows, List<Optics> known, Paper paper) {
    double[][] distance = new double[rows.size()][rows.size()];
    for (int j = 0; j < rows.size(); j++) {
      for (int k = 0; k < LOADS.length; k++) {
        Lab expected = Light.D65.lab(Film.of(known.get(j), LOADS[k]).dry(paper));
        for (int i = 0; i < rows.size(); i++) {
          PatchReading read = rows.get(i).onPaper().get(ALONE[k]);
          if (read != null) {
            distance[i][j] += Difference.ciede2000(read.lab(), expected) / LOADS.length;
          }
        }
      }
    }
    return SwappedRows.in(distance);
  }
}
