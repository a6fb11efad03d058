package org.panwright.colour;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Colours as people type them: sRGB as six hexadecimal digits, with or without {@code #}, or CIELAB
 * (D65) as three numbers.
 *
 * <p>The numbers are parted by blanks, semicolons or commas; a comma within a number is a decimal
 * comma where the numbers are parted otherwise.
 */
public final class ColourText {
  private static final Pattern HEX = Pattern.compile("#?([0-9a-fA-F]{6})");
  private static final double MOST_CHROMA = 200;

  private ColourText() {}

  /** The colour, as CIELAB under D65; empty if the text is none. */
  public static Optional<Lab> parse(String text) {
    String stripped = text.strip();
    Matcher hex = HEX.matcher(stripped);
    if (hex.matches()) {
      int rgb = Integer.parseInt(hex.group(1), 16);
      Srgb srgb = Srgb.ofBytes(rgb >> 16, rgb >> 8 & 255, rgb & 255);
      return Optional.of(Lab.of(srgb.toXyzD65(), Light.D65.white()));
    }
    String[] numbers = stripped.split("[\\s;]+", -1);
    if (numbers.length != 3) {
      numbers = stripped.split("[,;\\s]+", -1);
    }
    return numbers.length == 3 ? lab(numbers) : Optional.empty();
  }

  private static Optional<Lab> lab(String... numbers) {
    double[] lab = new double[3];
    for (int i = 0; i < 3; i++) {
      try {
        String number =
            numbers[i].endsWith(",")
                ? numbers[i].substring(0, numbers[i].length() - 1)
                : numbers[i];
        lab[i] = Double.parseDouble(number.replace(',', '.').replace('−', '-'));
      } catch (NumberFormatException noNumber) {
        return Optional.empty();
      }
    }
    boolean isColour =
        lab[0] >= 0
            && lab[0] <= 100
            && Math.abs(lab[1]) <= MOST_CHROMA
            && Math.abs(lab[2]) <= MOST_CHROMA;
    return isColour ? Optional.of(new Lab(lab[0], lab[1], lab[2])) : Optional.empty();
  }
}
