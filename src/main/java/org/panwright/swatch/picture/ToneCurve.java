package org.panwright.swatch.picture;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.function.DoubleUnaryOperator;

/**
 * The curve of one channel as an ICC profile stores it: a table or gamma ({@code curv}, ICC.1:2022
 * section 10.6) or a formula ({@code para}, section 10.18).
 */
final class ToneCurve {
  private static final double FIXED = 65536;
  private static final int[] PARAMETERS = {1, 3, 4, 5, 7};

  private ToneCurve() {}

  /**
   * The curve from encoded to linear.
   *
   * @param tag the tag's bytes
   * @throws IllegalArgumentException if they are no curve
   */
  static DoubleUnaryOperator read(byte[] tag) {
    if (tag == null || tag.length < 12) {
      throw new IllegalArgumentException("a curve has 12 bytes or more");
    }
    ByteBuffer bytes = ByteBuffer.wrap(tag);
    String type = new String(tag, 0, 4, StandardCharsets.US_ASCII);
    if (type.equals("curv")) {
      return table(bytes);
    }
    if (type.equals("para")) {
      return formula(bytes);
    }
    throw new IllegalArgumentException("no curve of type " + type);
  }

  private static DoubleUnaryOperator table(ByteBuffer bytes) {
    int count = bytes.getInt(8);
    if (count == 0) {
      return encoded -> encoded;
    }
    if (count < 0 || 12 + 2L * count > bytes.capacity()) {
      throw new IllegalArgumentException("a curve of " + count + " entries is cut short");
    }
    if (count == 1) {
      double gamma = (bytes.getShort(12) & 0xffff) / 256.0;
      return encoded -> Math.pow(encoded, gamma);
    }
    return encoded -> {
      double at = encoded * (count - 1);
      int below = Math.min(count - 2, (int) at);
      double part = at - below;
      return (entry(bytes, below) * (1 - part) + entry(bytes, below + 1) * part) / 65535;
    };
  }

  private static int entry(ByteBuffer bytes, int index) {
    return bytes.getShort(12 + 2 * index) & 0xffff;
  }

  /** Types 0 to 4; the parameters are called g, a, b, c, d, e, f there. */
  private static DoubleUnaryOperator formula(ByteBuffer bytes) {
    int type = bytes.getShort(8);
    if (type < 0 || type >= PARAMETERS.length || 12 + 4 * PARAMETERS[type] > bytes.capacity()) {
      throw new IllegalArgumentException("no formula of type " + type);
    }
    double[] p = new double[7];
    for (int i = 0; i < PARAMETERS[type]; i++) {
      p[i] = bytes.getInt(12 + 4 * i) / FIXED;
    }
    double g = p[0];
    double a = type == 0 ? 1 : p[1];
    double b = p[2];
    return switch (type) {
      case 0 -> x -> Math.pow(x, g);
      case 1 -> x -> x >= -b / a ? power(a * x + b, g) : 0;
      case 2 -> x -> x >= -b / a ? power(a * x + b, g) + p[3] : p[3];
      case 3 -> x -> x >= p[4] ? power(a * x + b, g) : p[3] * x;
      default -> x -> x >= p[4] ? power(a * x + b, g) + p[5] : p[3] * x + p[6];
    };
  }

  private static double power(double base, double exponent) {
    return Math.pow(Math.max(0, base), exponent);
  }
}
