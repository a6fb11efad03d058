package org.panwright.swatch.sheet;

/**
 * The check of eight bits at the end of a code: the remainder of the bits before it, as a
 * polynomial, divided by x⁸ + x² + x + 1 (the header check of ITU-T I.432.1, without its final
 * addition).
 *
 * <p>It misses one wrong reading of many bits in 256, and none of one to three bits in codes as
 * short as ours.
 */
final class Crc8 {
  private static final int POLYNOMIAL = 0x07;

  private Crc8() {}

  /** The remainder for the lowest {@code count} bits of {@code bits}, the highest first. */
  static int of(long bits, int count) {
    int remainder = 0;
    for (int i = count - 1; i >= 0; i--) {
      int bit = (int) (bits >>> i) & 1;
      int top = (remainder >>> 7) & 1;
      remainder = (remainder << 1) & 0xff;
      if ((bit ^ top) != 0) {
        remainder ^= POLYNOMIAL;
      }
    }
    return remainder;
  }
}
