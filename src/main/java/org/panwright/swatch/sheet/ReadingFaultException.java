package org.panwright.swatch.sheet;

/** A picture off which nothing can be read; the reason is a {@link ReadingFault}. */
public final class ReadingFaultException extends Exception {
  private static final long serialVersionUID = 1;

  private final transient ReadingFault fault;

  /** A failed reading for a reason. */
  public ReadingFaultException(ReadingFault fault) {
    super(fault.toString());
    this.fault = fault;
  }

  /** The reason. */
  public ReadingFault fault() {
    return fault;
  }
}
