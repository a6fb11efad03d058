package org.panwright.paint;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * All paints the painter owns, has tried or wishes for, in the painter's order.
 *
 * @param paints no two with the same id
 */
public record Shelf(List<Paint> paints) {
  public Shelf {
    paints = List.copyOf(paints);
    Set<String> ids = new HashSet<>();
    for (Paint paint : paints) {
      if (!ids.add(paint.id())) {
        throw new IllegalArgumentException("two paints have the id " + paint.id());
      }
    }
  }

  /** The paint with this id. */
  public Optional<Paint> find(String id) {
    return paints.stream().filter(p -> p.id().equals(id)).findFirst();
  }

  /** The shelf with {@code paint} at its end. */
  public Shelf with(Paint paint) {
    List<Paint> more = new ArrayList<>(paints);
    more.add(paint);
    return new Shelf(more);
  }

  /** The shelf with the paint of the same id replaced by {@code paint}. */
  public Shelf replacing(Paint paint) {
    return new Shelf(paints.stream().map(p -> p.id().equals(paint.id()) ? paint : p).toList());
  }

  /** The shelf without the paint of this id. */
  public Shelf without(String id) {
    return new Shelf(paints.stream().filter(p -> !p.id().equals(id)).toList());
  }
}
