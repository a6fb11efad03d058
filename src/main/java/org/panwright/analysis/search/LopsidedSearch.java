package org.panwright.analysis.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.panwright.analysis.balance.Balance;
import org.panwright.analysis.balance.HueGroup;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.Lopsided;
import org.panwright.kit.Edit;
import org.panwright.paint.Granulation;
import org.panwright.paint.HueFamily;
import org.panwright.paint.Paint;
import org.panwright.paint.Staining;

/** Finds where a lineup leans too far to one side, and the exchange that evens it out by one. */
final class LopsidedSearch {
  /** An exchange for the sake of handling must not change the colour by more than this ΔE00. */
  private static final double NEAR = 10;

  private final Case open;
  private final Balance balance;
  private final int paints;
  private final List<Finding> found = new ArrayList<>();

  private LopsidedSearch(Case open, Balance balance) {
    this.open = open;
    this.balance = balance;
    paints = balance.paints();
  }

  static List<Finding> of(Case open, Balance balance) {
    LopsidedSearch search = new LopsidedSearch(open, balance);
    if (search.paints >= Lopsided.FEWEST) {
      for (HueGroup group : HueGroup.values()) {
        search.group(group);
      }
      search.share(Lopsided.Side.LIGHT, 1, 2, p -> search.lightness(p) >= Balance.LIGHT_FROM);
      search.share(Lopsided.Side.DARK, 3, 4, p -> search.lightness(p) < Balance.DARK_BELOW);
      search.share(Lopsided.Side.OPAQUE, 1, 2, Balance::isOpaque);
      search.share(Lopsided.Side.STAINING, 3, 4, p -> p.handling().staining() == Staining.HIGH);
      search.share(
          Lopsided.Side.GRANULATING, 3, 4, p -> p.handling().granulation() != Granulation.NONE);
    }
    return search.found;
  }

  private double lightness(Paint paint) {
    return open.masstone(paint.id()).l();
  }

  private void group(HueGroup group) {
    List<String> ids =
        balance.groupOf().entrySet().stream()
            .filter(entry -> entry.getValue() == group)
            .map(Map.Entry::getKey)
            .toList();
    boolean primary =
        group == HueGroup.YELLOWS || group == HueGroup.REDS || group == HueGroup.BLUES;
    if (ids.size() >= 4 && 3 * ids.size() > paints) {
      add(Lopsided.Side.CROWDED, Optional.of(group), Optional.empty(), ids, fewer(ids));
    } else if (primary && ids.isEmpty()) {
      add(Lopsided.Side.MISSING, Optional.of(group), Optional.empty(), ids, bring(group));
    } else if (ids.size() >= 2 && (group == HueGroup.YELLOWS || group == HueGroup.BLUES)) {
      leaning(group, ids);
    }
  }

  private void leaning(HueGroup group, List<String> ids) {
    Set<Optional<HueFamily>> leans =
        ids.stream()
            .map(id -> Optional.ofNullable(balance.leanings().get(id)))
            .collect(Collectors.toSet());
    Optional<HueFamily> lean = leans.iterator().next();
    if (leans.size() == 1 && lean.isPresent()) {
      Optional<Paint> other =
          open.atHand().stream()
              .filter(paint -> open.groups().of(paint) == group)
              .filter(paint -> !open.groups().leaning(paint).equals(lean))
              .max(Comparator.comparingDouble(paint -> open.ringWith(paint.id()).sum()));
      Lopsided.Change change =
          other.map(paint -> exchange(leastEarning(ids), paint.id())).orElse(Lopsided.Change.NONE);
      add(Lopsided.Side.LEANING, Optional.of(group), lean, ids, change);
    }
  }

  /** Tells of a side if more than {@code of}/{@code outOf} of the paints are on it. */
  private void share(Lopsided.Side side, int of, int outOf, Predicate<Paint> on) {
    List<String> ids = open.paints().stream().filter(on).map(Paint::id).toList();
    if (outOf * ids.size() > of * paints) {
      add(side, Optional.empty(), Optional.empty(), ids, nearest(ids, on.negate()));
    }
  }

  private void add(
      Lopsided.Side side,
      Optional<HueGroup> group,
      Optional<HueFamily> lean,
      List<String> ids,
      Lopsided.Change change) {
    found.add(new Lopsided(side, group, lean, ids, paints, change));
  }

  /** The paint of a crowd that earns least leaves. */
  private Lopsided.Change fewer(List<String> ids) {
    String leaving = leastEarning(ids);
    return new Lopsided.Change(Optional.of(leaving), Optional.empty(), open.seats().empty(leaving));
  }

  private String leastEarning(List<String> ids) {
    return ids.stream().min(Comparator.comparingDouble(open::earned)).orElseThrow();
  }

  /** The owned paint of a group with which the ring sums to most comes in. */
  private Lopsided.Change bring(HueGroup group) {
    return open.atHand().stream()
        .filter(paint -> open.groups().of(paint) == group)
        .max(Comparator.comparingDouble(paint -> open.ringWith(paint.id()).sum()))
        .map(
            paint -> {
              Exchange exchange = Exchange.bringing(open, paint.id());
              return new Lopsided.Change(
                  exchange.leavingId(), Optional.of(paint.id()), exchange.edit());
            })
        .orElse(Lopsided.Change.NONE);
  }

  /** The exchange that changes colour least and takes one paint off the side. */
  private Lopsided.Change nearest(List<String> ids, Predicate<Paint> wanted) {
    Lopsided.Change best = Lopsided.Change.NONE;
    double least = NEAR;
    for (Paint paint : open.atHand()) {
      for (String id : wanted.test(paint) ? ids : List.<String>of()) {
        double apart = open.apart(id, paint.id());
        if (apart < least) {
          least = apart;
          best = exchange(id, paint.id());
        }
      }
    }
    return best;
  }

  private Lopsided.Change exchange(String leavingId, String arrivingId) {
    Edit edit = open.seats().placeInWellOf(leavingId, arrivingId);
    return new Lopsided.Change(Optional.of(leavingId), Optional.of(arrivingId), Optional.of(edit));
  }
}
