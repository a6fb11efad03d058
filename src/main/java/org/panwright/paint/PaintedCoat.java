package org.panwright.paint;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One coat of a paint that the painter painted, let dry and read: a swatch kept with its paint.
 *
 * @param id unique among the coats of its paint, never shown
 * @param dry what was read when it was dry
 * @param wet what was read on the same place while it was wet, if it was
 * @param load all paint in the coat per area, 1 = the paint's masstone coat, above 0 up to {@link
 *     #MOST_LOAD}; empty if nobody knows
 * @param strength how the painter meant it: full strength, a wash, or unknown
 * @param over what lies beneath
 * @param ground what was read there, bare and dry; empty if it was not read
 * @param mixedWith what else is in the coat, if anything
 * @param date when it was read
 * @param source where it was read: a file, a sheet, typed by hand; may be empty
 * @param note free text; may be empty
 */
public record PaintedCoat(
    String id,
    CoatReading dry,
    Optional<CoatReading> wet,
    OptionalDouble load,
    Strength strength,
    Ground over,
    Optional<CoatReading> ground,
    Optional<Admixture> mixedWith,
    Optional<LocalDate> date,
    String source,
    String note) {
  /** No brush lays down more than this many masstone coats at once. */
  public static final double MOST_LOAD = 20;

  /** How strong the painter meant a coat to be. */
  public enum Strength {
    /** As it comes from the tube or pan, with as little water as it spreads with. */
    FULL,
    /** Thinned so that the paper shines through. */
    WASH,
    /** Nothing is known. */
    UNKNOWN
  }

  /** What lies beneath a coat. */
  public enum Ground {
    /** The bare paper. */
    PAPER,
    /** A waterproof black line. */
    BLACK_LINE
  }

  public PaintedCoat {
    if (id.isBlank()) {
      throw new IllegalArgumentException("a coat's id must not be blank");
    }
    Objects.requireNonNull(dry, "dry");
    Objects.requireNonNull(wet, "wet");
    Objects.requireNonNull(strength, "strength");
    Objects.requireNonNull(over, "over");
    Objects.requireNonNull(ground, "ground");
    Objects.requireNonNull(mixedWith, "mixedWith");
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(note, "note");
    if (load.isPresent() && !(load.getAsDouble() > 0 && load.getAsDouble() <= MOST_LOAD)) {
      throw new IllegalArgumentException(
          "a coat's load must lie in 0..%s, was %s".formatted(MOST_LOAD, load.getAsDouble()));
    }
  }

  /** A coat over paper of which only its dry reading and its strength are known. */
  public static PaintedCoat of(String id, CoatReading dry, Strength strength) {
    return new PaintedCoat(
        id,
        dry,
        Optional.empty(),
        OptionalDouble.empty(),
        strength,
        Ground.PAPER,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "",
        "");
  }

  /** The same coat with a known load. */
  public PaintedCoat withLoad(double changed) {
    return new PaintedCoat(
        id,
        dry,
        wet,
        OptionalDouble.of(changed),
        strength,
        over,
        ground,
        mixedWith,
        date,
        source,
        note);
  }

  /** The same coat read wet, too. */
  public PaintedCoat withWet(CoatReading reading) {
    return new PaintedCoat(
        id, dry, Optional.of(reading), load, strength, over, ground, mixedWith, date, source, note);
  }

  /** The same coat over something else. */
  public PaintedCoat withGround(Ground kind, Optional<CoatReading> reading) {
    return new PaintedCoat(
        id, dry, wet, load, strength, kind, reading, mixedWith, date, source, note);
  }

  /** The same coat with something stirred in. */
  public PaintedCoat withMixedWith(Admixture admixture) {
    return new PaintedCoat(
        id, dry, wet, load, strength, over, ground, Optional.of(admixture), date, source, note);
  }

  /** The same coat with a day and a place of reading. */
  public PaintedCoat withOrigin(LocalDate day, String where) {
    return new PaintedCoat(
        id, dry, wet, load, strength, over, ground, mixedWith, Optional.of(day), where, note);
  }
}
