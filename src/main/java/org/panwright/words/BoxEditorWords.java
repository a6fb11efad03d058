package org.panwright.words;

import java.util.List;
import org.panwright.analysis.arrange.FitCheck;
import org.panwright.kit.Box;
import org.panwright.kit.FixtureKind;
import org.panwright.kit.Stock;
import org.panwright.kit.WellKind;

/** Words of the box editor. */
public final class BoxEditorWords {
  /** In the menu. */
  public static final String NEW_MENU = "New _box…";

  /** In the menu. */
  public static final String CHANGE_MENU = "_Change box…";

  /** Asked where a box without a lineup could be meant. */
  public static final String WHICH = "Which box?";

  /** Field. */
  public static final String BOX = "Box";

  /** Button. */
  public static final String GO_ON = "Go on";

  /** In the menu. */
  public static final String REMOVE_MENU = "Remove bo_x…";

  /** Title for a box that is not in the kit yet. */
  public static final String NEW_TITLE = "New box";

  /** Title for a box of the kit. */
  public static final String CHANGE_TITLE = "Change box";

  /** Puts it in the kit. */
  public static final String ADD = "Add box";

  /** Accepts the changes. */
  public static final String CHANGE = "Keep changes";

  /** Field. */
  public static final String NAME = "Name";

  /** The choice of ready-made arrangements. */
  public static final String START_FROM = "Start from";

  /** Shown before one is chosen. */
  public static final String START_PROMPT = "a usual arrangement…";

  /** Numbers of rows and columns. */
  public static final String ROWS_COLUMNS = "Rows × columns";

  /** For readers of the screen. */
  public static final String ROWS = "rows of pans from the hinge to the front";

  /** For readers of the screen. */
  public static final String COLUMNS = "pans in a row";

  /** What the rows and columns hold, and how many dab places lie between them. */
  public static final String PANS_AND_DABS = "Pans, dabs";

  /** For readers of the screen. */
  public static final String DABS = "dab places";

  /** Draws the wells anew in rows and columns. */
  public static final String LAY_OUT = "Lay out anew";

  /** Pair of fields. */
  public static final String INSIDE = "Inside, mm";

  /** Pair of fields. */
  public static final String LID = "Lid, mm";

  /** Between two sizes. */
  public static final String BY = "×";

  /** Behind the first of two lengths: from left to right in the drawing. */
  public static final String ACROSS = "across";

  /** Behind the second: from the hinge to the front. */
  public static final String DOWN = "down";

  /** For readers of the screen. */
  public static final String WIDTH = "width in millimetres";

  /** For readers of the screen. */
  public static final String HEIGHT = "from hinge to front in millimetres";

  /** For readers of the screen. */
  public static final String FROM_LEFT = "millimetres from the left";

  /** For readers of the screen. */
  public static final String FROM_HINGE = "millimetres from the hinge";

  /** Heading of what concerns the well picked. */
  public static final String WELL = "The well picked";

  /** Field. */
  public static final String LABEL = "Label";

  /** Field. */
  public static final String KIND = "Holds";

  /** Pair of fields. */
  public static final String PLACE = "Place, mm";

  /** Pair of fields. */
  public static final String SIZE = "Size, mm";

  /** Adds a well. */
  public static final String ADD_WELL = "Add well";

  /** Removes the well picked. */
  public static final String REMOVE_WELL = "Remove well";

  /** Explains the drawing. */
  public static final String HINT =
      "Seen from above, lid open away from you. Drag on an empty place to draw a well; drag a well,"
          + " or pick one with Page Up and Page Down and move it with the arrow keys (Shift: 5 mm,"
          + " Alt: 0.1 mm).";

  /** At the upper edge of the drawing. */
  public static final String HINGE = "hinge";

  /** At the lower edge of the drawing. */
  public static final String FRONT = "front";

  /** What the drawing is, for readers of the screen. */
  public static final String DRAWING = "The box to scale";

  /** A problem. */
  public static final String NAME_NEEDED = "Give the box a name.";

  /** A problem. */
  public static final String BOX_SIZE = "The inside must measure 10 to 1000 mm each way.";

  /** A problem. */
  public static final String LID_SIZE = "The lid must measure 10 to 1000 mm each way.";

  /** A problem. */
  public static final String WELL_NEEDED = "A box needs at least one well.";

  /** A problem. */
  public static final String LABEL_NEEDED = "Every well needs a label, such as its number.";

  /** Title of the question before a box is removed. */
  public static final String REMOVE_TITLE = "Remove this box?";

  /** Removes it. */
  public static final String REMOVE = "Remove box and lineups";

  /** Leaves it. */
  public static final String KEEP = "Keep box";

  /** Field. */
  public static final String DEPTH = "Depth, mm";

  /** Shown in the empty field. */
  public static final String DEPTH_PROMPT = "not measured";

  /** Adds rows and columns to what is there. */
  public static final String ADD_ROWS = "Add rows";

