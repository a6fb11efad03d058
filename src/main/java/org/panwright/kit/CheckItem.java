package org.panwright.kit;

import java.util.Objects;
import java.util.Optional;

/**
 * One entry of an outing's check list.
 *
 * @param id unique in its list, never changed
 * @param text what to take, not blank
 * @param note the painter's own, may be empty
 * @param ticked whether it is packed
 * @param supply what it stands for, if the program works out how much of it is needed
 */
public record CheckItem(
    String id, String text, String note, boolean ticked, Optional<Supply> supply) {
  public CheckItem {
    Objects.requireNonNull(note, "note");
    Objects.requireNonNull(supply, "supply");
    if (id.isBlank() || text.isBlank()) {
      throw new IllegalArgumentException("a check list entry needs an id and a text");
    }
  }

  /** The entry with another text. */
  public CheckItem withText(String changed) {
    return new CheckItem(id, changed, note, ticked, supply);
  }

  /** The entry with another note. */
  public CheckItem withNote(String changed) {
    return new CheckItem(id, text, changed, ticked, supply);
  }

  /** The entry ticked or not. */
  public CheckItem withTicked(boolean changed) {
    return new CheckItem(id, text, note, changed, supply);
  }
}
