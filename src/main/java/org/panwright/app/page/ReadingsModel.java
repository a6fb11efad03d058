package org.panwright.app.page;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
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

  /** Whether the amounts read are loads. */
  boolean hasLoads() {
    return file.hasLoads(mapping.get());
  }

  /** What a row is taken for: as the painter said, else as its amount or its name sounds. */
  CoatRole role(ReadRow row) {
    boolean bare = row.amount().isPresent() && row.amount().getAsDouble() == 0;
    return said.getOrDefault(row.line(), bare ? CoatRole.PAPER : CoatRole.guess(row.name()));
  }

  /** Says what a row is. */
  void say(ReadRow row, CoatRole role) {
    said.put(row.line(), role);
  }

  /** The rows that can be used. */
  List<ChosenRow> chosen() {
    double full = hasLoads() ? 1 : fullAmount();
    return plan.get().usable().stream()
        .map(row -> new ChosenRow(row.reading().orElseThrow(), role(row), load(row, full)))
        .toList();
  }

  private static OptionalDouble load(ReadRow row, double full) {
    return row.amount().stream().map(amount -> amount / full).filter(load -> load > 0).findFirst();
  }

  /** The amount that counts as load 1: the mean of those at full strength, else the largest. */
  private double fullAmount() {
    return amounts(row -> role(row) == CoatRole.FULL)
        .average()
        .orElse(amounts(row -> role(row) != CoatRole.LEAVE_OUT).max().orElse(1));
  }

  private DoubleStream amounts(Predicate<ReadRow> wanted) {
    return plan.get().usable().stream()
        .filter(wanted)
        .flatMapToDouble(row -> row.amount().stream())
        .filter(amount -> amount > 0);
  }
}
