package org.panwright.kit;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One tube of a paint.
 *
 * @param id unique in the kit, never changed
 * @param paintId the paint of the shelf that is in it
 * @param sizeMl as sold, above 0 up to 1000
 * @param left what is left; by volume at most {@code sizeMl}, by weight at most {@link
 *     #WEIGHED_MOST} times that, because tubes are filled generously and densities are guessed
 * @param price paid for the full tube, in the kit's currency, 0..1 000 000
 * @param opened the day it was first used, if it was
 * @param note free text, may be empty
 */
public record Tube(
    String id,
    String paintId,
    double sizeMl,
    Remainder left,
    OptionalDouble price,
    Optional<LocalDate> opened,
    String note) {
  /** What a weighed tube may hold, in sizes. */
  public static final double WEIGHED_MOST = 1.15;

  public Tube {
    Objects.requireNonNull(note, "note");
    if (id.isBlank() || paintId.isBlank()) {
      throw new IllegalArgumentException("a tube needs an id and a paint");
    }
    if (!(sizeMl > 0 && sizeMl <= 1000)) {
      throw new IllegalArgumentException("a tube holds above 0 up to 1000 ml, was " + sizeMl);
    }
    if (left.ml() > mostMl(sizeMl, left)) {
      throw new IllegalArgumentException(
          "a tube of %s ml cannot have %s ml left".formatted(sizeMl, left.ml()));
    }
    if (price.isPresent() && !(price.getAsDouble() >= 0 && price.getAsDouble() <= 1e6)) {
      throw new IllegalArgumentException("a price lies in 0..1000000, was " + price.getAsDouble());
    }
    opened.ifPresent(date -> DateSpan.require("the day a tube was opened", date));
  }

  /** The most that can be left in a tube of this size, told in this way. */
  public static double mostMl(double sizeMl, Remainder left) {
    return left instanceof Remainder.ByWeight ? WEIGHED_MOST * sizeMl : sizeMl;
  }

  /** The wet paint left, in ml. */
  public double leftMl() {
    return left.ml();
  }

  /** What a millilitre of it cost, in the kit's currency. */
  public OptionalDouble pricePerMl() {
    return price.isPresent() ? OptionalDouble.of(price.getAsDouble() / sizeMl) : price;
  }

  /**
   * The tube after paint was pressed out of it; it counts as opened from that day at the latest.
   */
  public Tube less(double usedMl, LocalDate day) {
    return new Tube(
        id, paintId, sizeMl, left.less(usedMl), price, Optional.of(opened.orElse(day)), note);
  }
}
