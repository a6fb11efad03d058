package org.panwright.app.paint;

import java.util.OptionalDouble;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.panwright.app.fx.TypedNumber;
import org.panwright.paint.PigmentName;

/** One pigment of the paint being edited, with its parts as typed. */
final class PigmentPart {
  private final PigmentName pigment;
  private final StringProperty parts;

  PigmentPart(PigmentName pigment, String parts) {
    this.pigment = pigment;
    this.parts = new SimpleStringProperty(parts);
  }

  PigmentName pigment() {
    return pigment;
  }

  StringProperty partsProperty() {
    return parts;
  }

  /** The parts, if what is typed is a number above 0. */
  OptionalDouble amount() {
    OptionalDouble read = TypedNumber.read(parts.get());
    return read.isPresent() && read.getAsDouble() > 0 ? read : OptionalDouble.empty();
  }
}
