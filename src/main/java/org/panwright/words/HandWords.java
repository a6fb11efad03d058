package org.panwright.words;

import org.panwright.kit.Well;
import org.panwright.paint.Paint;

/** What is said while a paint is carried between shelf and box. */
public final class HandWords {
  private HandWords() {}

  /** When nothing is held and nothing has happened yet. */
  public static String idle() {
    return "Drag a paint into a well, or choose one on the shelf and press Enter.";
  }

  /** Once a paint is taken up by mouse: how to go on. */
  public static String pickedUp(Paint paint) {
    return "Holding %s. Drop it on a well, or beside the box to leave all as it is."
        .formatted(name(paint));
  }

  /** Once a paint is taken up by keys: how to go on. */
  public static String pickedUpByKeys(Paint paint) {
    return "Holding %s. Arrow keys choose a well, Enter puts it down, Escape lets go."
        .formatted(name(paint));
  }

  /** Before a paint of the shelf goes into an empty well. */
  public static String willPlace(Paint paint, Well well) {
    return "Puts %s into %s.".formatted(name(paint), BoxWords.name(well));
  }

  /** Before a paint of the shelf drives another out of its well. */
  public static String willReplace(Paint paint, Paint out, Well well) {
    return "Puts %s into %s; %s goes back to the shelf."
        .formatted(name(paint), BoxWords.name(well), out.name());
  }

  /** Before a paint goes from its well to an empty one. */
  public static String willMove(Paint paint, Well from, Well to) {
    return "Moves %s from %s to %s.".formatted(name(paint), BoxWords.name(from), BoxWords.name(to));
  }

  /** Before two paints change places; without codes, for four names fill the line. */
  public static String willSwap(Paint paint, Well from, Paint other, Well to) {
    return "Swaps %s (%s) with %s (%s)."
        .formatted(paint.name(), BoxWords.name(from), other.name(), BoxWords.name(to));
  }

  /** Before a paint goes from its well back to the shelf. */
  public static String willTakeOut(Paint paint, Well from) {
    return "Takes %s out of %s.".formatted(name(paint), BoxWords.name(from));
  }

  /** After a paint went into an empty well. */
  public static String placed(Paint paint, Well well) {
    return "%s is in %s now.".formatted(name(paint), BoxWords.name(well));
  }

  /** After a paint drove another out of its well. */
  public static String replaced(Paint paint, Paint out, Well well) {
    return "%s is in %s now; %s is back on the shelf."
        .formatted(name(paint), BoxWords.name(well), out.name());
  }

  /** After a paint went from its well to an empty one: what counts is where it is. */
  public static String moved(Paint paint, Well to) {
    return placed(paint, to);
  }

  /** After two paints changed places. */
  public static String swapped(Paint paint, Well to, Paint other, Well from) {
    return "%s is in %s now, %s in %s."
        .formatted(paint.name(), BoxWords.name(to), other.name(), BoxWords.name(from));
  }

  /** After a paint went from its well back to the shelf. */
  public static String takenOut(Paint paint, Well from) {
    return "%s is empty now; %s is back on the shelf."
        .formatted(BoxWords.heading(from), paint.name());
  }

  /** Over the well the paint is in already. */
  public static String staysInWell(Paint paint, Well well) {
    return "%s stays in %s.".formatted(name(paint), BoxWords.name(well));
  }

  /** Over the shelf while a paint of the shelf is held. */
  public static String staysOnShelf(Paint paint) {
    return "%s stays on the shelf.".formatted(name(paint));
  }

  /** After letting go without putting down. */
  public static String putBack() {
    return "Let go; nothing has changed.";
  }

  /** At an empty well, for a paint of the shelf; hints are a few words that stand at the spot. */
  public static String hintPlace(Paint paint) {
    return "put " + paint.name() + " here";
  }

  /** At a well that another paint is in. */
  public static String hintReplace(Paint out) {
    return "replace " + out.name();
  }

  /** At an empty well, for a paint that comes from a well. */
  public static String hintMove() {
    return "move here";
  }

  /** At a well with a paint, for one that comes from a well. */
  public static String hintSwap(Paint other) {
    return "swap with " + other.name();
  }

  /** At the shelf, for a paint that comes from a well. */
  public static String hintTakeOut(Paint paint) {
    return "take " + paint.name() + " out";
  }

  /** Where putting down changes nothing. */
  public static String hintStay() {
    return "no change";
  }

  private static String name(Paint paint) {
    return paint.name() + " (" + paint.codes() + ")";
  }
}
