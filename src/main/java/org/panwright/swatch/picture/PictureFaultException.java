package org.panwright.swatch.picture;

/** A file that cannot be read as a picture; the reason is a {@link PictureFault}. */
public final class PictureFaultException extends Exception {
  private static final long serialVersionUID = 1;

  private final transient PictureFault fault;

  /** An unreadable picture for a reason. */
  public PictureFaultException(PictureFault fault) {
    super(fault.toString());
    this.fault = fault;
  }

  /** The reason. */
  public PictureFault fault() {
    return fault;
  }
}
