package org.panwright.analysis.balance;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.panwright.paint.Granulation;
import org.panwright.paint.HueFamily;
import org.panwright.paint.Paint;
import org.panwright.paint.Staining;
import org.panwright.paint.Transparency;

/**
 * How a lineup is made up: counts of paints.
 *
 * @param paints how many paints in all
 * @param groups by coarse hue, of the pigment or else of the colour; every group is there
 * @param groupOf the group of each paint, by id, in the order of the wells
 * @param light masstones of L* 65 and above
 * @param dark masstones below L* 40
 * @param opaque semi-opaque and opaque paints
 * @param staining strongly staining paints
 * @param granulating paints that granulate at all
 * @param severalPigments paints of two or more pigments
 * @param leanings for paints of one pigment that lean within their family, the family they lean to,
 *     by id
 */
public record Balance(
    int paints,
    Map<HueGroup, Integer> groups,
    Map<String, HueGroup> groupOf,
    int light,
    int dark,
    int opaque,
    int staining,
    int granulating,
    int severalPigments,
    Map<String, HueFamily> leanings) {
  /** Masstones of this L* and above are light. */
  public static final double LIGHT_FROM = 65;

  /** Masstones below this L* are dark. */
  public static final double DARK_BELOW = 40;

  public Balance {
    groupOf = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(groupOf));
    groups = java.util.Collections.unmodifiableMap(new EnumMap<>(groups));
    leanings = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(leanings));
  }

  /** The counts of some paints. */
  public static Balance of(List<Paint> paints, PaintGroups filed, Looks looks) {
    Map<HueGroup, Integer> groups = new EnumMap<>(HueGroup.class);
    for (HueGroup group : HueGroup.values()) {
      groups.put(group, 0);
    }
    Map<String, HueGroup> groupOf = new LinkedHashMap<>();
    Map<String, HueFamily> leanings = new LinkedHashMap<>();
    List<Double> lightness = new ArrayList<>();
    for (Paint paint : paints) {
      lightness.add(looks.masstone(paint.id()).l());
      groupOf.put(paint.id(), filed.of(paint));
      groups.merge(filed.of(paint), 1, Integer::sum);
      filed.leaning(paint).ifPresent(to -> leanings.put(paint.id(), to));
    }
    return new Balance(
        paints.size(),
        groups,
        groupOf,
        (int) lightness.stream().filter(l -> l >= LIGHT_FROM).count(),
        (int) lightness.stream().filter(l -> l < DARK_BELOW).count(),
        (int) paints.stream().filter(Balance::isOpaque).count(),
        (int) paints.stream().filter(p -> p.handling().staining() == Staining.HIGH).count(),
        (int) paints.stream().filter(p -> p.handling().granulation() != Granulation.NONE).count(),
        (int) paints.stream().filter(p -> p.pigments().size() > 1).count(),
        leanings);
  }

  /** Whether a paint counts as opaque. */
  public static boolean isOpaque(Paint paint) {
    return paint.handling().transparency().compareTo(Transparency.SEMI_OPAQUE) >= 0;
  }

  /** Masstones that are neither light nor dark. */
  public int middle() {
    return paints - light - dark;
  }
}
