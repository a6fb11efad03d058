package org.panwright.kit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which paint sits in which well of a box.
 *
 * @param id unique in the kit, never changed
 * @param name not blank
 * @param boxId the box it is for
 * @param fillings by well id; wells without an entry are empty
 */
public record Lineup(String id, String name, String boxId, Map<String, Filling> fillings) {
  public Lineup {
    fillings = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(fillings));
    if (id.isBlank() || name.isBlank() || boxId.isBlank()) {
      throw new IllegalArgumentException("a lineup needs an id, a name and a box");
    }
  }

  /** What is in a well. */
  public Optional<Filling> in(String wellId) {
    return Optional.ofNullable(fillings.get(wellId));
  }

  /** The ids of its paints in the order of the box's wells, each once. */
  public List<String> paintIds(Box box) {
    return box.wells().stream()
        .flatMap(well -> in(well.id()).stream())
        .map(Filling::paintId)
        .distinct()
        .toList();
  }

  /** The lineup with a well filled, or emptied if {@code filling} is empty. */
  public Lineup with(String wellId, Optional<Filling> filling) {
    Map<String, Filling> changed = new LinkedHashMap<>(fillings);
    filling.ifPresentOrElse(f -> changed.put(wellId, f), () -> changed.remove(wellId));
    return withFillings(changed);
  }

  /** The lineup with other fillings. */
  public Lineup withFillings(Map<String, Filling> changed) {
    return new Lineup(id, name, boxId, changed);
  }

  /** The lineup under another name. */
  public Lineup withName(String newName) {
    return new Lineup(id, newName, boxId, fillings);
  }
}
