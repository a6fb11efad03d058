package org.panwright.kit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which paint sits in which well of a box.
 *
 * @param id unique in the kit, never changed
 * @param name not blank
 * @param boxId the box it is for
 * @param fillings by well id; wells without an entry are empty
 * @param muted findings the painter does not want to be told, each once
 * @param cardMixes the mixes on its key card, each once; empty for those worth having
 * @param wishes what is asked of lineups proposed in its place, if the painter has said anything
 */
public record Lineup(
    String id,
    String name,
    String boxId,
    Map<String, Filling> fillings,
    List<MutedFinding> muted,
    Optional<List<KeptMix>> cardMixes,
    Optional<LineupWishes> wishes) {
  public Lineup {
    muted = List.copyOf(muted);
    cardMixes = cardMixes.map(List::copyOf);
    fillings = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(fillings));
    if (id.isBlank() || name.isBlank() || boxId.isBlank()) {
      throw new IllegalArgumentException("a lineup needs an id, a name and a box");
    }
    Set<String> keys = new HashSet<>();
    for (MutedFinding mute : muted) {
      if (!keys.add(mute.key())) {
        throw new IllegalArgumentException("a finding is muted twice: " + mute.key());
      }
    }
    Set<String> mixes = new HashSet<>();
    for (KeptMix mix : cardMixes.orElse(List.of())) {
      if (!mixes.add(mix.key())) {
        throw new IllegalArgumentException("a mix is kept twice: " + mix.key());
      }
    }
  }

  /** A lineup whose key card has the mixes worth having. */
  public Lineup(
      String id,
      String name,
      String boxId,
      Map<String, Filling> fillings,
      List<MutedFinding> muted) {
    this(id, name, boxId, fillings, muted, Optional.empty(), Optional.empty());
  }

  /** A lineup of which every finding is told. */
  public Lineup(String id, String name, String boxId, Map<String, Filling> fillings) {
    this(id, name, boxId, fillings, List.of());
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
    return new Lineup(id, name, boxId, changed, muted, cardMixes, wishes);
  }

  /** The lineup under another name. */
  public Lineup withName(String newName) {
    return new Lineup(id, newName, boxId, fillings, muted, cardMixes, wishes);
  }

  /** The lineup with these mixes on its key card, or those worth having if empty. */
  public Lineup withCardMixes(Optional<List<KeptMix>> changed) {
    return new Lineup(id, name, boxId, fillings, muted, changed, wishes);
  }

  /** The lineup for whose replacement this is asked. */
  public Lineup withWishes(LineupWishes changed) {
    return new Lineup(id, name, boxId, fillings, muted, cardMixes, Optional.of(changed));
  }

  /** All of it as another lineup. */
  public Lineup as(String newId, String newName) {
    return new Lineup(newId, newName, boxId, fillings, muted, cardMixes, wishes);
  }

  /** Why a finding is muted, if it is. */
  public Optional<MutedFinding> mute(String key) {
    return muted.stream().filter(mute -> mute.key().equals(key)).findFirst();
  }

  /** The lineup with one more finding muted, or one muted for another reason. */
  public Lineup muting(MutedFinding mute) {
    List<MutedFinding> changed = new ArrayList<>(withoutMute(mute.key()).muted);
    changed.add(mute);
    return new Lineup(id, name, boxId, fillings, changed, cardMixes, wishes);
  }

  /** The lineup of which a finding is told again. */
  public Lineup withoutMute(String key) {
    return new Lineup(
        id,
        name,
        boxId,
        fillings,
        muted.stream().filter(mute -> !mute.key().equals(key)).toList(),
        cardMixes,
        wishes);
  }
}
