package org.panwright.app.share;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.table.ColumnMapping;
import org.panwright.kit.table.Duplicates;
import org.panwright.kit.table.SourceRow;
import org.panwright.kit.table.TableColumn;
import org.panwright.kit.table.TablePlan;
import org.panwright.kit.table.TableReader;
import org.panwright.paint.PigmentLibrary;
import org.panwright.swatch.DelimitedText;

/** A table while the painter decides what of it is taken in; nothing is changed by it. */
final class ImportModel {
  private final DelimitedText table;
  private final List<SourceRow> rows;
  private final Kit kit;
  private final Optional<Lineup> lineup;
  private final PigmentLibrary library;
  private final ObjectProperty<ColumnMapping> mapping;
  private final ObjectProperty<Duplicates> duplicates =
      new SimpleObjectProperty<>(Duplicates.KEEP_MINE);
  private final ReadOnlyObjectWrapper<TablePlan> plan = new ReadOnlyObjectWrapper<>();

  /**
   * @param lineup the lineup to fill, or empty to fill the shelf
   */
  ImportModel(DelimitedText table, Kit kit, Optional<Lineup> lineup, PigmentLibrary library) {
    this.table = table;
    this.kit = kit;
    this.lineup = lineup;
    this.library = library;
    rows = table.rows().stream().map(row -> new SourceRow(row.line(), row.cells())).toList();
    mapping = new SimpleObjectProperty<>(ColumnMapping.guess(table.columns()));
    mapping.addListener(changed -> refresh());
    duplicates.addListener(changed -> refresh());
    refresh();
  }

  DelimitedText table() {
    return table;
  }

  /** What can be read from the table. */
  List<TableColumn> columns() {
    return lineup.isPresent() ? TableColumn.ofLineup() : TableColumn.ofShelf();
  }

  boolean fillsLineup() {
    return lineup.isPresent();
  }

  /** Where each column is read from. */
  ObjectProperty<ColumnMapping> mappingProperty() {
    return mapping;
  }

  /** What becomes of paints that are there already. */
  ObjectProperty<Duplicates> duplicatesProperty() {
    return duplicates;
  }

  /** What taking the table in would do now. */
  ReadOnlyObjectProperty<TablePlan> planProperty() {
    return plan.getReadOnlyProperty();
  }

  private void refresh() {
    plan.set(
        lineup
            .map(l -> TableReader.toLineup(rows, mapping.get(), duplicates.get(), kit, l, library))
            .orElseGet(
                () -> TableReader.toShelf(rows, mapping.get(), duplicates.get(), kit, library)));
  }
}
