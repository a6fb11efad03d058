package org.panwright.command;

import java.util.Optional;
import org.panwright.paint.DryingShift;
import org.panwright.paint.Optics;

/**
 * One paint of a mix asked for on the command line.
 *
 * @param name what to call it in the answer; the same paint has the same name
 * @param optics what it mixes by
 * @param shift how it dries, if the painter read it wet and dry
 * @param parts strength parts, above 0
 */
record Part(String name, Optics optics, Optional<DryingShift> shift, double parts) {
  /** The same paint with more parts. */
  Part plus(double more) {
    return withParts(parts + more);
  }

  /** The same paint with so many parts. */
  Part withParts(double changed) {
    return new Part(name, optics, shift, changed);
  }
}
