package org.panwright.app.share;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/**
 * A picture as PNG that says how large it is on paper.
 *
 * <p>ISO/IEC 15948 (PNG), 11.3.5.3: the chunk {@code pHYs} holds the pixels for a metre across and
 * down, four bytes each, and the unit, one byte, 1 for metres; it stands before the first {@code
 * IDAT}.
 */
final class PngPicture {
  /** The signature of 8 bytes and the chunk IHDR of 25, which always come first. */
  private static final int AFTER_HEADER = 33;

  private static final double MM_FOR_INCH = 25.4;

  private PngPicture() {}

  /** The bytes of the file. */
  static byte[] of(BufferedImage picture, int dotsPerInch) {
    ByteArrayOutputStream plain = new ByteArrayOutputStream();
    try {
      ImageIO.write(picture, "png", plain);
    } catch (IOException e) {
      throw new UncheckedIOException("a picture could not be written to memory", e);
    }
    byte[] bytes = plain.toByteArray();
    byte[] size = size((int) Math.round(dotsPerInch * 1000 / MM_FOR_INCH));
    return ByteBuffer.allocate(bytes.length + size.length)
        .put(bytes, 0, AFTER_HEADER)
        .put(size)
        .put(bytes, AFTER_HEADER, bytes.length - AFTER_HEADER)
        .array();
  }

  private static byte[] size(int pixelsPerMetre) {
    byte[] content =
        ByteBuffer.allocate(13)
            .put("pHYs".getBytes(StandardCharsets.US_ASCII))
            .putInt(pixelsPerMetre)
            .putInt(pixelsPerMetre)
            .put((byte) 1)
            .array();
    CRC32 check = new CRC32();
    check.update(content);
    return ByteBuffer.allocate(21).putInt(9).put(content).putInt((int) check.getValue()).array();
  }
}
