package org.panwright.words;

/** Words of the view of the papers. */
public final class PaperViewWords {
  /** Heading. */
  public static final String TITLE = "Papers";

  /** Over the choice of lineup or outing. */
  public static final String FOR = "Made for";

  /** The choice without an outing. */
  public static final String THIS_LINEUP = "this lineup";

  /** Names the list of kinds. */
  public static final String KINDS = "Kinds of papers";

  /** Option for all papers. */
  public static final String GREY = "in black and white";

  /** Saves all papers ticked. */
  public static final String SAVE_ALL = "Save those ticked in one PDF…";

  /** What ticks and keys do. */
  public static final String TICKED =
      "One file with a bookmark for each paper. The space bar ticks the one picked.";

  /** The status where nothing was saved. */
  public static final String NOTHING_TICKED =
      "Nothing saved: none of the papers ticked has anything to print.";

  /** Field. */
  public static final String SIZE = "Card size";

  /** Field. */
  public static final String PAPER = "Printed on";

  /** Field. */
  public static final String FIELDS = "Colour fields";

  /** Field. */
  public static final String COPIES = "Cards";

  /** Option. */
  public static final String LIST = "with its list of wells and mixes";

  /** Option. */
  public static final String TURNED = "list on the back of the card, for two-sided printing";

  /** Over the mixes. */
  public static final String MIXES = "Mixes on the list";

  /** While no mix was chosen by hand. */
  public static final String USEFUL = "The useful ones: subjects first, then by hue, greys last.";

  /** Goes back to them. */
  public static final String USEFUL_AGAIN = "The useful ones again";

  /** Adds a mix. */
  public static final String ADD_MIX = "Add";

  /** Names the first paint of a mix to add. */
  public static final String FIRST_PAINT = "First paint of the mix";

  /** Names the second paint of a mix to add. */
  public static final String SECOND_PAINT = "Second paint of the mix";

  /** Names the parts of a mix to add. */
  public static final String PARTS = "Parts of the two paints";

  /** Takes a mix off the list. */
  public static String removeMix(String recipe) {
    return "Leave out " + recipe;
  }

  /** Parts of two paints. */
  public static String parts(int first, int second) {
    return first + " : " + second;
  }

  /** Field. */
  public static final String SHAPE = "Pairs";

  /** Field. */
  public static final String CELL = "Cells";

  /** Option. */
  public static final String DOTS = "with small dots of the predicted colours";

  /** Field. */
  public static final String PLACES = "Labels for";

  /** Saves the papers. */
  public static final String SAVE_PDF = "Save as PDF…";

  /** Prints the papers. */
  public static final String PRINT = "Print…";

  /** Shown where there is no lineup to make papers for. */
  public static final String NO_LINEUP = "Make a lineup first; its papers appear here.";

  /** Title over the list of files. */
  public static final String SAVE_TITLE = "Save the papers";

  /** The kind of file. */
  public static final String PDF_KIND = "PDF";

  /** Title when it could not be saved. */
  public static final String CANNOT_SAVE = "The PDF could not be saved";

  /** Title when there is nothing to print to. */
  public static final String NO_PRINTER_TITLE = "No printer found";

  /** What to do then. */
  public static final String NO_PRINTER =
      "The system names no printer. Save the papers as a PDF and print that, at 100 % (“actual"
          + " size”).";

  /** Title when printing failed. */
  public static final String NOT_PRINTED_TITLE = "The printer did not take the papers";

  /** What to do then. */
  public static final String NOT_PRINTED =
      "Save the papers as a PDF and print that, at 100 % (“actual size”).";

  /** The status after handing the sheets over. */
  public static final String SENT =
      "Sent to the printer. The ruler on the sheet must measure 50 mm.";

  private PaperViewWords() {}

  /** What a kind of paper is for. */
  public static String purpose(String kind) {
    return switch (kind) {
      case "KEY_CARD" ->
          "Dried pans all look black. The card in the lid says what sits where. Its colours are"
              + " estimates; empty fields leave room to paint the real ones.";
      case "MIXING_CHART" ->
          "Every pair of the lineup, to be mixed and painted by hand, on watercolour paper if your"
              + " printer takes it.";
      case "SWATCH_LADDER" ->
          "Each paint from butter to tea, over black and lifted, to be painted by hand.";
      case "PAN_LABELS" ->
          "Name and pigments for the outer wall of each pan and for under its base, to cut out.";
      case "FILL_PLAN" ->
          "How much goes into each pan, in which layers, out of which tubes, and what to buy. A box"
              + " to tick for each layer.";
      case "PACKING_LIST" ->
          "What to take on the outing, with boxes to tick, amounts, how long the paint lasts, and"
              + " what needs care.";
      case "COMPARISON" -> "Two lineups side by side: boxes, mixes, hues, what to move.";
      case "SWATCH_SHEET" ->
          "Four swatches of each paint of the lineup to paint, dry and scan; the program then"
              + " learns your own tubes. The view of the swatches prints and reads one of the whole"
              + " shelf.";
      default -> "";
    };
  }

  /** The lineup compared with, where none is chosen. */
  public static final String NEXT_LINEUP = "the next lineup";

  /** Option. */
  public static final String EVERY_BOX = "with every other box, for its first lineup";

  /** Field. */
  public static final String COMPARED_WITH = "Compared with";

  /** Names the tick of a kind. */
  public static String amongAll(String kind) {
    return kind + " in the one PDF";
  }

  /** A size of card; "LID" is the box's lid. */
  public static String cardSize(String name) {
    return name.equals("LID") ? "to fit the lid" : name;
  }

  /** What the colour fields hold. */
  public static String fields(boolean predicted) {
    return predicted ? "predicted colours" : "empty, to be painted";
  }

  /** Which pairs a chart holds. */
  public static String chartShape(String shape) {
    return switch (shape) {
      case "SQUARE" -> "all, each twice";
      case "TRIANGLE" -> "all, each once";
      case "LEANING" -> "leaning halves";
      case "WASHED" -> "strong and thin halves";
      default -> shape;
    };
  }

  /** The side of a chart's cells; 0 for one that fits. */
  public static String cell(int mm) {
    return mm == 0 ? "to fit one sheet" : mm + " mm";
  }

  /** Where labels go. */
  public static String labelPlaces(String places) {
    return switch (places) {
      case "SIDE" -> "the side only";
      case "BASE" -> "the base only";
      default -> "side and base";
    };
  }

  /** What is not drawn on the screen. */
  public static String furtherSheets(int count) {
    return count == 1
        ? "One more sheet is in the PDF."
        : "%d more sheets are in the PDF.".formatted(count);
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
