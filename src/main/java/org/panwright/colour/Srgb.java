package org.panwright.colour;

/**
 * A colour of the screen in sRGB (IEC 61966-2-1), each coordinate encoded and in 0..1.
 *
 * <p>A coordinate outside 0..1 is refused: what the screen cannot show goes through {@link
 * GamutFit}.
 */
public record Srgb(double red, double green, double blue) {
  public Srgb {
    Finite.require("sRGB", red, green, blue);
    if (Math.min(red, Math.min(green, blue)) < 0 || Math.max(red, Math.max(green, blue)) > 1) {
      throw new IllegalArgumentException(
          "sRGB must lie in 0..1, was %s, %s, %s".formatted(red, green, blue));
    }
  }

  /** The colour with coordinates given as whole numbers 0..255. */
  public static Srgb ofBytes(int red, int green, int blue) {
    return new Srgb(red / 255.0, green / 255.0, blue / 255.0);
  }

  /**
   * The tristimulus values (D65) of this colour: decoding, then the primaries of IEC 61966-2-1.
   *
   * <pre>decoded = v / 12.92 for v ≤ 0.04045, ((v + 0.055) / 1.055)^2.4 above</pre>
   */
  public Xyz toXyzD65() {
    return new LinearSrgb(decode(red), decode(green), decode(blue)).toXyzD65();
  }

  /** The decoded, light-linear value of one encoded coordinate. */
  public static double decode(double encoded) {
    return encoded <= 0.04045 ? encoded / 12.92 : Math.pow((encoded + 0.055) / 1.055, 2.4);
  }

  /** The encoded value of one light-linear coordinate; inverse of {@link #decode}. */
  public static double encode(double linear) {
    return linear <= 0.0031308 ? linear * 12.92 : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
  }

  /** The red coordinate as a whole number 0..255. */
  public int redByte() {
    return (int) Math.round(red * 255);
  }

  /** The green coordinate as a whole number 0..255. */
  public int greenByte() {
    return (int) Math.round(green * 255);
  }

  /** The blue coordinate as a whole number 0..255. */
  public int blueByte() {
    return (int) Math.round(blue * 255);
  }

  /** The colour as a CSS hexadecimal colour, for example {@code #a3401f}. */
  public String toHex() {
    return "#%02x%02x%02x".formatted(redByte(), greenByte(), blueByte());
  }
}
