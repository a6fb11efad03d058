package org.panwright.swatch.picture;

import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.Raster;
import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import javax.imageio.stream.FileImageInputStream;

/**
 * Reads a PNG or JPEG of red, green and blue.
 *
 * <p>What the file says of itself is checked before a pixel is decoded. Samples of 8 and 16 bits,
 * an embedded ICC profile (sRGB where there is none), the camera's orientation. Transparent pixels
 * are laid on white. Grey, CMYK and moving pictures are refused. How much memory this takes stands
 * in docs/decisions/0100-memory-of-pictures.md.
 */
public final class PictureFile {
  /** The largest picture that is read, in millions of pixels. */
  public static final int MOST_MEGAPIXELS = 100;

  /** Pictures are thinned out to about this many pixels. */
  static final int KEPT_PIXELS = 8_000_000;

  private static final long MOST_BYTES = 1L << 30;
  private static final long MOST_JPEG_BYTES = 1L << 28;
  private static final int START = 16;

  private PictureFile() {}

  /**
   * Reads a picture. Takes a second for each 20 megapixels or so.
   *
   * @param progress told the share done, 0..1
   * @param stopped asked now and then whether to stop
   * @throws PictureFaultException if the file cannot be read as a picture of swatches
   * @throws CancellationException if stopped
   */
  public static Picture read(Path file, DoubleConsumer progress, BooleanSupplier stopped)
      throws PictureFaultException {
    try {
      byte[] start = start(file);
      if (JpegHeader.begins(start)) {
        checkLength(file, MOST_JPEG_BYTES);
        byte[] whole = Files.readAllBytes(file);
        PictureHeader header = checked(JpegHeader.read(whole));
        return Decoder.decode(header, new BytesInput(whole), progress, stopped);
      }
      if (PngHeader.begins(start)) {
        checkLength(file, MOST_BYTES);
        PictureHeader header = checked(pngHeader(file));
        return Decoder.decode(header, new FileImageInputStream(file.toFile()), progress, stopped);
      }
      throw new PictureFaultException(OtherKinds.of(start));
    } catch (EOFException cutShort) {
      throw new PictureFaultException(new PictureFault.Broken());
    } catch (IOException unreadable) {
      throw new PictureFaultException(new PictureFault.Unreadable());
    } catch (OutOfMemoryError full) {
      throw new PictureFaultException(new PictureFault.NoMemory());
    }
  }

  private static byte[] start(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(START);
    }
  }

  private static PictureHeader pngHeader(Path file) throws IOException, PictureFaultException {
    try (DataInputStream in =
        new DataInputStream(new BufferedInputStream(Files.newInputStream(file)))) {
      return PngHeader.read(in);
    }
  }

  private static void checkLength(Path file, long most) throws IOException, PictureFaultException {
    long length = Files.size(file);
    if (length > most) {
      throw new PictureFaultException(new PictureFault.TooManyBytes(length >> 20, most >> 20));
    }
  }

  private static PictureHeader checked(PictureHeader header) throws PictureFaultException {
    if (header.width() < 1 || header.height() < 1) {
      throw new PictureFaultException(new PictureFault.NoPixels(header.width(), header.height()));
    }
    boolean tooMany = header.width() > MOST_MEGAPIXELS * 1_000_000L / header.height();
    if (tooMany || Math.max(header.width(), header.height()) > 65_535) {
      throw new PictureFaultException(
          new PictureFault.TooManyPixels(header.width(), header.height(), MOST_MEGAPIXELS));
    }
    return header;
  }

  /** The picture of decoded pixels. */
  static Picture picture(PictureHeader header, BufferedImage image, int step)
      throws PictureFaultException {
    Raster raster = image.getRaster();
    ColorModel model = image.getColorModel();
    Turn turn = new Turn(header.orientation(), image.getWidth(), image.getHeight());
    Samples samples = new Samples(raster, model);
    short[] all = new short[3 * image.getWidth() * image.getHeight()];
    long translucent = 0;
    int[] pixel = new int[4];
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        samples.at(x, y, pixel);
        if (pixel[3] < Samples.FULL) {
          translucent++;
        }
        int at = 3 * turn.index(x, y);
        for (int c = 0; c < 3; c++) {
          all[at + c] = (short) pixel[c];
        }
      }
    }
    return new Picture(
        turn.seenWidth(),
        turn.seenHeight(),
        all,
        EmbeddedProfile.colours(header.profile()),
        step,
        header.quality(),
        3.0 * translucent / all.length);
  }
}
