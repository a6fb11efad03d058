package org.panwright.paint;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.panwright.colour.Lab;

/**
 * What is kept with a paint as evidence for its colour: the painter's own coats of it, and where
 * its optics came from, now and before.
 *
 * @param coats in the painter's order; no two with the same id
 * @param origin where the optics in use come from; empty if they were never anything but the
 *     estimate from the pigments, or nobody noted it
 * @param former optics the paint had before, oldest first
 */
public record Swatchbook(
    List<PaintedCoat> coats, Optional<OpticsOrigin> origin, List<FormerOptics> former) {
  /** Nothing painted, nothing changed. */
  public static final Swatchbook EMPTY = new Swatchbook(List.of(), Optional.empty(), List.of());

  public Swatchbook {
    coats = List.copyOf(coats);
    Objects.requireNonNull(origin, "origin");
    former = List.copyOf(former);
    Set<String> ids = new HashSet<>();
    for (PaintedCoat coat : coats) {
      if (!ids.add(coat.id())) {
        throw new IllegalArgumentException("two coats have the id " + coat.id());
      }
    }
  }

  /** The coat with this id. */
  public Optional<PaintedCoat> find(String coatId) {
    return coats.stream().filter(coat -> coat.id().equals(coatId)).findFirst();
  }

  /** The book with more coats. One whose id is taken replaces the coat of that id, in its place. */
  public Swatchbook with(List<PaintedCoat> more) {
    List<PaintedCoat> all = new ArrayList<>(coats);
    for (PaintedCoat coat : more) {
      int place = place(all, coat.id());
      if (place < 0) {
        all.add(coat);
      } else {
        all.set(place, coat);
      }
    }
    return new Swatchbook(all, origin, former);
  }

  /** The book without one coat. */
  public Swatchbook without(String coatId) {
    return new Swatchbook(
        coats.stream().filter(coat -> !coat.id().equals(coatId)).toList(), origin, former);
  }

  /**
   * The paint's own drying shift: the mean over its unmixed coats that were read wet and dry; empty
   * if there is none.
   */
  public Optional<DryingShift> dryingShift() {
    double l = 0;
    double a = 0;
    double b = 0;
    double dry = 0;
    int read = 0;
    for (PaintedCoat coat : coats) {
      if (coat.wet().isPresent() && coat.mixedWith().isEmpty()) {
        Lab wet = coat.wet().get().lab();
        l += wet.l() - coat.dry().lab().l();
        a += wet.a() - coat.dry().lab().a();
        b += wet.b() - coat.dry().lab().b();
        dry += coat.dry().lab().l();
        read++;
      }
    }
    return read == 0
        ? Optional.empty()
        : Optional.of(new DryingShift(l / read, a / read, b / read, dry / read));
  }

  /** An id no coat has yet. */
  public String freshId() {
    int number = coats.size() + 1;
    while (find("swatch-" + number).isPresent()) {
      number++;
    }
    return "swatch-" + number;
  }

  private static int place(List<PaintedCoat> coats, String id) {
    for (int i = 0; i < coats.size(); i++) {
      if (coats.get(i).id().equals(id)) {
        return i;
      }
    }
    return -1;
  }
}
