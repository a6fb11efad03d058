package org.panwright.kit;

import java.util.Objects;

/**
 * A finding about a lineup that the painter does not want to be told any more.
 *
 * @param key which finding, as the judge names it: a kind, and what it is about; not blank
 * @param reason why not, in the painter's words; may be empty
 */
public record MutedFinding(String key, String reason) {
  public MutedFinding {
    Objects.requireNonNull(reason, "reason");
    if (key.isBlank()) {
      throw new IllegalArgumentException("a muted finding needs a key");
    }
  }
}