  /** Field. */
  public static final String PAN = "Pan";

  /** The pan usual for what the well holds. */
  public static final String USUAL_PAN = "the usual one";

  /** Heading of what concerns the part picked. */
  public static final String PART = "Mixing areas, strips, magnets, clips";

  /** Field. */
  public static final String KIND_OF_PART = "Kind";

  /** Adds a part. */
  public static final String ADD_PART = "Add part";

  /** Removes the part picked. */
  public static final String REMOVE_PART = "Remove part";

  /** Field. */
  public static final String IN_LID = "in the lid";

  /** Field. */
  public static final String THICK = "Thickness, mm";

  /** Takes the last step in the editor back. */
  public static final String UNDO = "Undo";

  /** Does it again. */
  public static final String REDO = "Redo";

  /** A problem. */
  public static final String BOX_DEPTH =
      "The depth must be a number from 2 to 100 mm, or empty if not measured.";

  /** In the menu. */
  public static final String SAVE_MENU = "_Save box as a file…";

  /** In the menu. */
  public static final String OPEN_MENU = "Add a box from a _file…";

  /** Over the list of files. */
  public static final String FILE_TITLE = "Box file";

  /** The kind of file. */
  public static final String FILE_KIND = "Panwright boxes";

  private BoxEditorWords() {}

  /** A part of a box that is no well. */
  public static String part(FixtureKind kind) {
    return switch (kind) {
      case MIXING_AREA -> "mixing area";
      case DAB_STRIP -> "strip for dabs";
      case MAGNET -> "magnet";
      case CLIP -> "clip";
    };
  }

  /** A problem. */
  public static String partSize(FixtureKind kind) {
    return "A %s must lie at 0 mm or more, measure 1 to 1000 mm each way and be 0 to 20 mm thick."
        .formatted(part(kind));
  }

  /** A problem. */
  public static String partOutside(FixtureKind kind, boolean inLid) {
    return "The %s sticks out of the %s.".formatted(part(kind), inLid ? "lid" : "box");
  }

  /** A problem. */
  public static String partUnder(FixtureKind kind, String well) {
    return kind == FixtureKind.DAB_STRIP
        ? "Well %s stands on the strip for dabs.".formatted(well)
        : "Well %s stands on the %s.".formatted(well, part(kind));
  }

  /** How the pans fit, the first few, and how many of each kind go in a row. */
  public static String fit(FitCheck check, Box box, Stock stock) {
    List<String> sentences = FitWords.sentences(check, box, stock);
    int shown = Math.min(3, sentences.size());
    String more =
        sentences.size() > shown ? " And %d more.".formatted(sentences.size() - shown) : "";
    return String.join(" ", sentences.subList(0, shown))
        + more
        + "\n"
        + String.join(
            "; ", check.rows().stream().limit(2).map(row -> FitWords.row(row, stock)).toList())
        + ".";
  }

  /** What is said after a box was saved. */
  public static String saved(String file) {
    return file + " is saved.";
  }

  /** What is said after a box was added from a file. */
  public static String added(String name) {
    return "“%s” is in the kit now.".formatted(name);
  }

  /** A problem. */
  public static String wellSize(String label) {
    return "Well %s must measure 2 to 200 mm each way.".formatted(label);
  }

  /** A problem. */
  public static String outside(String label) {
    return "Well %s sticks out of the box.".formatted(label);
  }

  /** A problem. */
  public static String overlap(String label, String other) {
    return "Wells %s and %s lie on each other.".formatted(label, other);
  }

  /** What a well holds. */
  public static String kind(WellKind kind) {
    return switch (kind) {
      case PAN -> "a whole pan";
      case HALF_PAN -> "a half pan";
      case DAB -> "a dab";
    };
  }

  /** What the rows of a box hold. */
  public static String pans(WellKind kind) {
    return kind == WellKind.PAN ? "whole pans" : "half pans";
  }

  /** One well of the drawing, for readers of the screen. */
  public static String well(String label, WellKind kind) {
    return "well %s for %s".formatted(label, kind(kind));
  }

  /** Says which paints would leave the box; each as "paint from well 3 of lineup". */
  public static String leaving(List<String> leaving) {
    return leaving.isEmpty()
        ? ""
        : "These paints would leave the box: " + String.join(", ", leaving) + ".";
  }

  /** One paint of {@link #leaving}. */
  public static String leaves(String paint, String well, String lineup) {
    return "%s from well %s (%s)".formatted(paint, well, lineup);
  }

  /** What removing a box means. */
  public static String removeSentence(String box, List<String> lineups) {
    return lineups.isEmpty()
        ? "“%s” leaves the kit. Undo brings it back.".formatted(box)
        : "“%s” leaves the kit together with its lineups %s. Undo brings all of it back."
            .formatted(box, String.join(", ", lineups));
  }

  /** The name of a new box. */
  public static String newName(int number) {
    return "Box " + number;
  }
}
