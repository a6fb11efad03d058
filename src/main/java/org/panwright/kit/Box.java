package org.panwright.kit;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A travel box as seen from above with its lid open away from the painter; sizes are inner sizes.
 *
 * @param id unique in the kit, never changed
 * @param name not blank
 * @param widthMm from left to right, 10..1000
 * @param heightMm from the hinge to the front, 10..1000
 * @param lidWidthMm inner width of the lid, 10..1000: where the key card goes
 * @param lidHeightMm inner height of the lid
 * @param wells at least one, none outside the box, no two overlapping, in the painter's counting
 *     order
 * @param depthMm from what the pans stand on to where the lid closes, 2..100, if measured
 * @param fixtures mixing areas, strips, magnets and clips; each inside tray or lid, none where a
 *     well stands that it bars
 */
public record Box(
    String id,
    String name,
    double widthMm,
    double heightMm,
    double lidWidthMm,
    double lidHeightMm,
    List<Well> wells,
    OptionalDouble depthMm,
    List<Fixture> fixtures) {
  public Box {
    wells = List.copyOf(wells);
    fixtures = List.copyOf(fixtures);
    if (id.isBlank() || name.isBlank()) {
      throw new IllegalArgumentException("a box needs an id and a name");
    }
    requireSize("box width", widthMm);
    requireSize("box height", heightMm);
    requireSize("lid width", lidWidthMm);
    requireSize("lid height", lidHeightMm);
    if (wells.isEmpty()) {
      throw new IllegalArgumentException("box " + name + " has no wells");
    }
    Set<String> ids = new HashSet<>();
    for (Well well : wells) {
      if (!ids.add(well.id())) {
        throw new IllegalArgumentException("two wells of " + name + " have the id " + well.id());
      }
      if (!well.liesWithin(widthMm, heightMm)) {
        throw new IllegalArgumentException("well " + well.label() + " lies outside box " + name);
      }
    }
    requireApart(name, wells);
    if (depthMm.isPresent() && !(depthMm.getAsDouble() >= 2 && depthMm.getAsDouble() <= 100)) {
      throw new IllegalArgumentException(
          "box depth must lie in 2..100 mm, was " + depthMm.getAsDouble());
    }
    Set<String> parts = new HashSet<>();
    for (Fixture fixture : fixtures) {
      if (!parts.add(fixture.id())) {
        throw new IllegalArgumentException("two parts of " + name + " have id " + fixture.id());
      }
      double areaWidth = fixture.inLid() ? lidWidthMm : widthMm;
      if (!fixture.liesWithin(areaWidth, fixture.inLid() ? lidHeightMm : heightMm)) {
        throw new IllegalArgumentException("part " + fixture.id() + " lies outside box " + name);
      }
      wells.stream()
          .filter(fixture::bars)
          .findFirst()
          .ifPresent(
              well -> {
                throw new IllegalArgumentException(
                    "well %s of %s stands on part %s".formatted(well.label(), name, fixture.id()));
              });
    }
  }

  /** A box of unknown depth with nothing but wells. */
  public Box(
      String id,
      String name,
      double widthMm,
      double heightMm,
      double lidWidthMm,
      double lidHeightMm,
      List<Well> wells) {
    this(
        id,
        name,
        widthMm,
        heightMm,
        lidWidthMm,
        lidHeightMm,
        wells,
        OptionalDouble.empty(),
        List.of());
  }

  /** The box with other wells. */
  public Box withWells(List<Well> changed) {
    return new Box(
        id, name, widthMm, heightMm, lidWidthMm, lidHeightMm, changed, depthMm, fixtures);
  }

  /** The box with other mixing areas, strips, magnets and clips. */
  public Box withFixtures(List<Fixture> changed) {
    return new Box(id, name, widthMm, heightMm, lidWidthMm, lidHeightMm, wells, depthMm, changed);
  }

  /** The box under another id and name. */
  public Box renamed(String newId, String newName) {
    return new Box(
        newId, newName, widthMm, heightMm, lidWidthMm, lidHeightMm, wells, depthMm, fixtures);
  }

  /** The well with this id. */
  public Optional<Well> find(String wellId) {
    return wells.stream().filter(w -> w.id().equals(wellId)).findFirst();
  }

  private static void requireSize(String what, double mm) {
    if (!(mm >= 10 && mm <= 1000)) {
      throw new IllegalArgumentException(what + " must lie in 10..1000 mm, was " + mm);
    }
  }

  private static void requireApart(String name, List<Well> wells) {
    for (int i = 0; i < wells.size(); i++) {
      for (int j = i + 1; j < wells.size(); j++) {
        if (wells.get(i).overlaps(wells.get(j))) {
          throw new IllegalArgumentException(
              "wells %s and %s of %s overlap"
                  .formatted(wells.get(i).label(), wells.get(j).label(), name));
        }
      }
    }
  }
}
