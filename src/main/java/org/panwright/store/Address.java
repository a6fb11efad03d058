package org.panwright.store;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a group stands in a kit, told by ids rather than by counting, so that it stays true when
 * the painter adds, moves or removes things.
 */
record Address(List<String> steps) {
  /** The kit itself. */
  static final Address KIT = new Address(List.of());

  Address {
    steps = List.copyOf(steps);
  }

  /** The only group of this name in the group here. */
  Address child(String name) {
    List<String> longer = new ArrayList<>(steps);
    longer.add(name);
    return new Address(longer);
  }

  /** The entry with this id in the list of this name. */
  Address entry(String list, String id) {
    return child(list).child(id);
  }

  /** Whether it is {@code outer} or stands in it. */
  boolean isWithin(Address outer) {
    return steps.size() >= outer.steps.size()
        && steps.subList(0, outer.steps.size()).equals(outer.steps);
  }
}
