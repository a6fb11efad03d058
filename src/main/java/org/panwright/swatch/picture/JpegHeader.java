package org.panwright.swatch.picture;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.TreeMap;

/**
 * The segments before a JPEG's first scan (ITU-T T.81, annex B): size, channels, Exif, profile.
 *
 * <p>A picture whose file names further pictures (a preview, a depth map) is read by its first one;
 * a file of frames one after the other is not one picture.
 */
final class JpegHeader {
  private static final int SOI = 0xd8;
  private static final int EOI = 0xd9;
  private static final int PROGRESSIVE = 0xc2;
  private static final int SOS = 0xda;
  private static final int DQT = 0xdb;
  private static final int APP1 = 0xe1;
  private static final int APP2 = 0xe2;
  private static final byte[] EXIF = ascii("Exif\0\0");
  private static final byte[] ICC = ascii("ICC_PROFILE\0");
  private static final byte[] FURTHER = ascii("MPF\0");

  private final byte[] file;
  private final TreeMap<Integer, byte[]> profile = new TreeMap<>();
  private long width = -1;
  private long height = -1;
  private int channels;
  private int orientation = ExifOrientation.UPRIGHT;
  private int quality = 100;
  private boolean namesFurther;

  private JpegHeader(byte[] file) {
    this.file = file;
  }

  static boolean begins(byte[] file) {
    return file.length > 3 && (file[0] & 0xff) == 0xff && (file[1] & 0xff) == SOI;
  }

  /**
   * Reads them, and hides the profile from whoever decodes the pixels: the samples are wanted as
   * they are stored.
   */
  static PictureHeader read(byte[] file) throws PictureFaultException {
    JpegHeader header = new JpegHeader(file);
    int scan = header.segments();
    header.refuse(scan);
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    header.profile.values().forEach(part -> whole.write(part, 0, part.length));
    return new PictureHeader(
        true, header.width, header.height, header.orientation, whole.toByteArray(), header.quality);
  }

  private int segments() throws PictureFaultException {
    int at = 2;
    while (at + 4 <= file.length) {
      if (at(at) != 0xff) {
        throw broken();
      }
      int marker = at(at + 1);
      if (marker == 0xff) {
        at++;
        continue;
      }
      int length = sixteen(at + 2);
      if (length < 2 || at + 2 + length > file.length) {
        throw broken();
      }
      if (marker == SOS) {
        return at;
      }
      segment(marker, at + 4, at + 2 + length);
      at += 2 + length;
    }
    throw broken();
  }

  private void segment(int marker, int from, int to) throws PictureFaultException {
    if (marker == APP1 && begins(from, to, EXIF)) {
      orientation = ExifOrientation.read(Arrays.copyOfRange(file, from + EXIF.length, to));
    } else if (marker == APP2 && begins(from, to, ICC) && to - from > ICC.length + 2) {
      int number = at(from + ICC.length);
      profile.put(number, Arrays.copyOfRange(file, from + ICC.length + 2, to));
      file[from] = 'X';
    } else if (marker == APP2 && begins(from, to, FURTHER)) {
      namesFurther = true;
    } else if (marker == DQT) {
      quality = Math.min(quality, JpegQuality.of(Arrays.copyOfRange(file, from, to)));
    } else if (marker >= 0xc0
        && marker <= 0xcf
        && marker != 0xc4
        && marker != 0xc8
        && marker != 0xcc) {
      frame(marker, from, to);
    }
  }

  private void frame(int marker, int from, int to) throws PictureFaultException {
    if (to - from < 6 || width >= 0) {
      throw broken();
    }
    height = sixteen(from + 1);
    width = sixteen(from + 3);
    channels = at(from + 5);
    if (to - from < 6 + 3 * channels) {
      throw broken();
    }
    if (at(from) != 8) {
      throw new PictureFaultException(new PictureFault.RareJpeg(at(from) + " bits"));
    }
    if (marker == PROGRESSIVE) {
      JpegSteps.requireBearable(Arrays.copyOfRange(file, from, to));
    }
    if (marker > PROGRESSIVE) {
      boolean lossless = marker == 0xc3 || marker == 0xc7 || marker == 0xcb || marker == 0xcf;
      throw new PictureFaultException(
          new PictureFault.RareJpeg(lossless ? "lossless" : "arithmetic"));
    }
  }

  private void refuse(int scan) throws PictureFaultException {
    if (channels == 4) {
      throw new PictureFaultException(new PictureFault.Cmyk());
    }
    if (channels == 1) {
      throw new PictureFaultException(new PictureFault.Grey());
    }
    if (channels != 3) {
      throw broken();
    }
    int end = end(scan);
    if (end < 0) {
      throw broken();
    }
    boolean another = end + 4 <= file.length && at(end + 2) == 0xff && at(end + 3) == SOI;
    if (another && !namesFurther) {
      throw new PictureFaultException(new PictureFault.Several());
    }
  }

  /**
   * Where the picture's end is marked, or −1: then the file was cut short. Within a scan a byte
   * 0xff is followed by 0 or a restart marker.
   *
   * @throws PictureFaultException if the picture comes in more steps than any sensible one
   */
  private int end(int scan) throws PictureFaultException {
    int scans = 0;
    for (int i = scan; i + 2 <= file.length; i++) {
      if (at(i) == 0xff && at(i + 1) == EOI) {
        return i;
      }
      if (at(i) == 0xff && at(i + 1) == SOS) {
        scans++;
        JpegSteps.requireFew(scans);
      }
    }
    return -1;
  }

  private boolean begins(int from, int to, byte[] name) {
    return to - from >= name.length
        && Arrays.equals(file, from, from + name.length, name, 0, name.length);
  }

  private int sixteen(int place) {
    return (at(place) << 8) | at(place + 1);
  }

  private int at(int place) {
    return file[place] & 0xff;
  }

  private static PictureFaultException broken() {
    return new PictureFaultException(new PictureFault.Broken());
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
