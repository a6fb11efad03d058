package org.panwright.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.panwright.kit.FileProblem;
import org.panwright.kit.FileProblem.FieldFault;

/**
 * One file being read: gathers what has to be told to the painter and what has to be kept for the
 * next save.
 */
final class Reading {
  private final Path file;
  private final List<FileProblem> notices = new ArrayList<>();
  private final List<Keepsake.Unknown> unknown = new ArrayList<>();
  private final List<Keepsake.Original> originals = new ArrayList<>();
  private final List<Keepsake.LeftOut> leftOut = new ArrayList<>();

  /** Reads a value or says why it cannot. */
  interface Reader<T> {
    T read(Field field) throws BadFieldException;
  }

  Reading(Path file) {
    this.file = file;
  }

  List<FileProblem> notices() {
    return List.copyOf(notices);
  }

  Keepsake keepsake() {
    return new Keepsake(unknown, originals, leftOut);
  }

  void notice(FileProblem problem) {
    notices.add(problem);
  }

  /** Tells of a value that was put right without anything being lost. */
  void mended(Field field, FieldFault fault, String standIn) {
    notices.add(new FileProblem.Replaced(file, field.path(), fault, standIn));
  }

  /** The value of a field; where the field is absent or unusable, the stand-in, with a notice. */
  <T> T required(Address group, Field field, Reader<T> reader, T standIn) {
    try {
      return reader.read(field);
    } catch (BadFieldException e) {
      replace(group, field, e, standIn);
      return standIn;
    }
  }

  /** The value of a field; the stand-in where it is absent, and with a notice where unusable. */
  <T> T optional(Address group, Field field, Reader<T> reader, T standIn) {
    return field.isPresent() ? required(group, field, reader, standIn) : standIn;
  }

  private void replace(Address group, Field field, BadFieldException e, Object standIn) {
    notices.add(new FileProblem.Replaced(file, e.path(), e.fault(), written(standIn)));
    if (field.isPresent()) {
      originals.add(new Keepsake.Original(group, field.key(), field.node(), Optional.empty()));
    }
  }

  private static String written(Object standIn) {
    if (standIn instanceof Enum<?> word) {
      return Spelling.of(word);
    }
    return standIn instanceof String || standIn instanceof Number ? standIn.toString() : "";
  }

  /**
   * The id of an entry. Without one, or with one that is taken, it gets a new one.
   *
   * @param taken ids that are in use
   * @param everyId all ids of the list, in use or not
   */
  String id(Field id, Set<String> taken, Set<String> everyId, String stem) {
    try {
      String text = id.name();
      if (!taken.contains(text)) {
        return text;
      }
      String fresh = fresh(everyId, stem);
      mended(id, new FieldFault.SameIdTwice(text), fresh);
      return fresh;
    } catch (BadFieldException e) {
      String fresh = fresh(everyId, stem);
      mended(id, e.fault(), fresh);
      return fresh;
    }
  }

  private static String fresh(Set<String> everyId, String stem) {
    int number = 1;
    while (!everyId.add(stem + "-" + number)) {
      number++;
    }
    return stem + "-" + number;
  }

  /** All texts under this name in the entries of a list. */
  static Set<String> ids(List<Field> entries) {
    Set<String> ids = new HashSet<>();
    for (Field entry : entries) {
      JsonNode id = entry.node().get("id");
      if (id != null && id.isTextual()) {
        ids.add(id.textValue());
      }
    }
    return ids;
  }

  /** The usable entries of a list that may be absent; the others are left out, with a notice. */
  <T> List<T> parts(Address group, Field list, Reader<T> reader) throws BadFieldException {
    if (!list.isPresent()) {
      return List.of();
    }
    List<T> parts = new ArrayList<>();
    List<Field> entries = list.list();
    for (int index = 0; index < entries.size(); index++) {
      part(group, list, index, entries.get(index), reader).ifPresent(parts::add);
    }
    return parts;
  }

  private <T> Optional<T> part(
      Address group, Field list, int index, Field entry, Reader<T> reader) {
    int unknownBefore = unknown.size();
    int originalsBefore = originals.size();
    int leftOutBefore = leftOut.size();
    try {
      return Optional.of(reader.read(entry));
    } catch (BadFieldException e) {
      shorten(unknown, unknownBefore);
      shorten(originals, originalsBefore);
      shorten(leftOut, leftOutBefore);
      leftOut.add(new Keepsake.LeftOut(group, list.key(), index, entry.node(), e.givesWayTo()));
      notices.add(new FileProblem.LeftOut(file, entry.path(), nameOf(entry), e.path(), e.fault()));
      return Optional.empty();
    }
  }

  private static void shorten(List<?> list, int size) {
    list.subList(size, list.size()).clear();
  }

  private static String nameOf(Field entry) {
    JsonNode name = entry.node().get("name");
    return name != null && name.isTextual() ? name.textValue() : "";
  }

  /** Keeps the fields of a group that nobody asked for. */
  void keepRest(Address group, Field field) {
    for (Map.Entry<String, JsonNode> rest : field.unasked()) {
      unknown.add(new Keepsake.Unknown(group, rest.getKey(), rest.getValue()));
    }
  }
}
