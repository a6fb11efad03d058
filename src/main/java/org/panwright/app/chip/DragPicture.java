package org.panwright.app.chip;

import javafx.scene.image.Image;
import javafx.scene.image.PixelWriter;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import org.panwright.colour.Srgb;

/** The small pan that follows the pointer while a paint is dragged. */
public final class DragPicture {
  private static final int WIDTH = 52;
  private static final int HEIGHT = 36;
  private static final Color FRAME = Color.gray(0.25);
  private static final Color MARGIN = Color.gray(0.97);

  private DragPicture() {}

  /** The picture of these tones. */
  public static Image of(Tones tones) {
    WritableImage picture = new WritableImage(WIDTH, HEIGHT);
    PixelWriter pixels = picture.getPixelWriter();
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        int edge = Math.min(Math.min(x, WIDTH - 1 - x), Math.min(y, HEIGHT - 1 - y));
        pixels.setColor(x, y, edge == 0 ? FRAME : edge < 3 ? MARGIN : at(tones, x));
      }
    }
    return picture;
  }

  private static Color at(Tones tones, int x) {
    double place = (double) x / WIDTH * (tones.washes().size() - 1);
    int wash = (int) place;
    return color(tones, wash).interpolate(color(tones, wash + 1), place - wash);
  }

  private static Color color(Tones tones, int wash) {
    Srgb shown = tones.washes().get(Math.min(wash, tones.washes().size() - 1)).shown();
    return Color.color(shown.red(), shown.green(), shown.blue());
  }
}
