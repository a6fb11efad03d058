package org.panwright.words;

/** Words of the view of the key card. */
public final class CardViewWords {
  /** Heading. */
  public static final String TITLE = "Key card";

  /** What it is for. */
  public static final String PURPOSE =
      "Dried pans all look black. The card in the lid says what sits where.";

  /** Field. */
  public static final String SIZE = "Card size";

  /** Field. */
  public static final String PAPER = "Printed on";

  /** Field. */
  public static final String FIELDS = "Colour fields";

  /** Field. */
  public static final String COPIES = "Cards";

  /** Option. */
  public static final String LIST = "with a list of the wells";

  /** Saves the papers. */
  public static final String SAVE_PDF = "Save as PDF…";

  /** Prints the papers. */
  public static final String PRINT = "Print…";

  /** Shown where there is no lineup to make a card for. */
  public static final String NO_LINEUP = "Make a lineup first; its key card appears here.";

  /** Title over the list of files. */
  public static final String SAVE_TITLE = "Save the key card";

  /** The kind of file. */
  public static final String KIND = "PDF";

  /** Title when it could not be saved. */
  public static final String CANNOT_SAVE = "The PDF could not be saved";

  /** Title when there is nothing to print to. */
  public static final String NO_PRINTER_TITLE = "No printer found";

  /** What to do then. */
  public static final String NO_PRINTER =
      "The system names no printer. Save the card as a PDF and print that, at 100 % (“actual size”).";

  /** Title when printing failed. */
  public static final String NOT_PRINTED_TITLE = "The printer did not take the card";

  /** What to do then. */
  public static final String NOT_PRINTED =
      "Save the card as a PDF and print that, at 100 % (“actual size”).";

  /** The status after handing the sheets over. */
  public static final String SENT =
      "Sent to the printer. The ruler on the card must measure 50 mm.";

  /** About the colours. */
  public static final String ESTIMATES =
      "Colours are estimates. Empty fields leave room to paint the real ones.";

  private CardViewWords() {}

  /** A size of card or paper by its international name; "LID" is the box's lid. */
  public static String size(String name) {
    return switch (name) {
      case "LID" -> "to fit the lid";
      case "LETTER" -> "Letter";
      case "LEGAL" -> "Legal";
      case "TABLOID" -> "Tabloid";
      default -> name;
    };
  }

  /** What the colour fields hold. */
  public static String fields(boolean predicted) {
    return predicted ? "predicted colours" : "empty, to be painted";
  }

  /** The status after saving. */
  public static String saved(String file) {
    return "Saved as " + file + ".";
  }

  /** One sheet, for readers of the screen. */
  public static String sheet(String title, double widthMm, double heightMm) {
    return "%s, %.0f by %.0f mm".formatted(title, widthMm, heightMm);
  }
}
