package org.panwright.words;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.panwright.swatch.fit.FitRefusal;
import org.panwright.swatch.sheet.PatchKind;
import org.panwright.swatch.sheet.ReadingFault;
import org.panwright.swatch.sheet.SheetFormat;

/** Words of the view in which swatches are read from a picture. */
public final class SwatchesWords {
  /** Name of the view. */
  public static final String NAME = "Swatches";

  /** The ways of reading, for readers of the screen. */
  public static final String WAYS = "What is on the picture";

  /** A way of reading. */
  public static final String PRINTED = "Printed sheet";

  /** What it is for. */
  public static final String PURPOSE =
      "Paint four small patches of each paint, photograph or scan them, and the paints learn their"
          + " own colour.";

  /** Heading of the part about the sheet to paint. */
  public static final String BLANK = "A sheet to paint";

  /** Field. */
  public static final String PAPER = "Paper";

  /** Field. */
  public static final String PAINTS = "Paints on it";

  /** All paints. */
  public static final String WHOLE_SHELF = "the whole shelf";

  /** Those of the lineup. */
  public static final String LINEUP = "the lineup, white and black";

  /** Saves the sheet. */
  public static final String SAVE_SHEET = "Save as PDF…";

  /** Title over the list of files. */
  public static final String SAVE_TITLE = "Save the swatch sheet";

  /** Title when it could not be saved. */
  public static final String CANNOT_SAVE = "The sheet could not be saved";

  /** Opens a picture. */
  public static final String OPEN = "Open a picture…";

  /** Title over the list of files. */
  public static final String OPEN_TITLE = "Open a photo or scan of swatches";

  /** The kind of file. */
  public static final String KIND = "PNG or JPEG";

  /** Leaves off reading. */
  public static final String STOP = "Stop";

  /** What is going on. */
  public static final String READING = "Reading the picture…";

  /** Field. */
  public static final String STATE = "The coats are";

  /** Field. */
  public static final String WHITE = "White stirred in";

  /** Field. */
  public static final String BLACK = "Black stirred in";

  /** Any white or black. */
  public static final String ANY = "none of the shelf";

  /** In place of a paint. */
  public static final String NO_PAINT = "leave this row out";

  /** Exchanges two rows. */
  public static final String EXCHANGE = "Exchange these rows";

  /** Keeps it all. */
  public static final String KEEP = "Keep for these paints";

  /** What is going on. */
  public static final String FITTING = "Learning from the coats…";

  /** Leaves off what is under way. */
  public static final String CANCEL = "Cancel";

  /** After leaving off. */
  public static final String LEFT_OFF = "Left off: nothing was learnt from these coats yet.";

  /** Takes it up again. */
  public static final String LEARN = "Learn from them";

  /** Under the empty picture. */
  public static final String EMPTY =
      "Open a photo or scan of a painted sheet. Its corners are found by themselves; drag them"
          + " where they are not.";

  /** About the corners. */
  public static final String CORNERS =
      "Drag each corner to the middle of its black square, number 1 to the hollow one. By keys: 1"
          + " to 4 pick a corner, arrows move it (with Shift by ten), + and − zoom, 0 shows all.";

  /** The picture, for readers of the screen. */
  public static final String PICTURE = "the picture with the marks on it";

  /** The patch over the black line. */
  public static final String ON_LINE = "on black";

  /** Tick. */
  public static final String CARD_LIES = "A grey or white card lies on the picture";

  /** The card's name on the picture. */
  public static final String CARD_MARK = "card";

  /** While nobody pointed at the card. */
  public static final String CARD_PLACE =
      "Click on the card in the picture (or Insert, then arrows; 5 picks it, Delete takes it away):"
          + " it tells what colour your paper itself has.";

  /** The bare black line. */
  public static final String LINE = "the black line";

  /** Over the column of what was read. */
  public static final String READ_AND_MODEL =
      "upper half: read off the picture; lower half: the model";

  /** About a colour the picture cannot hold. */
  public static final String BEYOND =
      "more vivid than the picture can hold: left out where the paint has another patch";

  /** In place of a distance. */
  public static final String LEFT_OUT = "too vivid";

  /** In place of the name of a file. */
  public static final String PICTURE_FILE = "The picture";

  private SwatchesWords() {}

  /** A paper by its international name. */
  public static String paper(SheetFormat format) {
    return format == SheetFormat.LETTER ? "Letter" : format.name();
  }

  /** A patch, in a word or two. */
  public static String patch(PatchKind kind) {
    return switch (kind) {
      case FULL -> "full";
      case WASH -> "wash";
      case TINT -> "with white";
      case TONE -> "with black";
    };
  }

  /** Whether the coats are wet. */
  public static String state(boolean wet) {
    return wet ? "freshly wet" : "dry";
  }

  /** The heading of a row. */
  public static String row(int number) {
    return "Row " + number;
  }

  /** How far read and model are apart. */
  public static String distance(double ciede2000, double spread) {
    return "ΔE00 %.1f, uneven by %.1f".formatted(ciede2000, spread);
  }

  /** The same when there is no model yet. */
  public static String spread(double spread) {
    return "uneven by %.1f".formatted(spread);
  }

  /** What a paint has learnt. */
  public static String expected(double expectedError, int coats) {
    return "%d %s, expected error ΔE00 %.1f"
        .formatted(coats, coats == 1 ? "coat" : "coats", expectedError);
  }

  /** Rows whose paints are not on the shelf. */
  public static String foreign(int rows, int all) {
    return rows == all
        ? "This sheet was printed for another kit: none of its paints is on this shelf. Name the"
            + " paint of each row to use it."
        : "%d of %d rows name a paint that is not on this shelf. Choose its paint or leave the row out."
            .formatted(rows, all);
  }

  /**
   * Rows whose patches all have one colour.
   *
   * @param rows their numbers from 1
   */
  public static String alike(List<Integer> rows, int all) {
    String where =
        rows.size() == all
            ? "In every row all patches"
            : "All patches of %s %s"
                .formatted(
                    rows.size() == 1 ? "row" : "rows",
                    rows.stream().map(String::valueOf).collect(Collectors.joining(", ")));
    return where
        + " have the same colour, so they cannot be full strength, a wash and mixes with white and"
        + " black. Paint them again, or leave such rows out; what is learnt from them is wrong.";
  }

  /** Two rows look exchanged. */
  public static String swapped(String first, String second, double before, double after) {
    return "%s and %s look exchanged: as labelled they are ΔE00 %.0f off, the other way round %.0f."
        .formatted(first, second, before, after);
  }

  /** How much of a wet sheet belongs to dry coats. */
  public static String wet(int coats) {
    return coats == 0
        ? "Nothing of this sheet was kept dry yet. Read the dried sheet first; the wet picture then"
            + " gives the drying shift."
        : "%d coats were read dry before; keeping this adds how they looked wet.".formatted(coats);
  }

  /** Why a picture was not read or nothing learnt from it; no text where nothing is wrong. */
  public static String problem(Optional<ReadingFault> fault, Optional<FitRefusal> refusal) {
    return fault
        .map(PictureWords::sentence)
        .or(() -> refusal.map(why -> SwatchWords.sentence(PICTURE_FILE, why)))
        .orElse("");
  }

  /** After keeping. */
  public static String kept(int paints) {
    return paints == 1 ? "Kept for one paint." : "Kept for %d paints.".formatted(paints);
  }

  /** After saving. */
  public static String saved(String file, int wished) {
    return "Saved as " + file + "." + (wished == 0 ? "" : " " + SwatchSheetWords.wished(wished));
  }
}
