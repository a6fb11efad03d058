package org.panwright.app.window;

import java.util.List;
import javafx.geometry.Rectangle2D;

/**
 * Where a window lies on the screens, in screen units.
 *
 * @param maximised whether it fills its screen; the rest is then where it returns to
 */
public record ScreenPlace(double x, double y, double width, double height, boolean maximised) {
  /** How much of a window must be on a screen to be within reach. */
  private static final double REACHABLE = 120;

  /**
   * The place moved and shrunk as little as makes it lie on one of the screens whole.
   *
   * @param screens the visible parts of the screens there are now, the main one first
   */
  public ScreenPlace onto(List<Rectangle2D> screens) {
    Rectangle2D home =
        screens.stream().filter(this::reachableOn).findFirst().orElse(screens.get(0));
    double fittingWidth = Math.min(width, home.getWidth());
    double fittingHeight = Math.min(height, home.getHeight());
    return new ScreenPlace(
        clamp(x, home.getMinX(), home.getMaxX() - fittingWidth),
        clamp(y, home.getMinY(), home.getMaxY() - fittingHeight),
        fittingWidth,
        fittingHeight,
        maximised);
  }

  private boolean reachableOn(Rectangle2D screen) {
    double across = Math.min(x + width, screen.getMaxX()) - Math.max(x, screen.getMinX());
    double down = Math.min(y + height, screen.getMaxY()) - Math.max(y, screen.getMinY());
    return across >= REACHABLE && down >= REACHABLE;
  }

  private static double clamp(double value, double low, double high) {
    return Math.max(low, Math.min(high, value));
  }
}
