package org.panwright.app.swatches;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.panwright.colour.LinearSrgb;
import org.panwright.colour.Srgb;
import org.panwright.swatch.picture.Picture;

/**
 * An open picture: its pixels for reading, and a smaller copy for looking at.
 *
 * @param name of the file, without its folder
 * @param image the smaller copy, as the screen shows its colours
 */
public record ShownPicture(String name, Picture picture, Image image) {
  private static final int LONGEST = 1800;

  static ShownPicture of(String name, Picture picture, BooleanSupplier stopped) {
    int longest = Math.max(picture.width(), picture.height());
    int step = Math.max(1, (longest + LONGEST - 1) / LONGEST);
    int width = Math.max(1, picture.width() / step);
    int height = Math.max(1, picture.height() / step);
    int[] pixels = new int[width * height];
    for (int y = 0; y < height; y++) {
      if (stopped.getAsBoolean()) {
        throw new CancellationException();
      }
      for (int x = 0; x < width; x++) {
        LinearSrgb light = picture.linear(x * step, y * step);
        pixels[y * width + x] =
            0xff000000
                | (encoded(light.red()) << 16)
                | (encoded(light.green()) << 8)
                | encoded(light.blue());
      }
    }
    WritableImage image = new WritableImage(width, height);
    image
        .getPixelWriter()
        .setPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
    return new ShownPicture(name, picture, image);
  }

  private static int encoded(double linear) {
    return (int) Math.round(255 * Math.min(1, Srgb.encode(Math.max(0, Math.min(1, linear)))));
  }
}
