package org.panwright.store;

import java.util.Optional;
import org.panwright.kit.FileProblem.FieldFault;

/** A field that cannot be used; caught inside this package, where it becomes a file problem. */
final class BadFieldException extends Exception {
  private final String path;
  private final transient FieldFault fault;
  private final String givesWayTo;

  BadFieldException(String path, FieldFault fault) {
    this(path, fault, null);
  }

  private BadFieldException(String path, FieldFault fault, String givesWayTo) {
    super(path + ": " + fault);
    this.path = path;
    this.fault = fault;
    this.givesWayTo = givesWayTo;
  }

  /** The same, for a part that is kept only until an entry with this id takes its place. */
  BadFieldException givingWayTo(String id) {
    return new BadFieldException(path, fault, id);
  }

  /** See {@link #givingWayTo}. */
  Optional<String> givesWayTo() {
    return Optional.ofNullable(givesWayTo);
  }

  /** Where the field stands, for example {@code shelf.paints[3].pigments[0].share}. */
  String path() {
    return path;
  }

  FieldFault fault() {
    return fault;
  }
}
