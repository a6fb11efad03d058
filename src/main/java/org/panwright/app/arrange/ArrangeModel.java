package org.panwright.app.arrange;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.panwright.analysis.arrange.Arrangement;
import org.panwright.analysis.arrange.Arranger;
import org.panwright.analysis.arrange.WellOrder;
import org.panwright.app.fx.Latest;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;

/** A lineup being laid anew: by what, which wells stay, and what comes of it. */
final class ArrangeModel {
  private final Kit kit;
  private final Lineup lineup;
  private final Arranger arranger;
  private final Latest<Arrangement> arranging;
  private final Consumer<RuntimeException> failures;
  private final ObjectProperty<WellOrder> order = new SimpleObjectProperty<>(WellOrder.HUE);
  private final BooleanProperty leftHanded = new SimpleBooleanProperty();
  private final ObjectProperty<Set<String>> pinned = new SimpleObjectProperty<>(Set.of());
  private final ReadOnlyObjectWrapper<Optional<Arrangement>> laid =
      new ReadOnlyObjectWrapper<>(Optional.empty());

  /**
   * @param away where it is worked out
   * @param home the JavaFX thread
   */
  ArrangeModel(
      Kit kit,
      Lineup lineup,
      Arranger arranger,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.kit = kit;
    this.lineup = lineup;
    this.arranger = arranger;
    this.failures = failures;
    arranging = new Latest<>(away, home);
    order.addListener(changed -> refresh());
    leftHanded.addListener(changed -> refresh());
    pinned.addListener(changed -> refresh());
    refresh();
  }

  ObjectProperty<WellOrder> orderProperty() {
    return order;
  }

  BooleanProperty leftHandedProperty() {
    return leftHanded;
  }

  ReadOnlyObjectProperty<Set<String>> pinnedProperty() {
    return pinned;
  }

  /** What comes of it; empty while it is worked out. */
  ReadOnlyObjectProperty<Optional<Arrangement>> laidProperty() {
    return laid.getReadOnlyProperty();
  }

  Kit kit() {
    return kit;
  }

  /** The lineup as it would be. */
  Lineup after() {
    return laid.get().map(a -> lineup.withFillings(a.fillings())).orElse(lineup);
  }

  /** The edit that makes it so. */
  Edit edit() {
    return new Edit.ChangeLineup(after());
  }

  /** Keeps the paint of a well where it is now, or lets it move again. */
  void togglePin(String wellId) {
    if (lineup.in(wellId).isEmpty()) {
      return;
    }
    Set<String> changed = new HashSet<>(pinned.get());
    if (!changed.remove(wellId)) {
      changed.add(wellId);
    }
    pinned.set(Set.copyOf(changed));
  }

  /** The well in which a paint sits now. */
  Optional<String> wellOf(String paintId) {
    return lineup.fillings().entrySet().stream()
        .filter(entry -> entry.getValue().paintId().equals(paintId))
        .map(java.util.Map.Entry::getKey)
        .findFirst();
  }

  /** The paints in pinned wells. */
  Set<String> pinnedPaints() {
    Set<String> paints = new HashSet<>();
    pinned.get().forEach(well -> lineup.in(well).ifPresent(f -> paints.add(f.paintId())));
    return paints;
  }

  private void refresh() {
    WellOrder by = order.get();
    boolean left = leftHanded.get();
    Set<String> pins = pinned.get();
    arranging.request(
        outdated -> arranger.arrange(kit, lineup, by, pins, left, outdated),
        found -> laid.set(Optional.of(found)),
        failures);
  }
}
