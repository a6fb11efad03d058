package org.panwright.app.page;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.panwright.swatch.file.ReadRow;
import org.panwright.swatch.file.ReadingFile;
import org.panwright.swatch.file.ReadingMapping;
import org.panwright.swatch.file.ReadingPlan;
import org.panwright.swatch.table.RawTable;

/** A file of readings while the painter says what its columns and rows are; keeps nothing. */
final class ReadingsModel {
  private final ReadingFile file;
  private final ObjectProperty<ReadingMapping> mapping;
  private final ReadOnlyObjectWrapper<ReadingPlan> plan = new ReadOnlyObjectWrapper<>();
  private final Map<Integer, CoatRole> said = new HashMap<>();

  ReadingsModel(ReadingFile file) {
    this.file = file;
    mapping = new SimpleObjectProperty<>(file.guess());
    mapping.addListener((property, before, now) -> plan.set(file.plan(now)));
    plan.set(file.plan(file.guess()));
  }

  RawTable table() {
    return file.table();
  }

  /** Which column holds what. */
  ObjectProperty<ReadingMapping> mappingProperty() {
    return mapping;
  }

  /** What the rows say then. */
  ReadOnlyObjectProperty<ReadingPlan> planProperty() {
    return plan.getReadOnlyProperty();
  }

  /** Whether reflectances are read whose heads name no wavelengths. */
  boolean needsWavelengths() {
    return file.needsWavelengths(mapping.get());
  }

  /** What a row is taken for: as the painter said, else as its name sounds. */
  CoatRole role(ReadRow row) {
    return said.getOrDefault(row.line(), CoatRole.guess(row.name()));
  }

  /** Says what a row is. */
  void say(ReadRow row, CoatRole role) {
    said.put(row.line(), role);
  }

  /** The rows that can be used. */
  List<ChosenRow> chosen() {
    return plan.get().usable().stream()
        .map(row -> new ChosenRow(row.reading().orElseThrow(), role(row)))
        .toList();
  }
}
