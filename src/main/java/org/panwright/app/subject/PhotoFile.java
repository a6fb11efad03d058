package org.panwright.app.subject;

import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import org.panwright.colour.LinearSrgb;
import org.panwright.colour.Srgb;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.PictureFaultException;
import org.panwright.swatch.picture.PictureFile;
import org.panwright.words.SubjectWords;

/** Photos from PNG and JPEG files, their profile and orientation heeded. */
final class PhotoFile implements PhotoSource {
  /** Photos are thinned out to at most about this many pixels, by averaging in linear light. */
  static final int SHOWN_PIXELS = 1_000_000;

  @Override
  public Photo read(Path file, DoubleConsumer progress, BooleanSupplier stopped)
      throws UnreadablePhotoException {
    String name = file.getFileName().toString();
    try {
      Picture picture = PictureFile.read(file, progress, stopped);
      return shown(name, picture, stopped);
    } catch (PictureFaultException fault) {
      throw new UnreadablePhotoException(SubjectWords.unreadable(name, fault.fault()));
    }
  }

  private static Photo shown(String name, Picture picture, BooleanSupplier stopped) {
    double pixels = (double) picture.width() * picture.height();
    int side = Math.max(1, (int) Math.ceil(Math.sqrt(pixels / SHOWN_PIXELS)));
    int width = Math.max(1, picture.width() / side);
    int height = Math.max(1, picture.height() / side);
    int[] rgb = new int[width * height];
    for (int y = 0; y < height; y++) {
      if (stopped.getAsBoolean()) {
        throw new CancellationException("the photo is no longer wanted");
      }
      for (int x = 0; x < width; x++) {
        rgb[y * width + x] = mean(picture, x * side, y * side, side);
      }
    }
    return new Photo(name, width, rgb);
  }

  private static int mean(Picture picture, int left, int top, int side) {
    double red = 0;
    double green = 0;
    double blue = 0;
    int count = 0;
    for (int y = top; y < Math.min(picture.height(), top + side); y++) {
      for (int x = left; x < Math.min(picture.width(), left + side); x++) {
        LinearSrgb pixel = picture.linear(x, y);
        red += pixel.red();
        green += pixel.green();
        blue += pixel.blue();
        count++;
      }
    }
    return 255 << 24
        | eightBit(red / count) << 16
        | eightBit(green / count) << 8
        | eightBit(blue / count);
  }

  /** Colours beyond the screen's are cut to it: what the photo shows is what is seen here. */
  private static int eightBit(double linear) {
    return (int) (255 * Srgb.encode(Math.min(1, Math.max(0, linear))) + 0.5);
  }
}
