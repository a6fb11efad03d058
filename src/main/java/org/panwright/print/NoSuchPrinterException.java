package org.panwright.print;

/** Thrown when a printer was asked for that the computer does not know, or no longer. */
public final class NoSuchPrinterException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String printer;

  NoSuchPrinterException(String printer) {
    super("no printer is called " + printer);
    this.printer = printer;
  }

  /** The name that was asked for. */
  public String printer() {
    return printer;
  }
}
