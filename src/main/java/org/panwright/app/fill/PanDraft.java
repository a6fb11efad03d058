package org.panwright.app.fill;

import java.util.List;
import java.util.Optional;
import org.panwright.app.fx.TypedNumber;
import org.panwright.kit.PanKind;
import org.panwright.words.FillViewWords;

/**
 * A kind of pan while it is typed; it may be wrong, and says how.
 *
 * @param outer length, width and height as typed
 * @param inner the same inside
 */
record PanDraft(String name, List<String> outer, List<String> inner, String taper, String brim) {
  PanDraft {
    outer = List.copyOf(outer);
    inner = List.copyOf(inner);
  }

  static PanDraft of(PanKind pan) {
    return new PanDraft(
        pan.name(),
        sizes(pan.outer()),
        sizes(pan.inner()),
        TypedNumber.write(pan.taperMm(), 2),
        TypedNumber.write(pan.brimMl(), 3));
  }

  /** The first thing that is not right, as a sentence; empty if it can be a pan. */
  Optional<String> problem() {
    if (name.isBlank()) {
      return Optional.of(FillViewWords.NAME_NEEDED);
    }
    Optional<PanKind.Extent> outside = extent(outer);
    if (outside.isEmpty()) {
      return Optional.of(FillViewWords.BAD_OUTER);
    }
    Optional<PanKind.Extent> inside = extent(inner);
    if (inside.isEmpty()
        || inside.get().lengthMm() >= outside.get().lengthMm()
        || inside.get().widthMm() >= outside.get().widthMm()
        || inside.get().heightMm() >= outside.get().heightMm()) {
      return Optional.of(FillViewWords.BAD_INNER);
    }
    double narrower = number(taper);
    if (!(narrower >= 0 && narrower <= 10 && narrower < inside.get().widthMm())) {
      return Optional.of(FillViewWords.BAD_TAPER);
    }
    double ml = number(brim);
    return ml > 0 && ml <= 50 ? Optional.empty() : Optional.of(FillViewWords.BAD_BRIM);
  }

  /** The kind of pan; only if nothing is wrong. */
  PanKind toPan(String id) {
    return new PanKind(
        id,
        name.strip(),
        extent(outer).orElseThrow(),
        extent(inner).orElseThrow(),
        number(taper),
        number(brim));
  }

  private static Optional<PanKind.Extent> extent(List<String> typed) {
    try {
      return Optional.of(
          new PanKind.Extent(number(typed.get(0)), number(typed.get(1)), number(typed.get(2))));
    } catch (IllegalArgumentException outOfRange) {
      return Optional.empty();
    }
  }

  private static double number(String text) {
    return TypedNumber.read(text).orElse(Double.NaN);
  }

  private static List<String> sizes(PanKind.Extent extent) {
    return List.of(
        TypedNumber.write(extent.lengthMm(), 2),
        TypedNumber.write(extent.widthMm(), 2),
        TypedNumber.write(extent.heightMm(), 2));
  }
}
