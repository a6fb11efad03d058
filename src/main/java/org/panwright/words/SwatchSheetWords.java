package org.panwright.words;

import org.panwright.swatch.sheet.PatchKind;

/** What the sheet to paint swatches on says. */
public final class SwatchSheetWords {
  private SwatchSheetWords() {}

  /**
   * How the sheet is painted and taken.
   *
   * @param white whether a white has a row on it
   * @param black whether a black has
   */
  public static String how(boolean white, boolean black) {
    String companions =
        white && black
            ? "paint white and black in rows of their own as well."
            : white
                ? "paint white in a row of its own as well. Any black of PBk7 will do, or leave"
                    + " those patches bare."
                : black
                    ? "paint black in a row of its own as well. Any white of PW6 will do, or leave"
                        + " those patches bare."
                    : "any white of PW6 and black of PBk7 will do, or leave those patches bare.";
    return "Print on the paper you paint on. Paint each patch in one go, straight across the black"
        + " line, with bare paper all round, and let it dry lying flat. Full strength: thick as"
        + " cream, straight from the tube. Wash: one measure of that to three of water. With white,"
        + " with black: equal amounts, measured, not judged by strength; "
        + companions
        + " If wet paint lifts the printed line, trace it with waterproof ink. When dry, scan it"
        + " with all corrections off, or photograph it from straight above in even daylight, all"
        + " four corner marks in view.";
  }

  /** Paints that are only wished for are not on the sheet. */
  public static String wished(int paints) {
    return (paints == 1 ? "1 wished paint is" : paints + " wished paints are")
        + " left out: what is not there cannot be painted.";
  }

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
