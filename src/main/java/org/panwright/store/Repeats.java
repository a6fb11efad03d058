package org.panwright.store;

import java.util.HashMap;
import java.util.Map;

/** Tells entries apart that have no id of their own and may share a name: "sky", "sky#2". */
final class Repeats {
  private final Map<String, Integer> seen = new HashMap<>();

  String mark(String name) {
    int count = seen.merge(name, 1, Integer::sum);
    return count == 1 ? name : name + "#" + count;
  }
}
