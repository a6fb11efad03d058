package org.panwright.swatch.picture;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * Which way up a camera held the picture: tag 274 of the Exif block (CIPA DC-008, section 4.6.4;
 * TIFF 6.0, section 8).
 *
 * <p>1 upright, 2 mirrored, 3 upside down, 4 mirrored and upside down, 5 to 8 the same lying on
 * their sides.
 */
final class ExifOrientation {
  static final int UPRIGHT = 1;

  private static final int TAG = 0x0112;
  private static final int SHORT = 3;
  private static final int ENTRY = 12;

  private ExifOrientation() {}

  /** The orientation in a TIFF block; upright where the block is broken or says nothing. */
  static int read(byte[] tiff) {
    if (tiff.length < 8) {
      return UPRIGHT;
    }
    ByteBuffer bytes = ByteBuffer.wrap(tiff);
    if (tiff[0] == 'I' && tiff[1] == 'I') {
      bytes.order(ByteOrder.LITTLE_ENDIAN);
    } else if (tiff[0] != 'M' || tiff[1] != 'M') {
      return UPRIGHT;
    }
    long first = bytes.getInt(4) & 0xffffffffL;
    if (bytes.getShort(2) != 42 || first + 2 > tiff.length) {
      return UPRIGHT;
    }
    int entries = bytes.getShort((int) first) & 0xffff;
    for (int i = 0; i < entries; i++) {
      long at = first + 2 + (long) ENTRY * i;
      if (at + ENTRY > tiff.length) {
        return UPRIGHT;
      }
      int entry = (int) at;
      if ((bytes.getShort(entry) & 0xffff) == TAG && bytes.getShort(entry + 2) == SHORT) {
        int value = bytes.getShort(entry + 8) & 0xffff;
        return value >= 1 && value <= 8 ? value : UPRIGHT;
      }
    }
    return UPRIGHT;
  }
}
