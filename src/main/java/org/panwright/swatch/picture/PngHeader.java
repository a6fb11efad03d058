package org.panwright.swatch.picture;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.util.zip.InflaterInputStream;

/**
 * The chunks before a PNG's first pixels (W3C, Portable Network Graphics, third edition): size,
 * kind of colours, profile, Exif, and whether it moves.
 */
final class PngHeader {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
  private static final int LONGEST_CHUNK = 16 << 20;
  private static final int LONGEST_PROFILE = 8 << 20;
  private static final int GREY = 0;
  private static final int GREY_AND_ALPHA = 4;

  private long width = -1;
  private long height = -1;
  private int orientation = ExifOrientation.UPRIGHT;
  private byte[] profile = {};

  private PngHeader() {}

  static boolean begins(byte[] start) {
    return start.length >= SIGNATURE.length
        && java.util.Arrays.equals(start, 0, SIGNATURE.length, SIGNATURE, 0, SIGNATURE.length);
  }

  /** Reads up to the first pixels. */
  static PictureHeader read(DataInputStream file) throws IOException, PictureFaultException {
    file.skipNBytes(SIGNATURE.length);
    PngHeader header = new PngHeader();
    boolean more = true;
    while (more) {
      int length = file.readInt();
      String type = new String(file.readNBytes(4), java.nio.charset.StandardCharsets.US_ASCII);
      if (type.equals("IDAT")) {
        more = false;
      } else if (length < 0) {
        throw broken();
      } else if (length > LONGEST_CHUNK) {
        file.skipNBytes(length + 4L);
      } else {
        header.chunk(type, file.readNBytes(length));
        file.skipNBytes(4);
      }
    }
    if (header.width < 0) {
      throw broken();
    }
    return new PictureHeader(
        false, header.width, header.height, header.orientation, header.profile, 100);
  }

  private void chunk(String type, byte[] content) throws PictureFaultException {
    switch (type) {
      case "IHDR" -> size(content);
      case "acTL" -> throw new PictureFaultException(new PictureFault.Several());
      case "eXIf" -> orientation = ExifOrientation.read(content);
      case "iCCP" -> profile = inflated(content);
      case "IEND" -> throw broken();
      default -> {
        // Text, time and the like say nothing about the colours.
      }
    }
  }

  private void size(byte[] content) throws PictureFaultException {
    if (content.length != 13) {
      throw broken();
    }
    java.nio.ByteBuffer bytes = java.nio.ByteBuffer.wrap(content);
    width = bytes.getInt(0) & 0xffffffffL;
    height = bytes.getInt(4) & 0xffffffffL;
    int colours = content[9];
    if (colours == GREY || colours == GREY_AND_ALPHA) {
      throw new PictureFaultException(new PictureFault.Grey());
    }
  }

  /** A name, a zero, the method, then the profile deflated; no longer than any profile is. */
  private static byte[] inflated(byte[] content) throws PictureFaultException {
    int name = 0;
    while (name < content.length && content[name] != 0) {
      name++;
    }
    if (name + 2 >= content.length) {
      throw broken();
    }
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    try (InflaterInputStream in =
        new InflaterInputStream(
            new ByteArrayInputStream(content, name + 2, content.length - name - 2))) {
      whole.write(in.readNBytes(LONGEST_PROFILE));
    } catch (IOException cutShort) {
      throw broken();
    }
    return whole.toByteArray();
  }

  private static PictureFaultException broken() {
    return new PictureFaultException(new PictureFault.Broken());
  }
}
