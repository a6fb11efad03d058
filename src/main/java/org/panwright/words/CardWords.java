package org.panwright.words;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.panwright.kit.Fill;
import org.panwright.kit.Kit;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Granulation;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Paint;
import org.panwright.paint.Wash;

/** What the key card says. */
public final class CardWords {
  /** In a well without paint. */
  public static final String EMPTY_WELL = "empty";

  /** On a part of the tray to mix on. */
  public static final String MIXING_AREA = "mixing area";

  /** Stands in a swatch whose colour the print cannot reach. */
  public static final String BEYOND_PRINT = "+";

  /** Explains {@link #BEYOND_PRINT}. */
  public static final String BEYOND_PRINT_LEGEND =
      BEYOND_PRINT + " in a swatch: the paint is more vivid than shown";

  /** Explains the hollow square of a letter the fonts lack. */
  public static final String PLACEHOLDER_LEGEND =
      "\u25A1 stands for a letter or sign that this print has no shape for";

  /** Beside the ruler. */
  public static final String PRINT_AT_FULL_SIZE =
      "Print at 100 % (\u201cactual size\u201d, no fitting to the page). The ruler must measure 50"
          + " mm.";

  /** The unit at the end of the ruler. */
  public static final String RULER_UNIT = "mm";

  /** On a card that says only part of what there is to say. */
  public static final String SEE_LIST = "Names in full and what the marks mean: see the list.";

  /** For the painter who looks for the rest. */
  public static final String CONTINUES_ON_LIST =
      "The card has no room for everything at a legible size; the list printed with it has the"
          + " rest.";

  /** On a sheet whose card does not go into the lid. */
  public static final String LID_TOO_SMALL =
      "The lid is too small for a legible card, so the card is printed at A6.";

  /** On a sheet whose card would not fit the paper. */
  public static final String LARGER_THAN_PAPER =
      "The card is larger than the paper can print and was made smaller to fit.";

  /** Along the lower edge of a card for the lid: which way round it goes. */
  public static final String THIS_EDGE_TO_HINGE = "\u25BC this edge to the hinge \u25BC";

  /** The same where a card is narrow. */
  public static final String HINGE = "\u25BC hinge \u25BC";

