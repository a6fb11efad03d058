package org.panwright.store;

import org.panwright.kit.FileProblem.FieldFault;

/** A field that cannot be used; caught inside this package, where it becomes a file problem. */
final class BadFieldException extends Exception {
  private final String path;
  private final transient FieldFault fault;

  BadFieldException(String path, FieldFault fault) {
    super(path + ": " + fault);
    this.path = path;
    this.fault = fault;
  }

  /** Where the field stands, for example {@code shelf.paints[3].pigments[0].share}. */
  String path() {
    return path;
  }

  FieldFault fault() {
    return fault;
  }
}
