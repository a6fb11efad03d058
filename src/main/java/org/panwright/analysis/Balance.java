package org.panwright.analysis;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Granulation;
import org.panwright.paint.HueFamily;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Staining;
import org.panwright.paint.Transparency;
import org.panwright.paint.Wash;

/**
 * How a lineup is made up: counts of paints.
 *
 * @param paints how many paints in all
 * @param groups by coarse hue; every group is there
 * @param light masstones of L* 65 and above
 * @param dark masstones below L* 40
 * @param opaque semi-opaque and opaque paints
 * @param staining strongly staining paints
 * @param granulating paints that granulate at all
 * @param severalPigments paints of two or more pigments
 * @param leanings for paints that lean within their family, the family they lean to, by id
 */
public record Balance(
    int paints,
    Map<HueGroup, Integer> groups,
    int light,
    int dark,
    int opaque,
    int staining,
    int granulating,
    int severalPigments,
    Map<String, HueFamily> leanings) {
  private static final double LIGHT_FROM = 65;
  private static final double DARK_BELOW = 40;

  public Balance {
    groups = java.util.Collections.unmodifiableMap(new EnumMap<>(groups));
    leanings = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(leanings));
  }

  static Balance of(Case open) {
    List<Paint> paints = open.paints();
    Map<HueGroup, Integer> groups = new EnumMap<>(HueGroup.class);
    for (HueGroup group : HueGroup.values()) {
      groups.put(group, 0);
    }
    Map<String, HueFamily> leanings = new LinkedHashMap<>();
    List<Double> lightness = new ArrayList<>();
    for (Paint paint : paints) {
      lightness.add(open.masstone(paint.id()).l());
      Optional<HueFamily> family = family(open, paint);
      family.ifPresent(f -> groups.merge(HueGroup.of(f), 1, Integer::sum));
      family
          .flatMap(f -> Leaning.of(f, bodyHue(open, paint)))
          .ifPresent(to -> leanings.put(paint.id(), to));
    }
    return new Balance(
        paints.size(),
        groups,
        (int) lightness.stream().filter(l -> l >= LIGHT_FROM).count(),
        (int) lightness.stream().filter(l -> l < DARK_BELOW).count(),
        (int)
            paints.stream()
                .filter(p -> p.handling().transparency().compareTo(Transparency.SEMI_OPAQUE) >= 0)
                .count(),
        (int) paints.stream().filter(p -> p.handling().staining() == Staining.HIGH).count(),
        (int) paints.stream().filter(p -> p.handling().granulation() != Granulation.NONE).count(),
        (int) paints.stream().filter(p -> p.pigments().size() > 1).count(),
        leanings);
  }

  /** The family of the pigment with the largest share, the first of equals. */
  static Optional<HueFamily> family(Case open, Paint paint) {
    PigmentShare largest = paint.pigments().get(0);
    for (PigmentShare part : paint.pigments()) {
      if (part.share() > largest.share()) {
        largest = part;
      }
    }
    return open.library().find(largest.pigment()).map(pigment -> pigment.family());
  }

  private static double bodyHue(Case open, Paint paint) {
    Lab lab =
        new Mixer(open.table()).lab(Recipe.of(paint.id()), open.kit().washes().load(Wash.MILK));
    return Oklab.ofD65(lab.toXyz(Light.D65.white())).toOklch().hueDeg();
  }
}
