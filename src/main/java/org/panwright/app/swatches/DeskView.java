package org.panwright.app.swatches;

import org.panwright.swatch.picture.Point;

/**
 * Which part of a picture is seen on a desk, and how large.
 *
 * @param scale pixels of the desk for one of the picture, above 0
 * @param left where the picture's left edge lies on the desk
 * @param top where its upper edge lies
 */
record DeskView(double scale, double left, double top) {
  private static final double MARGIN = 12;

  /** The whole picture in the middle of the desk. */
  static DeskView of(double pictureWidth, double pictureHeight, double width, double height) {
    double scale =
        Math.max(
            1e-3,
            Math.min((width - 2 * MARGIN) / pictureWidth, (height - 2 * MARGIN) / pictureHeight));
    return new DeskView(
        scale, (width - scale * pictureWidth) / 2, (height - scale * pictureHeight) / 2);
  }

  Point onDesk(Point inPicture) {
    return new Point(left + scale * inPicture.x(), top + scale * inPicture.y());
  }

  Point inPicture(Point onDesk) {
    return new Point((onDesk.x() - left) / scale, (onDesk.y() - top) / scale);
  }

  DeskView moved(double dx, double dy) {
    return new DeskView(scale, left + dx, top + dy);
  }

  /** Larger by a factor, the place under (x, y) kept where it is. */
  DeskView closer(double factor, double x, double y) {
    return new DeskView(scale * factor, x - (x - left) * factor, y - (y - top) * factor);
  }
}
