package org.panwright.app.fx;

import java.util.HashSet;
import java.util.List;

/** Changing a list of nodes so that those that stay are not touched and keep style and focus. */
public final class InPlace {
  private InPlace() {}

  /** Makes {@code list} equal to {@code wanted}, which holds nothing twice. */
  public static <T> void arrange(List<T> list, List<? extends T> wanted) {
    list.retainAll(new HashSet<>(wanted));
    for (int i = 0; i < wanted.size(); i++) {
      T next = wanted.get(i);
      if (i < list.size() && list.get(i).equals(next)) {
        continue;
      }
      list.remove(next);
      list.add(i, next);
    }
  }
}
