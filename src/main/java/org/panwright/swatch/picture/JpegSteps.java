package org.panwright.swatch.picture;

/**
 * What a progressive JPEG, which comes in several steps of growing sharpness, asks of whoever
 * decodes it.
 *
 * <p>The coefficients of all its blocks have to be kept until the last step (ITU-T T.81, section
 * 4.6), two bytes each, outside the program's heap, whatever size is wanted in the end:
 *
 * <pre>bytes = Σ ⌈w hᵢ / 8 h⌉ · ⌈H vᵢ / 8 v⌉ · 64 · 2</pre>
 *
 * <p>over the components i with sampling factors hᵢ, vᵢ whose largest are h, v; w and H are the
 * pixels of the picture. For 100 megapixels with colours at half the resolution, as cameras write
 * them, that is 286 MB.
 */
final class JpegSteps {
  private static final int MOST_MEGABYTES = 320;
  private static final int MOST_SCANS = 100;
  private static final int BLOCK_BYTES = 64 * 2;

  private JpegSteps() {}

  /** Refuses a frame header (T.81, B.2.2) whose coefficients would take too much memory. */
  static void requireBearable(byte[] frame) throws PictureFaultException {
    int height = sixteen(frame, 1);
    int width = sixteen(frame, 3);
    int components = frame[5] & 0xff;
    int mostAcross = 1;
    int mostDown = 1;
    for (int i = 0; i < components; i++) {
      mostAcross = Math.max(mostAcross, across(frame, i));
      mostDown = Math.max(mostDown, down(frame, i));
    }
    long bytes = 0;
    for (int i = 0; i < components; i++) {
      long columns = ceil((long) width * across(frame, i), 8L * mostAcross);
      long rows = ceil((long) height * down(frame, i), 8L * mostDown);
      bytes += columns * rows * BLOCK_BYTES;
    }
    if (bytes > (long) MOST_MEGABYTES << 20) {
      throw new PictureFaultException(
          new PictureFault.TooManySteps(width, height, bytes >> 20, MOST_MEGABYTES));
    }
  }

  /** Refuses more scans than any encoder makes; each costs the time of a whole picture. */
  static void requireFew(int scans) throws PictureFaultException {
    if (scans > MOST_SCANS) {
      throw new PictureFaultException(new PictureFault.RareJpeg("over " + MOST_SCANS + " scans"));
    }
  }

  private static int across(byte[] frame, int component) {
    return (frame[7 + 3 * component] & 0xff) >> 4;
  }

  private static int down(byte[] frame, int component) {
    return frame[7 + 3 * component] & 0x0f;
  }

  private static int sixteen(byte[] bytes, int at) {
    return ((bytes[at] & 0xff) << 8) | (bytes[at + 1] & 0xff);
  }

  private static long ceil(long value, long by) {
    return (value + by - 1) / by;
  }
}
