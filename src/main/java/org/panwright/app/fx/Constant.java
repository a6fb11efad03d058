package org.panwright.app.fx;

import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;

/** An observable that never changes. */
final class Constant {
  private Constant() {}

  static <T> ObservableValue<T> of(T value) {
    return new ReadOnlyObjectWrapper<>(value).getReadOnlyProperty();
  }
}
