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

  public static String pickedUp(Paint paint) {
    return "Holding %s. Drop it on a well, or beside the box to leave all as it is."
        .formatted(name(paint));
  }

  public static String pickedUpByKeys(Paint paint) {
    return "Holding %s. Arrow keys choose a well, Enter puts it down, Escape lets go."
        .formatted(name(paint));
  }

  public static String willPlace(Paint paint, Well well) {
    return "Puts %s into %s.".formatted(name(paint), BoxWords.name(well));
  }

  public static String willReplace(Paint paint, Paint out, Well well) {
    return "Puts %s into %s; %s goes back to the shelf."
        .formatted(name(paint), BoxWords.name(well), out.name());
  }

  public static String willMove(Paint paint, Well from, Well to) {
    return "Moves %s from %s to %s.".formatted(name(paint), BoxWords.name(from), BoxWords.name(to));
  }

  public static String willSwap(Paint paint, Well from, Paint other, Well to) {
    return "Swaps %s (%s) with %s (%s)."
        .formatted(paint.name(), BoxWords.name(from), other.name(), BoxWords.name(to));
  }

  public static String willTakeOut(Paint paint, Well from) {
    return "Takes %s out of %s.".formatted(name(paint), BoxWords.name(from));
  }

  public static String placed(Paint paint, Well well) {
    return "%s is in %s now.".formatted(name(paint), BoxWords.name(well));
  }

  public static String replaced(Paint paint, Paint out, Well well) {
    return "%s is in %s now; %s is back on the shelf."
        .formatted(name(paint), BoxWords.name(well), out.name());
  }

  public static String moved(Paint paint, Well to) {
    return placed(paint, to);
  }

  public static String swapped(Paint paint, Well to, Paint other, Well from) {
    return "%s is in %s now, %s in %s."
        .formatted(paint.name(), BoxWords.name(to), other.name(), BoxWords.name(from));
  }

  public static String takenOut(Paint paint, Well from) {
    return "%s is empty now; %s is back on the shelf."
        .formatted(BoxWords.heading(from), paint.name());
  }

  public static String staysInWell(Paint paint, Well well) {
    return "%s stays in %s.".formatted(name(paint), BoxWords.name(well));
  }

  public static String staysOnShelf(Paint paint) {
    return "%s stays on the shelf.".formatted(name(paint));
  }

  /** After letting go without putting down. */
  public static String putBack() {
    return "Let go; nothing has changed.";
  }

  /** Short words at the spot. */
  public static String hintPlace(Paint paint) {
    return "put " + paint.name() + " here";
  }

  public static String hintReplace(Paint out) {
    return "replace " + out.name();
  }

  public static String hintMove() {
    return "move here";
  }

  public static String hintSwap(Paint other) {
    return "swap with " + other.name();
  }

  public static String hintTakeOut(Paint paint) {
    return "take " + paint.name() + " out";
  }

  public static String hintStay() {
    return "no change";
  }

  private static String name(Paint paint) {
    return paint.name() + " (" + paint.codes() + ")";
  }
}
