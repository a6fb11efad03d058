package org.panwright.words;

import java.util.Locale;
import java.util.Optional;
import org.panwright.kit.Box;
import org.panwright.kit.Fill;
import org.panwright.kit.Fixture;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Paint;

/** What the box and its wells say. */
public final class BoxWords {
  public static final String TITLE = "Box";
  public static final String WELL = "well";
  public static final String LID = "lid";
  public static final String EMPTY = "empty";
  public static final String NO_LINEUP =
      "No lineup yet. Add one, and its box is laid out here to scale.";
  public static final String ADD_LINEUP = "Add a lineup…";
  public static final String PICK_UP = "Pick up";
  public static final String MOVE_TO = "Move to well";
  public static final String FILL = "Fill";
  public static final String TAKE_OUT = "Take out";
  public static final String EDIT_BOX = "Change this box…";

  private static final int LONGEST_NUMBER = 3;

  private BoxWords() {}

  /** The box in a line: name, filled wells, inner size. */
  public static String caption(Box box, int filled) {
    return "%s · %d of %d wells filled · %s × %s mm inside"
        .formatted(box.name(), filled, box.wells().size(), mm(box.widthMm()), mm(box.heightMm()));
  }

  /** The name of a mixing area, strip, magnet or clip; one in the lid says so. */
  public static String part(Fixture part) {
    String name = BoxEditorWords.part(part.kind());
    return part.inLid() ? name + " in the lid" : name;
  }

  /** A part under the pointer: what it is and how large. */
  public static String partAndSize(Fixture part) {
    return "%s, %s × %s mm".formatted(part(part), mm(part.widthMm()), mm(part.heightMm()));
  }

  /** A well within a sentence: "well 7", but just "dab 2" where the label speaks for itself. */
  public static String name(Well well) {
    return well.label().length() <= LONGEST_NUMBER ? WELL + " " + well.label() : well.label();
  }

  /** A well at the beginning of a sentence. */
  public static String heading(Well well) {
    String name = name(well);
    return name.substring(0, 1).toUpperCase(Locale.UK) + name.substring(1);
  }

  /** How far a well is filled. */
  public static String label(Fill fill) {
    return switch (fill) {
      case FULL -> "full";
      case HALF -> "half full";
      case DAB -> "a dab";
    };
  }

  /** What a well is made to hold. */
  public static String label(WellKind kind) {
    return switch (kind) {
      case PAN -> "pan";
      case HALF_PAN -> "half pan";
      case DAB -> "dab place";
    };
  }

  /** For the ear: a well with a paint. */
  public static String spokenFull(Well well, Paint paint, String hue, Fill fill) {
    return "%s: %s, %s, %s, %s"
        .formatted(heading(well), paint.name(), paint.codes(), hue, label(fill));
  }

  /** For the ear: an empty well. */
  public static String spokenEmpty(Well well) {
    return "%s: empty %s".formatted(heading(well), label(well.kind()));
  }

  /** For the ear: a well over which something is held. */
  public static String spokenTarget(String well, String promise) {
    return well + ". " + promise;
  }

  /** The tooltip of a well with a paint. */
  public static String explainedFull(
      Well well,
      Paint paint,
      String masstone,
      String wash,
      Fill fill,
      OpticsSource source,
      double expectedError) {
    return """
    %s
    %s
    masstone: %s; wash: %s
    %s, %s
    %s\
    """
        .formatted(
            paint.name(),
            paint.codes(),
            masstone,
            wash,
            place(well),
            label(fill),
            PaintWords.explain(source, expectedError));
  }

  /** The tooltip of an empty well. */
  public static String explainedEmpty(Well well) {
    return "%s, empty.\nDrag a paint here from the shelf.".formatted(place(well));
  }

  /** When a well with a paint is picked: what the keys do. */
  public static String picked(Well well, Paint paint) {
    return "%s: %s (%s). Enter picks it up, F changes the fill, Delete takes it out."
        .formatted(heading(well), paint.name(), paint.codes());
  }

  /** When there is nothing to pick up, empty or fill. */
  public static String emptyAlready(Well well) {
    return "%s is empty. Choose a paint on the shelf and press Enter to carry it here."
        .formatted(heading(well));
  }

  /** After the fill was changed. */
  public static String filled(Paint paint, Well well, Fill fill) {
    return "%s: %s, %s.".formatted(heading(well), paint.name(), label(fill));
  }

  /** A well to move to in a menu, with the paint that would change places. */
  public static String moveChoice(Well well, Optional<Paint> occupant) {
    return occupant
        .map(paint -> "%s, swap with %s".formatted(well.label(), paint.name()))
        .orElse(well.label() + ", empty");
  }

  private static String place(Well well) {
    return "%s, %s %s × %s mm"
        .formatted(heading(well), label(well.kind()), mm(well.widthMm()), mm(well.heightMm()));
  }

  private static String mm(double mm) {
    return String.format(Locale.UK, mm == Math.rint(mm) ? "%.0f" : "%.1f", mm);
  }
}
