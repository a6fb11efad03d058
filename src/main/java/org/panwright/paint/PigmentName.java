package org.panwright.paint;

import java.util.regex.Pattern;

/**
 * A Colour Index generic name such as {@code PB15:3}, with a plain word where one name covers
 * several kinds (PR101 "transparent").
 *
 * @param code the generic name: P, a hue letter group (Y O R V B G Br Bk W), a number, perhaps a
 *     colon and a digit
 * @param variant the kind, empty for the only or usual one
 */
public record PigmentName(String code, String variant) implements Comparable<PigmentName> {
  private static final Pattern CODE = Pattern.compile("P(Y|O|R|V|B|G|Br|Bk|W)\\d{1,3}(:\\d)?");

  public PigmentName {
    if (!isCode(code)) {
      throw new IllegalArgumentException("not a Colour Index generic name: " + code);
    }
    variant = variant.strip();
  }

  /** The name without a variant. */
  public static PigmentName of(String code) {
    return new PigmentName(code, "");
  }

  /** A name from its written form: the code, then perhaps a space and the variant. */
  public static PigmentName parse(String text) {
    String stripped = text.strip();
    int space = stripped.indexOf(' ');
    return space < 0
        ? of(stripped)
        : new PigmentName(stripped.substring(0, space), stripped.substring(space + 1));
  }

  /** Whether {@code text} has the form of a Colour Index generic name. */
  public static boolean isCode(String text) {
    return CODE.matcher(text).matches();
  }

  @Override
  public int compareTo(PigmentName other) {
    int byCode = code.compareTo(other.code);
    return byCode != 0 ? byCode : variant.compareTo(other.variant);
  }

  /** The written form, for example {@code PR101 transparent}. */
  @Override
  public String toString() {
    return variant.isEmpty() ? code : code + " " + variant;
  }
}