  /** Which way round the wells are drawn. */
  public static final String HINGE_SIDE =
      "The thick line above the wells is the hinge side of the box.";

  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.UK);

  private CardWords() {}

  /** The title of the papers. */
  public static String title(String lineup) {
    return "Key card: " + lineup;
  }

  /** The title of one of several sheets. */
  public static String sheetTitle(String lineup, int sheet, int sheets) {
    return sheets == 1
        ? title(lineup)
        : "%s (sheet %d of %d)".formatted(title(lineup), sheet, sheets);
  }

  /** The heading of the list. */
  public static String listTitle(String lineup, int part, int parts) {
    return parts == 1 ? lineup + ": list" : "%s: list, %d of %d".formatted(lineup, part, parts);
  }

  /** For example "25 November 2026". */
  public static String date(LocalDate date) {
    return DATE.format(date);
  }

  /** The line of box and date in the heading. */
  public static String boxAndDate(String box, LocalDate date) {
    return box + " \u00b7 " + date(date);
  }

  /** How full a well is. */
  public static String fill(Fill fill) {
    return switch (fill) {
      case FULL -> "full";
      case HALF -> "half";
      case DAB -> "dab";
    };
  }

  /** Granulation as a property of its own. */
  public static String granulation(Granulation granulation) {
    return granulation == Granulation.NONE ? "not granulating" : PaintWords.label(granulation);
  }

  /** Lightfastness in short. */
  public static String lightfastness(Lightfastness lightfastness) {
    return lightfastness == Lightfastness.UNRATED
        ? "lightfastness unknown"
        : "lightfastness " + lightfastness.name();
  }

  /** Over the mixes. */
  public static final String MIXES = "Mixes, in parts of equal strength";

  /** On a card that is too small to have its list on its back. */
  public static final String BACK_TOO_SMALL =
      "The card is too small for a list on its back, so the list is printed beside it.";

  /** How to print a sheet with backs. */
  public static String turn(boolean longEdge) {
    return "Two-sided: print on both sides and turn the paper over its %s edge."
        .formatted(longEdge ? "long" : "short");
  }

  /** The title of the other side of a sheet. */
  public static String backTitle(String title) {
    return title + " (back)";
  }

  /**
   * A mix in one line, for example "Wet sand: 10 + 3, 2 parts Cobalt blue and 1 part Raw sienna,
   * milk: greyed blue".
   *
   * @param name what it is for; may be empty
   * @param wells labels of the wells of its paints
   */
  public static String mix(
      String name, List<String> wells, Recipe recipe, Kit kit, Wash wash, String look) {
    return "%s%s: %s, %s (%s)"
        .formatted(
            name.isBlank() ? "" : name + ", ",
            String.join(" + ", wells),
            RecipeWords.recipe(recipe, kit),
            PaintWords.label(wash),
            look);
  }

  /** A mix by its wells, parts and paints, for example "5 + 10, 3 : 1, Ochre, Blue". */
  public static String mixInShort(List<String> wells, Recipe recipe, Kit kit) {
    String parts =
        recipe.portions().stream()
            .map(portion -> WordParts.number(portion.parts()))
            .collect(Collectors.joining(" : "));
    String paints =
        recipe.portions().stream()
            .flatMap(portion -> kit.shelf().find(portion.paintId()).stream())
            .map(Paint::name)
            .collect(Collectors.joining(", "));
    return "%s, %s, %s".formatted(String.join(" + ", wells), parts, paints);
  }

  /** A swatch of a mix told to who cannot see it. */
  public static String mixSwatch(String look) {
    return "Predicted colour of the mix: " + look;
  }

  /** A swatch told to who cannot see it. */
  public static String swatch(String paint, String masstone, String wash) {
    return "Predicted colour of %s: %s, thinned %s".formatted(paint, masstone, wash);
  }

  /**
   * What the colours are.
   *
   * @param expectedError CIEDE2000, the largest of the paints
   */
  public static String estimates(double expectedError) {
    return ("Colours are predicted (ΔE00 up to about %.0f off): dry coats from butter to tea as"
            + " seen under D50 print light; the screen shows them under D65.")
        .formatted(expectedError);
  }

  /** What the empty fields are for. */
  public static String fieldsToPaint() {
    return "Paint the fields by hand, from butter at the left to tea at the right, and let them"
        + " dry.";
  }

  /**
   * The caution for metals aboard.
   *
   * @param wellsByMetal labels of the wells by chemical symbol
   */
  public static String metals(Map<String, List<String>> wellsByMetal) {
    StringBuilder aboard = new StringBuilder();
    wellsByMetal.forEach(
        (metal, wells) ->
            aboard
                .append(aboard.isEmpty() ? "" : ", ")
                .append(metal(metal))
                .append(" (")
                .append(String.join(", ", wells))
                .append(")"));
    return ("Metals aboard by well: %s. Usual care: no spraying or sanding, no brush in the mouth,"
            + " wash hands, carry rinse water home. The maker's safety sheet and local rules"
            + " decide.")
        .formatted(aboard);
  }

  private static String metal(String symbol) {
    return switch (symbol) {
      case "Ba" -> "barium";
      case "Bi" -> "bismuth";
      case "Cd" -> "cadmium";
      case "Co" -> "cobalt";
      case "Cr" -> "chromium";
      case "Cu" -> "copper";
      case "In" -> "indium";
      case "Mn" -> "manganese";
      case "Ni" -> "nickel";
      case "Pb" -> "lead";
      case "Sb" -> "antimony";
      case "Se" -> "selenium";
      case "Sn" -> "tin";
      case "V" -> "vanadium";
      case "Zn" -> "zinc";
      default -> symbol;
    };
  }
}
