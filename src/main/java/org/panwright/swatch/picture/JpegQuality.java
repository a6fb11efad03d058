package org.panwright.swatch.picture;

/**
 * How strongly a JPEG was compressed, judged by its first quantisation table against the one for
 * lightness that ITU-T T.81 gives as an example (table K.1), whose entries sum to 3688.
 *
 * <pre>scale = Σ table / Σ K.1;   quality = 100 − 50 scale  up to scale 1,  50 / scale  above</pre>
 *
 * <p>That scale is common practice of encoders, not a part of the standard.
 */
final class JpegQuality {
  private static final int ENTRIES = 64;
  private static final double SUM_K1 = 3688;

  private JpegQuality() {}

  /** The quality 1..100 of a segment of quantisation tables; 100 if it holds none for lightness. */
  static int of(byte[] segment) {
    if (segment.length < 1 + ENTRIES || (segment[0] & 0x0f) != 0) {
      return 100;
    }
    boolean wide = (segment[0] & 0xf0) != 0;
    if (wide && segment.length < 1 + 2 * ENTRIES) {
      return 100;
    }
    double sum = 0;
    for (int i = 0; i < ENTRIES; i++) {
      sum +=
          wide
              ? ((segment[1 + 2 * i] & 0xff) << 8) | (segment[2 + 2 * i] & 0xff)
              : segment[1 + i] & 0xff;
    }
    double scale = sum / SUM_K1;
    double quality = scale <= 1 ? 100 - 50 * scale : 50 / scale;
    return (int) Math.max(1, Math.min(100, Math.round(quality)));
  }
}
