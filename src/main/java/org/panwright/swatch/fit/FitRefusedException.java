package org.panwright.swatch.fit;

/** Swatches that no optics can be learnt from; the reason is a {@link FitRefusal}. */
public final class FitRefusedException extends Exception {
  private static final long serialVersionUID = 1;

  private final transient FitRefusal refusal;

  /** A refusal for a reason. */
  public FitRefusedException(FitRefusal refusal) {
    super(refusal.toString());
    this.refusal = refusal;
  }

  /** The reason. */
  public FitRefusal refusal() {
    return refusal;
  }
}
