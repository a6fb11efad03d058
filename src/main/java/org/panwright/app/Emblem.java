package org.panwright.app;

import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.image.Image;
import javafx.scene.image.PixelWriter;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;

/** The program's emblem: an open box of six pans, drawn in the sizes a desktop asks for. */
final class Emblem {
  private static final int[] SIZES = {16, 24, 32, 48, 64, 128};
  private static final int COLUMNS = 3;
  private static final int ROWS = 2;
  private static final Color TRAY = Color.gray(0.93);
  private static final Color EDGE = Color.gray(0.25);
  private static final List<Color> PANS =
      List.of(
          Color.web("#e8c400"),
          Color.web("#d8472f"),
          Color.web("#b3246d"),
          Color.web("#2c7a4b"),
          Color.web("#2a4fb0"),
          Color.web("#8a5a33"));

  private Emblem() {}

  /** The emblem, small to large. */
  static List<Image> sizes() {
    return IntStream.of(SIZES).<Image>mapToObj(Emblem::draw).toList();
  }

  private static Image draw(int size) {
    WritableImage image = new WritableImage(size, size);
    PixelWriter pixels = image.getPixelWriter();
    for (int y = 0; y < size; y++) {
      for (int x = 0; x < size; x++) {
        pixels.setColor(x, y, at((x + 0.5) / size, (y + 0.5) / size, 1.0 / size));
      }
    }
    return image;
  }

  /** The colour at a place of the unit square. */
  private static Color at(double x, double y, double pixel) {
    double tray = distanceInside(x, y, 0.02, 0.16, 0.98, 0.84);
    if (tray < 0) {
      return Color.TRANSPARENT;
    }
    if (tray < Math.max(0.03, pixel)) {
      return EDGE;
    }
    double width = 0.90 / COLUMNS;
    double height = 0.62 / ROWS;
    int column = (int) Math.floor((x - 0.05) / width);
    int row = (int) Math.floor((y - 0.19) / height);
    if (column < 0 || column >= COLUMNS || row < 0 || row >= ROWS) {
      return TRAY;
    }
    double left = 0.05 + column * width;
    double top = 0.19 + row * height;
    double pan =
        distanceInside(x, y, left + 0.035, top + 0.035, left + width - 0.035, top + height - 0.035);
    return pan < 0 ? TRAY : PANS.get(row * COLUMNS + column);
  }

  private static double distanceInside(
      double x, double y, double left, double top, double right, double bottom) {
    return Math.min(Math.min(x - left, right - x), Math.min(y - top, bottom - y));
  }
}
