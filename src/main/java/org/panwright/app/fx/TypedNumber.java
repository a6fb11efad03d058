package org.panwright.app.fx;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Numbers as people type them, with a comma or a point. */
public final class TypedNumber {
  private static final Pattern PLAIN =
      Pattern.compile("[+-]?(\\d{1,9}([.,]\\d{0,9})?|[.,]\\d{1,9})");

  private TypedNumber() {}

  /** The number in {@code text}; empty if it is none. */
  public static OptionalDouble read(String text) {
    String typed = text.strip();
    return PLAIN.matcher(typed).matches()
        ? OptionalDouble.of(Double.parseDouble(typed.replace(',', '.')))
        : OptionalDouble.empty();
  }

  /** A number as it would be typed, with up to {@code decimals} places and no needless zeros. */
  public static String write(double number, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", number);
    return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
  }
}
