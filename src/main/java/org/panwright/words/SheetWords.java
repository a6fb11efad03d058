package org.panwright.words;

import java.util.List;
import java.util.Locale;
import org.panwright.kit.SheetSize;

/** Sizes of sheets to paint on, by the names they are sold under. */
public final class SheetWords {
  /** Sizes offered: ISO 216, and the halvings and blocks sold by the inch. */
  public static final List<SheetSize> OFFERED =
      List.of(
          new SheetSize(105, 148),
          SheetSize.A5,
          new SheetSize(210, 297),
          new SheetSize(297, 420),
          new SheetSize(127, 178),
          new SheetSize(178, 254),
          new SheetSize(229, 305),
          new SheetSize(280, 380),
          new SheetSize(380, 560));

  private static final List<String> NAMES =
      List.of(
          "A6",
          "A5",
          "A4",
          "A3",
          "5 × 7 in",
          "7 × 10 in",
          "9 × 12 in",
          "quarter sheet",
          "half sheet");

  private SheetWords() {}

  /** A size, with its name if it has one: "A5 (148 × 210 mm)". */
  public static String size(SheetSize size) {
    String mm = millimetres(size);
    String name = name(size);
    return name.equals(mm) ? mm : "%s (%s)".formatted(name, mm);
  }

  /** The name of a size, else its millimetres. */
  public static String name(SheetSize size) {
    for (int i = 0; i < NAMES.size(); i++) {
      SheetSize known = OFFERED.get(i);
      if (known.equals(size)) {
        return NAMES.get(i);
      }
      if (known.widthMm() == size.heightMm() && known.heightMm() == size.widthMm()) {
        return NAMES.get(i) + " across";
      }
    }
    return millimetres(size);
  }

  private static String millimetres(SheetSize size) {
    return String.format(
        Locale.ROOT,
        "%s × %s mm",
        WordParts.number(size.widthMm()),
        WordParts.number(size.heightMm()));
  }
}
