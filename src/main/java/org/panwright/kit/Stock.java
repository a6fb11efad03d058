package org.panwright.kit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What there is to fill boxes with and what was filled: tubes, kinds of pans, filled wells, and the
 * painter's way of filling.
 *
 * @param currency of all prices, free text, may be empty
 * @param tubes in the painter's order
 * @param filled one entry a well at most
 * @param aside filled pans that lie beside their box, each cut for one of its wells; of a paint one
 *     for each well at most
 * @param pans at least the kinds {@link PanKind#FULL_ID} and {@link PanKind#HALF_ID}
 */
public record Stock(
    String currency,
    List<Tube> tubes,
    List<FilledWell> filled,
    List<FilledWell> aside,
    List<PanKind> pans,
    FillPractice practice,
    FitTolerance tolerance) {
  /** No tubes, nothing filled, the usual pans and practice. */
  public static final Stock NONE =
      new Stock(
          "",
          List.of(),
          List.of(),
          List.of(),
          PanKind.USUAL,
          FillPractice.USUAL,
          FitTolerance.USUAL);

  public Stock {
    tubes = List.copyOf(tubes);
    filled = List.copyOf(filled);
    aside = List.copyOf(aside);
    pans = List.copyOf(pans);
    Objects.requireNonNull(currency, "currency");
    Objects.requireNonNull(practice, "practice");
    Objects.requireNonNull(tolerance, "tolerance");
    requireOnce("tubes", tubes.stream().map(Tube::id).toList());
    requireOnce("kinds of pans", pans.stream().map(PanKind::id).toList());
    requireOnce("filled wells", filled.stream().map(f -> List.of(f.boxId(), f.wellId())).toList());
    requireOnce(
        "pans kept aside",
        aside.stream().map(f -> List.of(f.boxId(), f.wellId(), f.paintId())).toList());
    for (String needed : List.of(PanKind.FULL_ID, PanKind.HALF_ID)) {
      if (pans.stream().noneMatch(kind -> kind.id().equals(needed))) {
        throw new IllegalArgumentException("the kinds of pans lack " + needed);
      }
    }
  }

  /** The kind of pan with this id. */
  public Optional<PanKind> pan(String id) {
    return pans.stream().filter(kind -> kind.id().equals(id)).findFirst();
  }

  /** The kind of pan that goes into a well; empty for a dab place that names none. */
  public Optional<PanKind> panFor(Well well) {
    return switch (well.kind()) {
      case PAN -> pan(well.panId().orElse(PanKind.FULL_ID));
      case HALF_PAN -> pan(well.panId().orElse(PanKind.HALF_ID));
      case DAB -> well.panId().flatMap(this::pan);
    };
  }

  /** The tube with this id. */
  public Optional<Tube> tube(String id) {
    return tubes.stream().filter(tube -> tube.id().equals(id)).findFirst();
  }

  /** The tubes of a paint. */
  public List<Tube> tubesOf(String paintId) {
    return tubes.stream().filter(tube -> tube.paintId().equals(paintId)).toList();
  }

  /** The wet paint left in all tubes of a paint, in ml. */
  public double leftMl(String paintId) {
    return tubesOf(paintId).stream().mapToDouble(Tube::leftMl).sum();
  }

  /** What really is in a well. */
  public Optional<FilledWell> in(String boxId, String wellId) {
    return filled.stream().filter(entry -> entry.isIn(boxId, wellId)).findFirst();
  }

  /** The stock with prices in another currency; the figures stay. */
  public Stock withCurrency(String changed) {
    return new Stock(changed, tubes, filled, aside, pans, practice, tolerance);
  }

  /** The stock with other tubes. */
  public Stock withTubes(List<Tube> changed) {
    return new Stock(currency, changed, filled, aside, pans, practice, tolerance);
  }

  /** The stock with other filled wells. */
  public Stock withFilled(List<FilledWell> changed) {
    return new Stock(currency, tubes, changed, aside, pans, practice, tolerance);
  }

  /** The stock with other pans beside the boxes. */
  public Stock withAside(List<FilledWell> changed) {
    return new Stock(currency, tubes, filled, changed, pans, practice, tolerance);
  }

  /** The stock with other kinds of pans. */
  public Stock withPans(List<PanKind> changed) {
    return new Stock(currency, tubes, filled, aside, changed, practice, tolerance);
  }

  /** The stock filled in another way. */
  public Stock withPractice(FillPractice changed) {
    return new Stock(currency, tubes, filled, aside, pans, changed, tolerance);
  }

  /** The stock with other tolerances. */
  public Stock withTolerance(FitTolerance changed) {
    return new Stock(currency, tubes, filled, aside, pans, practice, changed);
  }

  /** The pan of a paint that is cut for a well and lies beside its box. */
  public Optional<FilledWell> aside(String boxId, String wellId, String paintId) {
    return aside.stream().filter(entry -> entry.isIn(boxId, wellId, paintId)).findFirst();
  }

  /** The stock with a filled pan laid aside, in place of one of the same paint and well. */
  Stock layingAside(FilledWell pan) {
    List<FilledWell> changed = new ArrayList<>(aside);
    changed.removeIf(entry -> entry.isIn(pan.boxId(), pan.wellId(), pan.paintId()));
    changed.add(pan);
    return withAside(changed);
  }

  /** The stock without a pan laid aside. */
  Stock withoutAside(String boxId, String wellId, String paintId) {
    return withAside(aside.stream().filter(entry -> !entry.isIn(boxId, wellId, paintId)).toList());
  }

  /** The stock with a well filled anew, in place of what was in it. */
  public Stock filling(FilledWell fresh) {
    List<FilledWell> changed = new ArrayList<>(filled);
    changed.removeIf(entry -> entry.isIn(fresh.boxId(), fresh.wellId()));
    changed.add(fresh);
    return withFilled(changed);
  }

  /** The stock with only those filled wells kept that meet a condition. */
  Stock keepingFilled(Predicate<FilledWell> kept) {
    return withFilled(filled.stream().filter(kept).toList());
  }

  /** The same for pans laid aside. */
  Stock keepingAside(Predicate<FilledWell> kept) {
    return withAside(aside.stream().filter(kept).toList());
  }

  /** The stock without a paint: no tube of it, no well and no pan filled with it. */
  Stock without(String paintId) {
    return withTubes(tubes.stream().filter(t -> !t.paintId().equals(paintId)).toList())
        .keepingFilled(f -> !f.paintId().equals(paintId))
        .keepingAside(f -> !f.paintId().equals(paintId));
  }

  private static void requireOnce(String what, List<?> ids) {
    Set<Object> seen = new HashSet<>();
    for (Object id : ids) {
      if (!seen.add(id)) {
        throw new IllegalArgumentException("two " + what + " have the id " + id);
      }
    }
  }
}
