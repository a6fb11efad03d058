package org.panwright.app.box;

import org.panwright.kit.Box;
import org.panwright.kit.Fixture;
import org.panwright.kit.Well;

/**
 * Where a box drawn to scale lies in a room of pixels: the open lid as a strip above, the tray
 * below it.
 *
 * <p>One scale for both directions; the whole is centred.
 *
 * @param pxPerMm the scale
 * @param trayX left edge of the tray's inside
 * @param trayY upper edge of the tray's inside, at the hinge
 */
record BoxScale(double pxPerMm, double trayX, double trayY) {
  /** The tray's wall all round. */
  static final double RIM_MM = 2;

  /** The part of the open lid that is drawn. */
  static final double LID_MM = 5;

  /** True size on a screen of 96 dots an inch is 3.8; beyond this, bigger helps nobody. */
  static final double LARGEST = 8;

  /** A rectangle in pixels. */
  record Place(double x, double y, double width, double height) {}

  /** The largest drawing of a box that fits. */
  static BoxScale fit(Box box, double widthPx, double heightPx) {
    double outerWidth = outerWidthMm(box);
    double outerHeight = outerHeightMm(box);
    double scale = Math.min(LARGEST, Math.min(widthPx / outerWidth, heightPx / outerHeight));
    double left = (widthPx - outerWidth * scale) / 2;
    double top = (heightPx - outerHeight * scale) / 2;
    return new BoxScale(scale, left + RIM_MM * scale, top + (LID_MM + RIM_MM) * scale);
  }

  /** The extent of what is drawn from left to right. */
  static double outerWidthMm(Box box) {
    return box.widthMm() + 2 * RIM_MM;
  }

  /** The extent of what is drawn from the lid to the front. */
  static double outerHeightMm(Box box) {
    return box.heightMm() + 2 * RIM_MM + LID_MM;
  }

  /** A well. */
  Place of(Well well) {
    return new Place(
        trayX + well.xMm() * pxPerMm,
        trayY + well.yMm() * pxPerMm,
        well.widthMm() * pxPerMm,
        well.heightMm() * pxPerMm);
  }

  /**
   * A part of tray or lid. The lid stands open and is seen from its edge: its parts keep their
   * scale from left to right, and from far to near their share of the strip.
   */
  Place of(Box box, Fixture part) {
    if (!part.inLid()) {
      return new Place(
          trayX + part.xMm() * pxPerMm,
          trayY + part.yMm() * pxPerMm,
          part.widthMm() * pxPerMm,
          part.heightMm() * pxPerMm);
    }
    Place lid = lid(box);
    double middle = lid.x() + lid.width() / 2;
    double across = Math.min(pxPerMm, lid.width() / box.lidWidthMm());
    double down = lid.height() / box.lidHeightMm();
    return new Place(
        middle + (part.xMm() - box.lidWidthMm() / 2) * across,
        lid.y() + part.yMm() * down,
        part.widthMm() * across,
        part.heightMm() * down);
  }

  /** The tray with its rim. */
  Place tray(Box box) {
    double rim = RIM_MM * pxPerMm;
    return new Place(
        trayX - rim,
        trayY - rim,
        box.widthMm() * pxPerMm + 2 * rim,
        box.heightMm() * pxPerMm + 2 * rim);
  }

  /** The strip of the lid. */
  Place lid(Box box) {
    Place tray = tray(box);
    double height = LID_MM * pxPerMm;
    return new Place(tray.x(), tray.y() - height, tray.width(), height);
  }
}
