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
import org.panwright.colour.Oklch;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Granulation;
import org.panwright.paint.HueFamily;
import org.panwright.paint.Paint;
import org.panwright.paint.Pigment;
import org.panwright.paint.Staining;
import org.panwright.paint.Transparency;
import org.panwright.paint.Wash;

/**
 * How a lineup is made up: counts of paints.
 *
 * @param paints how many paints in all
 * @param groups by coarse hue, of the pigment or else of the colour; every group is there
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
      Oklch body = body(open, paint);
      Optional<HueFamily> family = family(open, paint);
      groups.merge(group(family, body), 1, Integer::sum);
      family
          .flatMap(f -> Leaning.of(f, body.hueDeg()))
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

  /** The family of a paint of one known pigment. */
  static Optional<HueFamily> family(Case open, Paint paint) {
    return paint.pigments().size() == 1
        ? open.library().find(paint.pigments().get(0).pigment()).map(Pigment::family)
        : Optional.empty();
  }

  private static HueGroup group(Optional<HueFamily> family, Oklch body) {
    return family.map(HueGroup::of).orElseGet(() -> HueGroup.of(body));
  }

  private static Oklch body(Case open, Paint paint) {
    Lab lab =
        new Mixer(open.table()).lab(Recipe.of(paint.id()), open.kit().washes().load(Wash.MILK));
    return Oklab.ofD65(lab.toXyz(Light.D65.white())).toOklch();
  }
}
