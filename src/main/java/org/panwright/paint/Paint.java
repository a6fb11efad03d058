package org.panwright.paint;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What is in one tube of the painter's.
 *
 * @param id unique in the kit, never shown, never changed
 * @param name as on the tube; not blank
 * @param maker free text, may be empty
 * @param pigments at least one; shares sum to 1
 * @param handling as on the tube, or the pigments' usual
 * @param ownership owned, tried or wished
 * @param measured optics of this very paint, where it was measured; otherwise they are estimated
 *     from its pigments
 * @param note free text, may be empty
 * @param swatchbook the painter's own coats of it, and where its optics came from
 */
public record Paint(
    String id,
    String name,
    String maker,
    List<PigmentShare> pigments,
    Handling handling,
    Ownership ownership,
    Optional<Optics> measured,
    String note,
    Swatchbook swatchbook) {
  private static final double SHARE_TOLERANCE = 1e-6;

  public Paint {
    requireText(id, "a paint's id");
    requireText(name, "a paint's name");
    Objects.requireNonNull(maker, "maker");
    Objects.requireNonNull(handling, "handling");
    Objects.requireNonNull(ownership, "ownership");
    Objects.requireNonNull(measured, "measured");
    Objects.requireNonNull(note, "note");
    Objects.requireNonNull(swatchbook, "swatchbook");
    pigments = List.copyOf(pigments);
    if (pigments.isEmpty()) {
      throw new IllegalArgumentException("paint " + name + " has no pigment");
    }
    double sum = pigments.stream().mapToDouble(PigmentShare::share).sum();
    if (Math.abs(sum - 1) > SHARE_TOLERANCE) {
      throw new IllegalArgumentException("shares of " + name + " must sum to 1, sum is " + sum);
    }
  }

  /** A paint of which no coat is kept. */
  public Paint(
      String id,
      String name,
      String maker,
      List<PigmentShare> pigments,
      Handling handling,
      Ownership ownership,
      Optional<Optics> measured,
      String note) {
    this(id, name, maker, pigments, handling, ownership, measured, note, Swatchbook.EMPTY);
  }

  /** The optics to predict with: the measured ones, else the estimate from the pigments. */
  public Optics optics(PigmentLibrary library) {
    return measured.orElseGet(() -> library.estimate(pigments));
  }

  /** The pigment codes as printed on a tube, for example {@code PB29 + PBk7}. */
  public String codes() {
    return String.join(" + ", pigments.stream().map(p -> p.pigment().code()).toList());
  }

  /** The same paint under another id. */
  public Paint withId(String newId) {
    return new Paint(newId, name, maker, pigments, handling, ownership, measured, note, swatchbook);
  }

  /** The same paint under another name. */
  public Paint withName(String newName) {
    return new Paint(id, newName, maker, pigments, handling, ownership, measured, note, swatchbook);
  }

  /** The same paint with other evidence kept with it. */
  public Paint withSwatchbook(Swatchbook changed) {
    return new Paint(id, name, maker, pigments, handling, ownership, measured, note, changed);
  }

  /**
   * The paint predicted from other optics from now on; those it had join its former ones.
   *
   * @param optics empty to estimate it from its pigments
   */
  public Paint using(Optional<Optics> optics, OpticsOrigin origin) {
    List<FormerOptics> former = new ArrayList<>(swatchbook.former());
    former.add(inUse());
    return with(optics, new Swatchbook(swatchbook.coats(), Optional.of(origin), former));
  }

  /**
   * The paint with former optics in use again; those it had take a place among the former ones.
   *
   * @param former which of them, from 0
   */
  public Paint goingBackTo(int former) {
    List<FormerOptics> others = new ArrayList<>(swatchbook.former());
    FormerOptics chosen = others.remove(former);
    others.add(inUse());
    return with(
        chosen.optics(), new Swatchbook(swatchbook.coats(), Optional.of(chosen.origin()), others));
  }

  /** The optics in use as a line of the history. */
  private FormerOptics inUse() {
    return new FormerOptics(measured, origin());
  }

  /** Where the optics in use come from. */
  public OpticsOrigin origin() {
    return swatchbook
        .origin()
        .orElse(measured.isEmpty() ? OpticsOrigin.ESTIMATE : OpticsOrigin.UNNOTED);
  }

  private Paint with(Optional<Optics> optics, Swatchbook book) {
    return new Paint(id, name, maker, pigments, handling, ownership, optics, note, book);
  }

  private static void requireText(String text, String what) {
    if (text.isBlank()) {
      throw new IllegalArgumentException(what + " must not be blank");
    }
  }
}
