package org.panwright.command;

import org.panwright.paint.Optics;

/**
 * One paint of a mix asked for on the command line.
 *
 * @param name what to call it in the answer; the same paint has the same name
 * @param optics what it mixes by
 * @param parts strength parts, above 0
 */
record Part(String name, Optics optics, double parts) {
  /** The same paint with more parts. */
  Part plus(double more) {
    return new Part(name, optics, parts + more);
  }
}
