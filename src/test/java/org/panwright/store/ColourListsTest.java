package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.panwright.colour.Srgb;

/** Checked by a grammar of the parts of CSS that are used, from the W3C's CSS Syntax Level 3. */
class ColourListsTest {
  /** 4.3.2: a comment ends at the first star and slash. */
  private static final String COMMENT = "/\\*(?:[^*]|\\*(?!/))*\\*/";

  private static final String SPACE = "(?:[ \\n\\t]|" + COMMENT + ")*";

  /** A custom property is an identifier that begins with two hyphens (CSS Variables 1, 2). */
  private static final String PROPERTY = "--[A-Za-z0-9_\\-\\u0080-\\uffff]+";

  /** CSS Color Level 4, 5.2: three or four, six or eight hex digits; six are written here. */
  private static final String HEX = "#[0-9a-fA-F]{6}";

  private static final String DECLARATION =
      PROPERTY + SPACE + ":" + SPACE + HEX + SPACE + ";" + SPACE;

  private static final Pattern SHEET =
      Pattern.compile(
          SPACE + ":root" + SPACE + "\\{" + SPACE + "(?:" + DECLARATION + ")*\\}" + SPACE);

  private static final List<NamedColour> COLOURS =
      List.of(
          new NamedColour("Ultramarine blue", srgb(42, 63, 155)),
          new NamedColour("ultramarine  Blue", srgb(1, 2, 3)),
          new NamedColour("Grün; } /* hell */", srgb(0, 128, 255)),
          new NamedColour("أخضر", srgb(9, 9, 9)),
          new NamedColour("5 o'clock\nred", srgb(255, 0, 0)));

  @Test
  void theStyleSheetFollowsTheGrammar() {
    String css = ColourLists.css("A kit */ } with \n odd {name}", COLOURS);
    assertThat(SHEET.matcher(css).matches()).as(css).isTrue();
  }

  @Test
  void everyColourHasAPropertyOfItsOwn() {
    String css = ColourLists.css("kit", COLOURS).replaceAll(COMMENT, "");
    Matcher matcher = Pattern.compile("(" + PROPERTY + "): (" + HEX + ")").matcher(css);
    List<String> found = new ArrayList<>();
    while (matcher.find()) {
      found.add(matcher.group(1) + " " + matcher.group(2));
    }
    assertThat(found)
        .containsExactly(
            "--ultramarine-blue #2a3f9b",
            "--ultramarine-blue-2 #010203",
            "--grun-hell #0080ff",
            "--colour #090909",
            "--5-o-clock-red #ff0000");
  }

  /** The shared palette format, as its readers take it: a mark, heads, then R G B and a name. */
  @Test
  void thePaletteIsReadLineByLine() {
    String[] lines = ColourLists.palette("Sea\nkit", 2, COLOURS).split("\n", -1);
    assertThat(lines[0]).isEqualTo("GIMP Palette");
    assertThat(lines[1]).isEqualTo("Name: Sea kit");
    assertThat(lines[2]).isEqualTo("Columns: 2");
    assertThat(lines[3]).startsWith("#");
    Pattern entry = Pattern.compile("\\s*(\\d{1,3})\\s+(\\d{1,3})\\s+(\\d{1,3})\\s+(.*)");
    List<String> read = new ArrayList<>();
    for (int i = 4; i < lines.length - 1; i++) {
      Matcher matcher = entry.matcher(lines[i]);
      assertThat(matcher.matches()).as(lines[i]).isTrue();
      read.add(
          String.join(" ", matcher.group(1), matcher.group(2), matcher.group(3), matcher.group(4)));
    }
    assertThat(read)
        .containsExactly(
            "42 63 155 Ultramarine blue",
            "1 2 3 ultramarine  Blue",
            "0 128 255 Grün; } /* hell */",
            "9 9 9 أخضر",
            "255 0 0 5 o'clock red");
    assertThat(lines[lines.length - 1]).isEmpty();
  }

  private static Srgb srgb(int red, int green, int blue) {
    return new Srgb(red / 255.0, green / 255.0, blue / 255.0);
  }
}
