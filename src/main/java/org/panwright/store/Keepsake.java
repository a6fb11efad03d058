package org.panwright.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * What a kit's file held that the kit itself cannot hold, kept so that a save gives it back.
 *
 * <p>Three things: fields the program does not know, values it could not use and put another in
 * place of, and whole parts it left out. Each is tied to the ids around it, so it outlives edits
 * and goes only when the thing it belongs to is removed.
 */
public final class Keepsake {
  /** Nothing kept: for a kit that comes from no file. */
  public static final Keepsake NOTHING = new Keepsake(List.of(), List.of(), List.of());

  private final List<Unknown> unknown;
  private final List<Original> originals;
  private final List<LeftOut> leftOut;

  /** A field the program does not know. */
  record Unknown(Address group, String field, JsonNode value) {}

  /**
   * A value the program could not use.
   *
   * @param standIn what the kit as opened would write in its place, empty if nothing
   */
  record Original(Address group, String field, JsonNode value, Optional<JsonNode> standIn) {}

  /**
   * A part the program left out.
   *
   * @param index where it stood in its list
   * @param unless the id of an entry that, once it is there, takes this part's place for good
   */
  record LeftOut(Address group, String list, int index, JsonNode value, Optional<String> unless) {}

  Keepsake(List<Unknown> unknown, List<Original> originals, List<LeftOut> leftOut) {
    this.unknown = List.copyOf(unknown);
    this.originals = List.copyOf(originals);
    this.leftOut = List.copyOf(leftOut);
  }

  /** Whether nothing is kept. */
  public boolean isEmpty() {
    return unknown.isEmpty() && originals.isEmpty() && leftOut.isEmpty();
  }

  /** Whether parts were left out of this list. */
  boolean holds(Address group, String list) {
    return leftOut.stream().anyMatch(p -> p.group().equals(group) && p.list().equals(list));
  }

  /** Whether anything is kept for a group or for what stands in it. */
  boolean holdsWithin(Address group) {
    return unknown.stream().anyMatch(u -> u.group().isWithin(group))
        || originals.stream().anyMatch(o -> o.group().isWithin(group))
        || leftOut.stream().anyMatch(p -> p.group().isWithin(group));
  }

  /** The same, with each original told what stands in for it. */
  Keepsake withStandIns(Function<Original, Optional<JsonNode>> standIn) {
    return new Keepsake(
        unknown,
        originals.stream()
            .map(o -> new Original(o.group(), o.field(), o.value(), standIn.apply(o)))
            .toList(),
        leftOut);
  }

  /** Whether something is kept that belongs into this group or into its place. */
  boolean holdsPartOf(Address group) {
    return unknown.stream().anyMatch(field -> field.group().equals(group))
        || originals.stream()
            .anyMatch(
                original ->
                    original.group().equals(group)
                        || original.group().child(original.field()).equals(group));
  }

  /** Gives a freshly written group back what belongs into it. */
  void complete(Address group, ObjectNode written) {
    for (Original original : originals) {
      boolean untouched =
          Objects.equals(written.get(original.field()), original.standIn().orElse(null));
      if (original.group().equals(group) && untouched) {
        written.set(original.field(), original.value());
      }
    }
    for (Unknown field : unknown) {
      if (field.group().equals(group)) {
        written.set(field.field(), field.value());
      }
    }
  }

  /**
   * Gives a freshly written list back the parts left out of it, each near where it stood.
   *
   * @param entries the ids in the list
   */
  void complete(Address group, String list, ArrayNode written, Set<String> entries) {
    for (LeftOut part : leftOut) {
      boolean outdated = part.unless().isPresent() && entries.contains(part.unless().get());
      if (part.group().equals(group) && part.list().equals(list) && !outdated) {
        written.insert(Math.min(part.index(), written.size()), part.value());
      }
    }
  }
}
