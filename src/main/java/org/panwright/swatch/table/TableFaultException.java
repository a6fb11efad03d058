package org.panwright.swatch.table;

/** A file of readings that cannot be used; the reason is a {@link TableFault}. */
public final class TableFaultException extends Exception {
  private static final long serialVersionUID = 1;

  private final transient TableFault fault;

  /** A broken table for a reason. */
  public TableFaultException(TableFault fault) {
    super(fault.toString());
    this.fault = fault;
  }

  /** The reason. */
  public TableFault fault() {
    return fault;
  }
}
