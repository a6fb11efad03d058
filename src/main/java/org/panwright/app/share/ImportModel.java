package org.panwright.app.share;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.panwright.app.fx.Latest;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.table.ColumnMapping;
import org.panwright.kit.table.Duplicates;
import org.panwright.kit.table.SourceRow;
import org.panwright.kit.table.TableColumn;
import org.panwright.kit.table.TablePlan;
import org.panwright.kit.table.TableReader;
import org.panwright.paint.PigmentLibrary;
import org.panwright.swatch.table.DelimitedText;

/**
 * A table while the painter decides what of it is taken in; nothing is changed by it. What it would
 * do is worked out away from the JavaFX thread; the newest choice wins, and until it is worked out
 * the plan before stays and cannot be taken.
 */
final class ImportModel {
  private final DelimitedText table;
  private final List<SourceRow> rows;
  private final Kit kit;
  private final Optional<Lineup> lineup;
  private final PigmentLibrary library;
  private final ObjectProperty<ColumnMapping> mapping;
  private final ObjectProperty<Duplicates> duplicates =
      new SimpleObjectProperty<>(Duplicates.KEEP_MINE);
  private final ReadOnlyObjectWrapper<TablePlan> plan;
  private final ReadOnlyBooleanWrapper settled = new ReadOnlyBooleanWrapper(true);
  private final Latest<TablePlan> planning;
  private final Consumer<RuntimeException> failures;

  /**
   * Works the first plan out at once, so it is to be made away from the JavaFX thread too.
   *
   * @param lineup the lineup to fill, or empty to fill the shelf
   * @param away where plans are worked out
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  ImportModel(
      DelimitedText table,
      Kit kit,
      Optional<Lineup> lineup,
      PigmentLibrary library,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.table = table;
    this.kit = kit;
    this.lineup = lineup;
    this.library = library;
    this.failures = failures;
    planning = new Latest<>(away, home);
    rows = table.rows().stream().map(row -> new SourceRow(row.line(), row.cells())).toList();
    mapping = new SimpleObjectProperty<>(ColumnMapping.guess(table.columns()));
    plan = new ReadOnlyObjectWrapper<>(planned(mapping.get(), duplicates.get()));
    mapping.addListener(changed -> refresh());
    duplicates.addListener(changed -> refresh());
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

  /** Whether the plan is that of the choices made. */
  ReadOnlyBooleanProperty settledProperty() {
    return settled.getReadOnlyProperty();
  }

  /** Whether the plan is that of the choices made, and there is something to take in. */
  BooleanBinding acceptable() {
    return Bindings.createBooleanBinding(
        () -> settled.get() && plan.get().edit().isPresent(), settled, plan);
  }

  private void refresh() {
    ColumnMapping columns = mapping.get();
    Duplicates known = duplicates.get();
    settled.set(false);
    planning.request(
        outdated -> planned(columns, known),
        found -> {
          plan.set(found);
          settled.set(true);
        },
        failures);
  }

  private TablePlan planned(ColumnMapping columns, Duplicates known) {
    return lineup
        .map(l -> TableReader.toLineup(rows, columns, known, kit, l, library))
        .orElseGet(() -> TableReader.toShelf(rows, columns, known, kit, library));
  }
}
