package org.panwright.words;

import java.util.Locale;
import org.panwright.paint.Pigment;

/** Words of the paint editor. */
public final class PaintEditorWords {
  /** In the menu. */
  public static final String ADD_MENU = "_New paint…";

  /** In the menu. */
  public static final String CHANGE_MENU = "_Change this paint…";

  /** In the menu. */
  public static final String COPY_MENU = "_Make a copy of this paint…";

  /** In the menu. */
  public static final String REMOVE_MENU = "_Take this paint off the shelf…";

  /** Title for a paint that is not on the shelf yet. */
  public static final String NEW_TITLE = "New paint";

  /** Title for a paint of the shelf. */
  public static final String CHANGE_TITLE = "Change paint";

  /** Title for a copy. */
  public static final String COPY_TITLE = "Copy of a paint";

  /** Puts it on the shelf. */
  public static final String ADD = "Put on shelf";

  /** Puts it on the shelf and asks for the next. */
  public static final String ADD_ANOTHER = "Put on shelf, then another";

  /** Accepts the changes. */
  public static final String CHANGE = "Keep changes";

  /** Field. */
  public static final String NAME = "Name";

  /** Shown in the empty field. */
  public static final String NAME_PROMPT = "as on the tube";

  /** Said under an empty name. */
  public static final String NAME_NEEDED = "Give a paint of several pigments the name on its tube.";

  /** Field. */
  public static final String MAKER = "Maker";

  /** Shown in the empty field. */
  public static final String MAKER_PROMPT = "may stay empty";

  /** Field. */
  public static final String OWNERSHIP = "It is";

  /** Field. */
  public static final String NOTE = "Note";

  /** Heading of the pigments. */
  public static final String PIGMENTS = "Pigments, as printed on the tube";

  /** Heading of the search. */
  public static final String SEARCH = "Add a pigment";

  /** Shown in the empty search field. */
  public static final String SEARCH_PROMPT = "PB29, ultramarine, red earth…";

  /** Said where the search finds nothing. */
  public static final String NOTHING_FOUND = "No pigment of the library has all these words.";

  /** Said under an empty list of pigments. */
  public static final String PIGMENT_NEEDED =
      "Type a Colour Index name below, such as PB29 on the tube, and press Enter.";

  /** The button that takes a pigment out. */
  public static final String REMOVE_PIGMENT = "Take out";

  /** Heading of the properties. */
  public static final String HANDLING = "How it handles";

  /** Makes them follow the pigments. */
  public static final String AS_USUAL = "as its pigments usually do";

  /** Property. */
  public static final String TRANSPARENCY = "Transparency";

  /** Property. */
  public static final String STAINING = "Staining";

  /** Property. */
  public static final String GRANULATION = "Granulation";

  /** Property. */
  public static final String LIGHTFASTNESS = "Lightfastness";

  /** Heading of the preview. */
  public static final String LOOKS = "How it should look, dry";

  /** Shown in place of the preview while there is nothing to predict from. */
  public static final String NO_PREVIEW =
      "The colour appears once there is a pigment with its parts.";

  /** Keeps the measured colour. */
  public static final String KEEP_MEASURED =
      "keep the colour read from swatches or a spectral file";

  /** Title of the question before a paint in a well is removed. */
  public static final String REMOVE_TITLE = "Take this paint off the shelf?";

  /** Removes it. */
  public static final String REMOVE = "Take off the shelf";

  /** Leaves it. */
  public static final String KEEP = "Keep on shelf";

  private static final String SHADE = " shade";

  private PaintEditorWords() {}

  /** Said of the paint put on the shelf before the next is asked for. */
  public static String added(String paint) {
    return "“%s” is on the shelf. Now the next one.".formatted(paint);
  }

  /**
   * The name of a paint that nobody named, after its only pigment: what stands before the first
   * comma of its common name, with the shade, which tells two pigments apart.
   */
  public static String nameAfter(Pigment pigment) {
    String[] parts = pigment.commonName().split(", ", 2);
    boolean hasShade = parts.length > 1 && parts[1].endsWith(SHADE);
    String name = hasShade ? pigment.commonName() : parts[0];
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  /** Said when the parts of a pigment are no number above 0. */
  public static String partsWrong(String pigment) {
    return "Parts of %s must be a number above 0, such as 1 or 2.5.".formatted(pigment);
  }

  /** The unit behind a number of parts as typed. */
  public static String unit(String typed) {
    return typed.strip().equals("1") ? "part" : "parts";
  }

  /** A share beside its parts. */
  public static String share(double share) {
    return String.format(Locale.ROOT, "%.0f %%", share * 100);
  }

  /** The parts field of one pigment, for readers of the screen. */
  public static String partsOf(String pigment) {
    return "parts of " + pigment;
  }

  /** The name of a copy. */
  public static String copyOf(String name) {
    return name + " (copy)";
  }

  /** What removing a paint that sits in wells means. */
  public static String removeSentence(String paint, int wells) {
    return "“%s” sits in %s. Removing it empties %s. Undo brings all of it back."
        .formatted(
            paint,
            wells == 1 ? "one well" : wells + " wells",
            wells == 1 ? "that well" : "those wells");
  }

  /** Where a masstone ends and a wash begins, under the preview. */
  public static String from(String thick, String thin) {
    return thick + "  →  " + thin;
  }
}
