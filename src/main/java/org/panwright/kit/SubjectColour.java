package org.panwright.kit;

import java.util.Objects;
import org.panwright.colour.Lab;

/** A colour of the place the painter wants to meet, as CIELAB under D65. */
public record SubjectColour(String name, Lab lab) {
  public SubjectColour {
    Objects.requireNonNull(lab, "lab");
    if (name.isBlank()) {
      throw new IllegalArgumentException("a subject colour needs a name");
    }
  }
}
