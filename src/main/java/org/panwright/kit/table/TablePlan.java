package org.panwright.kit.table;

import java.util.List;
import java.util.Optional;
import org.panwright.kit.Lineup;
import org.panwright.kit.TableEdit;
import org.panwright.paint.Paint;

/**
 * What taking a table into a kit would do; nothing is done yet.
 *
 * @param rows one for each row of the table
 * @param added new paints, in the order of their rows
 * @param changed paints of the shelf as they would be
 * @param lineup the lineup as it would be, if the table fills one
 */
public record TablePlan(
    List<TakenRow> rows, List<Paint> added, List<Paint> changed, Optional<Lineup> lineup) {
  public TablePlan {
    rows = List.copyOf(rows);
    added = List.copyOf(added);
    changed = List.copyOf(changed);
  }

  /** How many rows have an outcome. */
  public long count(TakenRow.Outcome outcome) {
    return rows.stream().filter(row -> row.outcome() == outcome).count();
  }

  /** The one edit that does it; empty if it would change nothing. */
  public Optional<TableEdit> edit() {
    return added.isEmpty() && changed.isEmpty() && lineup.isEmpty()
        ? Optional.empty()
        : Optional.of(new TableEdit(added, changed, lineup));
  }
}
