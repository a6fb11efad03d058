package org.panwright.paint;

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
 */
public record Paint(
    String id,
    String name,
    String maker,
    List<PigmentShare> pigments,
    Handling handling,
    Ownership ownership,
    Optional<Optics> measured,
    String note) {
  private static final double SHARE_TOLERANCE = 1e-6;

  public Paint {
    requireText(id, "a paint's id");
    requireText(name, "a paint's name");
    Objects.requireNonNull(maker, "maker");
    Objects.requireNonNull(handling, "handling");
    Objects.requireNonNull(ownership, "ownership");
    Objects.requireNonNull(measured, "measured");
    Objects.requireNonNull(note, "note");
    pigments = List.copyOf(pigments);
    if (pigments.isEmpty()) {
      throw new IllegalArgumentException("paint " + name + " has no pigment");
    }
    double sum = pigments.stream().mapToDouble(PigmentShare::share).sum();
    if (Math.abs(sum - 1) > SHARE_TOLERANCE) {
      throw new IllegalArgumentException("shares of " + name + " must sum to 1, sum is " + sum);
    }
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
    return new Paint(newId, name, maker, pigments, handling, ownership, measured, note);
  }

  /** The same paint under another name. */
  public Paint withName(String newName) {
    return new Paint(id, newName, maker, pigments, handling, ownership, measured, note);
  }

  private static void requireText(String text, String what) {
    if (text.isBlank()) {
      throw new IllegalArgumentException(what + " must not be blank");
    }
  }
}
