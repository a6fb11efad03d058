package org.panwright.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What is said about papers of any kind. */
public final class PaperWords {
  /** Where a paper needs paints. */
  public static final String NO_PAINTS =
      "The lineup has no paints yet. Put some into its wells; then there is something to print.";

  /** Where labels need pans. */
  public static final String NO_PANS =
      "The lineup fills no pan, and dabs get no labels. Put a paint into a pan or half pan first.";

  /** Where a packing list needs an outing. */
  public static final String NO_OUTING =
      "No outing takes this lineup along. Plan one, choose this lineup for it, and its packing list"
          + " can be printed.";

  /** Where a comparison needs a second lineup. */
  public static final String ONE_LINEUP =
      "The kit has only one lineup. Make a second one, and the two can be compared.";

  /** Where a swatch sheet is asked for on a paper it is not laid out for. */
  public static final String SWATCH_SHEET_FORMATS =
      "Swatch sheets can be read on A4, A5 and Letter only. Choose one of these.";

  /** What the boxes of a fill plan are for. */
  public static final String LAYERS =
      "One box for each layer: tick it when the layer is in, and wait until it is dry.";

  /** Over how long each paint lasts. */
  public static final String PAINT_LASTS = "How long the paint lasts";

  /** All papers together. */
  public static final String ALL = "Papers";

  private PaperWords() {}

  /** The name of a kind of paper. */
  public static String name(String kind) {
    return switch (kind) {
      case "KEY_CARD" -> "Key card";
      case "MIXING_CHART" -> "Mixing chart";
      case "SWATCH_LADDER" -> "Swatch ladder";
      case "PAN_LABELS" -> "Pan labels";
      case "FILL_PLAN" -> "Fill plan";
      case "PACKING_LIST" -> "Packing list";
      case "COMPARISON" -> "Comparison";
      case "SWATCH_SHEET" -> "Swatch sheet";
      default -> throw new IllegalArgumentException("no name for the paper " + kind);
    };
  }

  /** The title of one paper of a lineup or an outing. */
  public static String title(String kind, String occasion) {
    return name(kind) + ": " + occasion;
  }

  /** The title of all papers together. */
  public static String all(String occasion) {
    return ALL + ": " + occasion;
  }

  /** A size of paper by its international name. */
  public static String format(String name) {
    return switch (name) {
      case "LETTER" -> "Letter";
      case "LEGAL" -> "Legal";
      case "TABLOID" -> "Tabloid";
      default -> name;
    };
  }

  /**
   * Why □ stands in the print.
   *
   * @param names that hold letters or signs without a shape; may be empty
   */
  public static String unprintable(List<String> names) {
    List<String> told = new ArrayList<>(names.stream().limit(3).map(WordParts::quoted).toList());
    if (told.isEmpty()) {
      told.add("a name");
    } else if (names.size() > told.size()) {
      told.add("%d more".formatted(names.size() - told.size()));
    }
    return "Some letters or signs of %s cannot be printed; \u25A1 stands for each."
        .formatted(Lists.and(told));
  }

  /** Where not even one cell of a chart goes on its paper. */
  public static String cellTooLarge(double cellMm, String paper, double largestMm) {
    return String.format(
        Locale.ROOT,
        "A cell of %.0f mm does not go on %s beside the names of the paints; the largest that does"
            + " measures %.0f mm. Choose smaller cells or larger paper.",
        cellMm,
        paper,
        Math.floor(largestMm));
  }
}
