package org.panwright.words;

import org.panwright.swatch.sheet.PatchKind;

/** What the sheet to paint swatches on says. */
public final class SwatchSheetWords {
  /** How the sheet is painted and taken. */
  public static final String HOW =
      "Print on the paper you paint on. Paint each patch in one go, straight across the black line,"
          + " with bare paper all round, and let it dry lying flat. Full strength: thick as cream,"
          + " straight from the tube. Wash: one measure of that to three of water. With white, with"
          + " black: equal amounts, measured, not judged by strength; paint white and black in rows"
          + " of their own as well. If wet paint lifts the printed line, trace it with waterproof"
          + " ink. When dry, scan it with all corrections off, or photograph it from straight above"
          + " in even daylight, all four corner marks in view.";

  private SwatchSheetWords() {}

  /** The title. */
  public static String title(String kit) {
    return "Swatch sheet: " + kit;
  }

  /** Over a column of patches. */
  public static String heading(PatchKind kind) {
    return switch (kind) {
      case FULL -> "full strength";
      case WASH -> "wash, 1 : 3 water";
      case TINT -> "1 : 1 with white";
      case TONE -> "1 : 1 with black";
    };
  }
}
