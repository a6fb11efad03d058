package org.panwright.swatch.picture;

/**
 * Where a stored pixel stands in the picture as it is meant to be seen.
 *
 * @param orientation 1..8 as Exif counts them
 * @param width as stored
 * @param height as stored
 */
record Turn(int orientation, int width, int height) {
  /** Whether the picture stands on its side. */
  boolean swaps() {
    return orientation >= 5;
  }

  int seenWidth() {
    return swaps() ? height : width;
  }

  int seenHeight() {
    return swaps() ? width : height;
  }

  /** The index, row by row, of a stored pixel in the picture as seen. */
  int index(int x, int y) {
    int right = width - 1 - x;
    int up = height - 1 - y;
    return switch (orientation) {
      case 2 -> y * width + right;
      case 3 -> up * width + right;
      case 4 -> up * width + x;
      case 5 -> x * height + y;
      case 6 -> x * height + up;
      case 7 -> right * height + up;
      case 8 -> right * height + y;
      default -> y * width + x;
    };
  }
}
