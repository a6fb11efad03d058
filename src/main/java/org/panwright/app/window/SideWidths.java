package org.panwright.app.window;

/**
 * How wide the columns beside the middle of the plan are, in pixels.
 *
 * @param shelf the column on the left
 * @param right the column on the right
 */
record SideWidths(double shelf, double right) {
  /** At less their lines cannot be read. */
  static final SideWidths LEAST = new SideWidths(262, 242);

  /** What the middle needs for the names in the wells. */
  static final double MIDDLE = 480;

  /** Both dividers. */
  private static final double DIVIDERS = 8;

  /** Shares are of a window at least this wide: on a narrower one the columns only give way. */
  private static final double USUAL_WINDOW = 1440;

  /** A divider found this far from where it was put was moved by somebody. */
  private static final double MOVED = 4;

  /**
   * The widths for places of the two dividers.
   *
   * @param left the place of the left one, 0..1
   * @param right the place of the right one, 0..1
   * @param window the width of the window
   */
  static SideWidths of(double left, double right, double window) {
    double whole = Math.max(window, USUAL_WINDOW);
    return new SideWidths(left * whole, (1 - right) * whole);
  }

  /** The place of the left divider that {@link #of} makes these widths of. */
  double leftPlace(double window) {
    return shelf / Math.max(window, USUAL_WINDOW);
  }

  /** The place of the right divider that {@link #of} makes these widths of. */
  double rightPlace(double window) {
    return 1 - right / Math.max(window, USUAL_WINDOW);
  }

  /** The widths, each less by the same part of what it can spare where the middle needs room. */
  SideWidths within(double window) {
    double spare = shelf + right - LEAST.shelf - LEAST.right;
    double missing = shelf + right + MIDDLE + DIVIDERS - window;
    if (missing <= 0 || spare <= 0) {
      return this;
    }
    double kept = Math.max(0, 1 - missing / spare);
    return new SideWidths(
        LEAST.shelf + (shelf - LEAST.shelf) * kept, LEAST.right + (right - LEAST.right) * kept);
  }

  /** The widths with those taken over at which a divider, put elsewhere, was found. */
  SideWidths moved(SideWidths put, SideWidths found) {
    return new SideWidths(
        Math.abs(found.shelf - put.shelf) > MOVED ? found.shelf : shelf,
        Math.abs(found.right - put.right) > MOVED ? found.right : right);
  }
}
