package org.panwright.swatch.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.panwright.colour.Spectrum;
import org.panwright.mixing.Surface;
import org.panwright.paint.Optics;
import org.panwright.swatch.coat.Swatch;
import org.panwright.swatch.coat.SwatchSet;

/**
 * A fit of more paints than can be solved together in a few seconds, in groups.
 *
 * <p>The work of a fit grows with the cube of the number of paints. The paints that are mixed into
 * others most often (usually a white and a black) join every group, so their coats tie the groups
 * together; the face of the coats is that of the first group. Coats that mix paints of two groups
 * are left out of the fit and only compared with it.
 */
public final class GroupedFit {
  /** Up to here all paints are fitted together. */
  private static final int TOGETHER = 18;

  private static final int GROUP = 8;
  private static final int SHARED = 3;

  private GroupedFit() {}

  /**
   * Fits all paints of a set, together if they are few.
   *
   * @param pigments what is known of paints, per unit load
   * @throws FitRefusedException if nothing can be learnt from the set
   * @throws java.util.concurrent.CancellationException if {@code outdated} answers true
   */
  public static FitReport of(
      SwatchSet set,
      FitSettings settings,
      Map<String, KnownPaint> pigments,
      BooleanSupplier outdated)
      throws FitRefusedException {
    if (set.paints().size() <= TOGETHER) {
      return OpticsFit.of(set, settings, pigments, outdated);
    }
    Optional<FitRefusal> refusal = Sense.check(set);
    if (refusal.isPresent()) {
      throw new FitRefusedException(refusal.get());
    }
    Map<String, Optics> optics = new LinkedHashMap<>();
    Map<Swatch, Double> factors = new HashMap<>();
    Optional<KnownFace> face = settings.face();
    for (Set<String> group : groups(set)) {
      SwatchSet part = within(set, group);
      FitSettings held = face.map(settings::on).orElse(settings);
      FitReport report = OpticsFit.of(part, held, pigments, outdated);
      face = face.or(() -> Optional.of(found(report, set)));
      report.optics().forEach(optics::putIfAbsent);
      report.residuals().forEach(r -> factors.putIfAbsent(r.swatch(), r.loadFactor()));
    }
    return whole(set, optics, face.orElseThrow().bare(), factors);
  }

  /** The face of one group's coats for those of all. */
  private static KnownFace found(FitReport report, SwatchSet set) {
    double gloss = report.optics().values().iterator().next().gloss();
    Map<String, Double> all = new HashMap<>();
    set.paints().forEach(paint -> all.put(paint, gloss));
    return new KnownFace(report.surface(), all);
  }

  private static FitReport whole(
      SwatchSet set, Map<String, Optics> optics, Surface face, Map<Swatch, Double> factors) {
    List<SwatchResidual> residuals = new ArrayList<>();
    for (Swatch swatch : set.swatches()) {
      double factor = factors.getOrDefault(swatch, 1.0);
      Spectrum seen = FitReport.predict(optics, face, swatch.paints(factor), swatch.ground());
      residuals.add(new SwatchResidual(swatch, factor, seen));
    }
    return new FitReport(optics, face, residuals);
  }

  private static List<Set<String>> groups(SwatchSet set) {
    List<String> shared = shared(set);
    List<String> others = set.paints().stream().filter(p -> !shared.contains(p)).toList();
    List<Set<String>> groups = new ArrayList<>();
    for (int from = 0; from < others.size(); from += GROUP) {
      Set<String> group = new LinkedHashSet<>(shared);
      group.addAll(others.subList(from, Math.min(others.size(), from + GROUP)));
      groups.add(group);
    }
    return groups;
  }

  /** The paints that are mixed into others most often. */
  private static List<String> shared(SwatchSet set) {
    Map<String, Integer> mixed = new HashMap<>();
    for (Swatch swatch : set.swatches()) {
      if (!swatch.isSingle()) {
        swatch.paints().forEach(share -> mixed.merge(share.paint(), 1, Integer::sum));
      }
    }
    return set.paints().stream()
        .filter(mixed::containsKey)
        .sorted(Comparator.comparing((String paint) -> -mixed.get(paint)))
        .limit(SHARED)
        .toList();
  }

  /**
   * The coats of a swatch's paints and of the paints that join every group.
   *
   * @param paints how many paints there are to be at least, if the set has as many
   */
  public static SwatchSet around(SwatchSet set, Swatch swatch, int paints) {
    Set<String> group = new LinkedHashSet<>(shared(set));
    swatch.paints().forEach(share -> group.add(share.paint()));
    set.paints().stream()
        .filter(paint -> !group.contains(paint))
        .limit(Math.max(0, paints - group.size()))
        .forEach(group::add);
    return within(set, group);
  }

  private static SwatchSet within(SwatchSet set, Set<String> group) {
    return new SwatchSet(
        set.swatches().stream()
            .filter(s -> s.paints().stream().allMatch(share -> group.contains(share.paint())))
            .toList());
  }
}
