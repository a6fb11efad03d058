package org.panwright.kit.table;

/** A cell that cannot be used; the reason is a {@link CellFault}. */
final class CellFaultException extends Exception {
  private static final long serialVersionUID = 1;

  private final transient CellFault fault;

  CellFaultException(CellFault fault) {
    super(fault.toString());
    this.fault = fault;
  }

  CellFault fault() {
    return fault;
  }
}
