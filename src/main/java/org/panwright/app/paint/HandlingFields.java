package org.panwright.app.paint;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import org.panwright.paint.Granulation;
import org.panwright.paint.Handling;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Staining;
import org.panwright.paint.Transparency;

/** How the paint being edited handles: as its pigments usually do, or as the painter says. */
final class HandlingFields {
  private final BooleanProperty asUsual = new SimpleBooleanProperty();
  private final ObjectProperty<Transparency> transparency =
      new SimpleObjectProperty<>(Transparency.TRANSPARENT);
  private final ObjectProperty<Staining> staining = new SimpleObjectProperty<>(Staining.LOW);
  private final ObjectProperty<Granulation> granulation =
      new SimpleObjectProperty<>(Granulation.NONE);
  private final ObjectProperty<Lightfastness> lightfastness =
      new SimpleObjectProperty<>(Lightfastness.UNRATED);
  private final Supplier<Optional<Handling>> usual;
  private final ObservableValue<Handling> value;

  /**
   * @param pigments tells when the usual handling may have changed
   * @param usual how the pigments usually handle; empty while they are not known
   * @param start the handling to start with; empty for the usual one
   */
  HandlingFields(
      Observable pigments, Supplier<Optional<Handling>> usual, Optional<Handling> start) {
    this.usual = usual;
    start.ifPresent(this::show);
    asUsual.set(start.isEmpty() || start.equals(usual.get()));
    pigments.addListener(changed -> follow());
    asUsual.addListener(changed -> follow());
    value =
        Bindings.createObjectBinding(
            () ->
                new Handling(
                    transparency.get(), staining.get(), granulation.get(), lightfastness.get()),
            transparency,
            staining,
            granulation,
            lightfastness);
  }

  /** Whether the fields follow the pigments. */
  BooleanProperty asUsualProperty() {
    return asUsual;
  }

  ObjectProperty<Transparency> transparencyProperty() {
    return transparency;
  }

  ObjectProperty<Staining> stainingProperty() {
    return staining;
  }

  ObjectProperty<Granulation> granulationProperty() {
    return granulation;
  }

  ObjectProperty<Lightfastness> lightfastnessProperty() {
    return lightfastness;
  }

  ObservableValue<Handling> property() {
    return value;
  }

  Handling value() {
    return value.getValue();
  }

  private void follow() {
    if (asUsual.get()) {
      usual.get().ifPresent(this::show);
    }
  }

  private void show(Handling handling) {
    transparency.set(handling.transparency());
    staining.set(handling.staining());
    granulation.set(handling.granulation());
    lightfastness.set(handling.lightfastness());
  }
}
