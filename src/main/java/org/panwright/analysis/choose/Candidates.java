package org.panwright.analysis.choose;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.panwright.analysis.balance.HueGroup;
import org.panwright.analysis.choose.Contradiction.LimitTooTight;
import org.panwright.analysis.choose.Contradiction.MoreMustsThanLimit;
import org.panwright.analysis.choose.Contradiction.MoreMustsThanPlaces;
import org.panwright.analysis.choose.Contradiction.MustAndNever;
import org.panwright.analysis.choose.Contradiction.MustFades;
import org.panwright.analysis.choose.Contradiction.MustHoldsCadmium;
import org.panwright.analysis.choose.Contradiction.MustIsMixed;
import org.panwright.analysis.choose.Contradiction.MustIsNotOwned;
import org.panwright.analysis.choose.Contradiction.NoPlaces;
import org.panwright.analysis.choose.Contradiction.ShelfTooSmall;
import org.panwright.analysis.choose.Contradiction.TooFewAllowed;
import org.panwright.kit.Kit;
import org.panwright.kit.PaintRules;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;

/** Which paints of a shelf keep to the conditions, and which conditions contradict each other. */
final class Candidates {
  private static final String CADMIUM = "Cd";

  private final Kit kit;
  private final PigmentLibrary library;
  private final Conditions conditions;

  Candidates(Kit kit, PigmentLibrary library, Conditions conditions) {
    this.kit = kit;
    this.library = library;
    this.conditions = conditions;
  }

  /** The paints that may be in, in shelf order. */
  List<Paint> paints() {
    return kit.shelf().paints().stream()
        .filter(paint -> !conditions.never().contains(paint.id()))
        .filter(paint -> faults(paint).isEmpty())
        .toList();
  }

  /** What contradicts what; empty if a lineup can be proposed. */
  List<Contradiction> contradictions(Map<String, HueGroup> groups) {
    List<Contradiction> found = new ArrayList<>();
    int places = conditions.places();
    if (places == 0) {
      found.add(new NoPlaces());
    }
    Set<String> must = conditions.must();
    for (Paint paint : kit.shelf().paints()) {
      if (must.contains(paint.id())) {
        if (conditions.never().contains(paint.id())) {
          found.add(new MustAndNever(paint.id()));
        }
        found.addAll(faults(paint));
      }
    }
    if (must.size() > places) {
      found.add(new MoreMustsThanPlaces(must.size(), places));
    }
    int shelf = kit.shelf().paints().size();
    List<Paint> allowed = paints();
    if (shelf < places) {
      found.add(new ShelfTooSmall(shelf, places));
    } else if (allowed.size() < places) {
      found.add(new TooFewAllowed(allowed.size(), shelf, places));
    } else {
      conditions.mostOfAGroup().ifPresent(limit -> found.addAll(tight(limit, allowed, groups)));
    }
    return found;
  }

  private List<Contradiction> tight(int limit, List<Paint> allowed, Map<String, HueGroup> groups) {
    Map<HueGroup, Integer> musts = new EnumMap<>(HueGroup.class);
    Map<HueGroup, Integer> all = new EnumMap<>(HueGroup.class);
    for (Paint paint : allowed) {
      HueGroup group = groups.get(paint.id());
      all.merge(group, 1, Integer::sum);
      if (conditions.must().contains(paint.id())) {
        musts.merge(group, 1, Integer::sum);
      }
    }
    List<Contradiction> found = new ArrayList<>();
    musts.forEach(
        (group, count) -> {
          if (count > limit) {
            found.add(new MoreMustsThanLimit(group, count, limit));
          }
        });
    int possible = all.values().stream().mapToInt(count -> Math.min(count, limit)).sum();
    if (possible < conditions.places()) {
      found.add(new LimitTooTight(limit, possible, conditions.places()));
    }
    return found;
  }

  /** The rules a paint breaks, worded as if it had to be in. */
  private List<Contradiction> faults(Paint paint) {
    PaintRules rules = conditions.rules();
    List<Contradiction> faults = new ArrayList<>();
    if (rules.ownedOnly() && paint.ownership() != Ownership.OWNED) {
      faults.add(new MustIsNotOwned(paint.id()));
    }
    if (rules.singlePigment() && paint.pigments().size() > 1) {
      faults.add(new MustIsMixed(paint.id()));
    }
    if (rules.noCadmium() && holdsCadmium(paint)) {
      faults.add(new MustHoldsCadmium(paint.id()));
    }
    Lightfastness rated = paint.handling().lightfastness();
    rules
        .lightfastness()
        .filter(floor -> rated.compareTo(floor) > 0)
        .ifPresent(floor -> faults.add(new MustFades(paint.id(), rated, floor)));
    return faults;
  }

  private boolean holdsCadmium(Paint paint) {
    return paint.pigments().stream()
        .flatMap(share -> library.find(share.pigment()).stream())
        .anyMatch(pigment -> pigment.metals().contains(CADMIUM));
  }
}
