package org.panwright.words;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.panwright.kit.Well;
import org.panwright.paint.HueFamily;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Paint;

/** What the shelf says. */
public final class ShelfWords {
  public static final String TITLE = "Shelf";
  public static final String SEARCH = "Search name, code or hue";
  public static final String SEARCH_SPOKEN =
      "Search the shelf by name, pigment code or hue; arrow down goes to the list";
  public static final String ORDER = "The order of the shelf";
  public static final String NARROW = "Narrow";
  public static final String NARROW_MEANS = "Show only some paints: owned, transparent, staining…";
  public static final String SHOW_ALL = "Show all";
  public static final String ADD = "Add a paint…";
  public static final String EDIT = "Change this paint…";
  public static final String DUPLICATE = "Make a copy…";
  public static final String REMOVE = "Take off the shelf…";
  public static final String PICK_UP = "Pick up";
  public static final String NO_EMPTY_WELL = "No empty well left";
  public static final String PUT_INTO = "Put into well";
  public static final String TAKE_OUT = "Take out of the box";
  public static final String NOTHING_FOUND = "No paint of the shelf fits. Try fewer words.";
  public static final String NOTHING_THERE = "The shelf is empty. Add the paints you own.";
  public static final String DROP_HERE = "Drop here to take it out of the box";
  public static final String BY_HUE = "by hue";
  public static final String BY_NAME = "by name";
  public static final String BY_STRENGTH = "strongest first";
  public static final String BY_LIGHTNESS = "lightest first";
  public static final String IN_LINEUP = "in the box";
  public static final String NOT_IN_LINEUP = "not in the box";
  public static final String OWNERSHIP = "Yours";
  public static final String PRESENCE = "Box";
  public static final String TRANSPARENCY = "Film";
  public static final String STAINING = "Staining";
  public static final String GRANULATION = "Grain";

  private ShelfWords() {}

  /** The second line of a paint: codes, how it stands unless it is there, and family. */
  public static String codesAndFamily(Paint paint, HueFamily family) {
    String standing =
        switch (paint.ownership()) {
          case OWNED -> "";
          case TRIED -> "tried · ";
          case WISHED -> "wished · ";
        };
    return paint.codes() + " · " + standing + PaintWords.label(family);
  }

  /** The mark of a paint in the lineup; empty if it is in no well. */
  public static String place(List<Well> wells) {
    return wells.stream().map(Well::label).collect(Collectors.joining(", "));
  }

  /** For the ear. */
  public static String spoken(
      Paint paint, String hue, OpticsSource source, double expectedError, List<Well> wells) {
    return "%s, %s, %s, %s, %s with an error of about %.0f, %s"
        .formatted(
            paint.name(),
            paint.codes(),
            hue,
            PaintWords.label(paint.ownership()),
            PaintWords.badge(source),
            expectedError,
            where(wells));
  }

  /** For the tooltip. */
  public static String explained(
      Paint paint,
      String masstone,
      String wash,
      OpticsSource source,
      double expectedError,
      boolean isExact,
      List<Well> wells) {
    String maker = paint.maker().isBlank() ? "" : paint.maker() + "\n";
    String screen =
        isExact ? "" : "\nMore vivid than this screen can show; the hue and lightness are right.";
    return """
    %s
    %s%s
    masstone: %s; wash: %s
    %s, %s, %s, %s
    %s; %s
    %s%s\
    """
        .formatted(
            paint.name(),
            maker,
            paint.codes(),
            masstone,
            wash,
            PaintWords.label(paint.handling().transparency()),
            PaintWords.label(paint.handling().staining()),
            PaintWords.label(paint.handling().granulation()),
            PaintWords.label(paint.handling().lightfastness()),
            PaintWords.label(paint.ownership()),
            where(wells),
            PaintWords.explain(source, expectedError),
            screen);
  }

  /** Where in the lineup. */
  public static String where(List<Well> wells) {
    return switch (wells.size()) {
      case 0 -> "not in the box";
      case 1 -> "in " + BoxWords.name(wells.get(0));
      default -> "in wells " + place(wells);
    };
  }

  /** The badge with its error, as short as a row wants it: "est. ±9". */
  public static String badge(OpticsSource source, double expectedError) {
    String word =
        switch (source) {
          case SPECTRA -> "meas.";
          case SWATCHES -> "swatch";
          case PIGMENTS -> "est.";
        };
    return "%s ±%.0f".formatted(word, expectedError);
  }

  /** How many paints are shown. */
  public static String count(int shown, int all) {
    return shown == all
        ? "%d %s".formatted(all, all == 1 ? "paint" : "paints")
        : "%d of %d paints".formatted(shown, all);
  }

  /** The menu line that puts a paint into the first empty well. */
  public static String putInto(Well well) {
    return "Put into the next empty well (" + well.label() + ")";
  }

  /** A well in a menu, with the paint that would leave it, if any. */
  public static String wellChoice(Well well, Optional<Paint> occupant) {
    return occupant
        .map(paint -> "%s, in place of %s".formatted(well.label(), paint.name()))
        .orElse(well.label() + ", empty");
  }

  /** When a paint is picked: what can be done with it. */
  public static String picked(Paint paint) {
    return "%s (%s). Enter picks it up; a double click puts it into the next empty well."
        .formatted(paint.name(), paint.codes());
  }

  /** When a paint was to go into the next empty well and there is none. */
  public static String full() {
    return "Every well is full. Drop the paint on the well whose paint it should replace.";
  }

  /** When there is nowhere to carry a paint. */
  public static String noLineup() {
    return "There is no lineup yet. Add one to fill its wells.";
  }

  /** After a paint has left all wells. */
  public static String takenOut(Paint paint) {
    return "%s is back on the shelf.".formatted(paint.name());
  }
}
