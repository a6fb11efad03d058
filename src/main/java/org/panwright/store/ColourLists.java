package org.panwright.store;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Lists of colours as text other programs read. */
public final class ColourLists {
  /** The line by which readers of the palette format know it. */
  private static final String PALETTE_MARK = "GIMP Palette";

  private ColourLists() {}

  /**
   * A style sheet of custom properties (CSS Custom Properties for Cascading Variables Module Level
   * 1, W3C): {@code --ultramarine-blue: #2a3f9b;}. Names are brought to a–z, 0–9 and hyphens and
   * made different from each other.
   *
   * @param title said in a comment on top
   */
  public static String css(String title, List<NamedColour> colours) {
    StringBuilder css = new StringBuilder("/* " + comment(title) + " */\n:root {\n");
    Set<String> taken = new HashSet<>();
    for (NamedColour colour : colours) {
      css.append("  --")
          .append(distinct(identifier(colour.name()), taken))
          .append(": ")
          .append(colour.srgb().toHex().toLowerCase(Locale.ROOT))
          .append("; /* ")
          .append(comment(colour.name()))
          .append(" */\n");
    }
    return css.append("}\n").toString();
  }

  /**
   * The plain palette of RGB numbers that free image editors share: a line that names the format,
   * the palette's name, the number of columns to show it in, then one line a colour, red, green and
   * blue from 0 to 255 and the name.
   */
  public static String palette(String title, int columns, List<NamedColour> colours) {
    StringBuilder text = new StringBuilder(PALETTE_MARK + "\n");
    text.append("Name: ").append(line(title)).append('\n');
    text.append("Columns: ").append(columns).append("\n#\n");
    for (NamedColour colour : colours) {
      text.append(
          String.format(
              Locale.ROOT,
              "%3d %3d %3d\t%s%n",
              colour.srgb().redByte(),
              colour.srgb().greenByte(),
              colour.srgb().blueByte(),
              line(colour.name())));
    }
    return text.toString().replace(System.lineSeparator(), "\n");
  }

  private static String identifier(String name) {
    String plain =
        Normalizer.normalize(name, Normalizer.Form.NFD)
            .replaceAll("\\p{M}", "")
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-+|-+$", "");
    return plain.isEmpty() ? "colour" : plain;
  }

  private static String distinct(String name, Set<String> taken) {
    String distinct = name;
    for (int number = 2; !taken.add(distinct); number++) {
      distinct = name + "-" + number;
    }
    return distinct;
  }

  private static String comment(String text) {
    return line(text).replace("*/", "* /");
  }

  private static String line(String text) {
    return text.replaceAll("[\\p{Cntrl}\\u2028\\u2029]+", " ").strip();
  }
}
