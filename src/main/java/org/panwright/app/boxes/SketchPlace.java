package org.panwright.app.boxes;

/**
 * Where tray and lid of a box lie in the drawing, and at which scale.
 *
 * @param scale pixels to the millimetre
 * @param leftPx left edge of the tray
 * @param topPx upper edge of the tray
 * @param lidLeftPx left edge of the lid
 * @param lidTopPx upper edge of the lid
 * @param hasLid whether the lid is drawn
 */
record SketchPlace(
    double scale, double leftPx, double topPx, double lidLeftPx, double lidTopPx, boolean hasLid) {
  private static final double MARGIN_PX = 22;

  /** Room between lid and tray, for the word at the hinge. */
  private static final double HINGE_PX = 20;

  /** The place in a drawing of this size; the lid is drawn if something lies in it. */
  static SketchPlace of(BoxDraft box, double widthPx, double heightPx) {
    boolean hasLid =
        box.parts().stream().anyMatch(PartDraft::inLid)
            && box.lidWidthMm() > 0
            && box.lidHeightMm() > 0;
    double widest = hasLid ? Math.max(box.widthMm(), box.lidWidthMm()) : box.widthMm();
    double highest = box.heightMm() + (hasLid ? box.lidHeightMm() : 0);
    double room = heightPx - 2 * MARGIN_PX - (hasLid ? HINGE_PX : 0);
    double fitting = Math.min((widthPx - 2 * MARGIN_PX) / widest, room / highest);
    double scale = Double.isFinite(fitting) && fitting > 0 ? fitting : 1;
    double used = highest * scale + (hasLid ? HINGE_PX : 0);
    double lidTop = (heightPx - used) / 2;
    double top = hasLid ? lidTop + box.lidHeightMm() * scale + HINGE_PX : lidTop;
    return new SketchPlace(
        scale,
        (widthPx - box.widthMm() * scale) / 2,
        top,
        (widthPx - box.lidWidthMm() * scale) / 2,
        lidTop,
        hasLid);
  }

  double leftPx(boolean inLid) {
    return inLid ? lidLeftPx : leftPx;
  }

  double topPx(boolean inLid) {
    return inLid ? lidTopPx : topPx;
  }

  double xMm(double px, boolean inLid) {
    return (px - leftPx(inLid)) / scale;
  }

  double yMm(double px, boolean inLid) {
    return (px - topPx(inLid)) / scale;
  }

  /** Whether a place lies in the tray. */
  boolean holds(double xMm, double yMm, BoxDraft box) {
    return xMm >= 0 && yMm >= 0 && xMm <= box.widthMm() && yMm <= box.heightMm();
  }
}
