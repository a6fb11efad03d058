package org.panwright.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.panwright.kit.DateSpan;
import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.kit.FileProblem.ValueKind;

/**
 * One value of a JSON text together with where it stands; every question it is asked names that
 * place when the answer is no.
 *
 * <p>A group remembers which of its fields were asked for, so that the others can be kept.
 */
final class Field {
  private final JsonNode node;
  private final String path;
  private final String key;
  private final Set<String> asked = new LinkedHashSet<>();

  private Field(JsonNode node, String path, String key) {
    this.node = node;
    this.path = path;
    this.key = key;
  }

  /** The whole text; its path is empty. */
  static Field root(JsonNode node) {
    return new Field(node, "", "");
  }

  JsonNode node() {
    return node;
  }

  String path() {
    return path;
  }

  /** Its name in the group it belongs to; empty for an entry of a list. */
  String key() {
    return key;
  }

  /** The field of this name in a group; it may be absent. */
  Field at(String name) {
    asked.add(name);
    JsonNode child = node.get(name);
    return new Field(
        child == null ? MissingNode.getInstance() : child,
        path.isEmpty() ? name : path + "." + name,
        name);
  }

  /** Whether there is a value here; null counts as none. */
  boolean isPresent() {
    return !node.isMissingNode() && !node.isNull();
  }

  /** Itself, if it is a group. */
  Field group() throws BadFieldException {
    require(ValueKind.GROUP, node.isObject());
    return this;
  }

  /** The entries of a list. */
  List<Field> list() throws BadFieldException {
    require(ValueKind.LIST, node.isArray());
    List<Field> entries = new ArrayList<>();
    for (int i = 0; i < node.size(); i++) {
      entries.add(new Field(node.get(i), path + "[" + i + "]", ""));
    }
    return entries;
  }

  /** A text; it may be empty. */
  String text() throws BadFieldException {
    require(ValueKind.TEXT, node.isTextual());
    return node.textValue();
  }

  /** A text that is not blank. */
  String name() throws BadFieldException {
    String text = text();
    if (text.isBlank()) {
      throw fault(new FieldFault.Blank());
    }
    return text;
  }

  boolean flag() throws BadFieldException {
    require(ValueKind.TRUE_OR_FALSE, node.isBoolean());
    return node.booleanValue();
  }

  /** A number from {@code low} to {@code high}, both allowed. */
  double number(double low, double high) throws BadFieldException {
    require(ValueKind.NUMBER, node.isNumber());
    double value = node.doubleValue();
    if (!(value >= low && value <= high)) {
      throw fault(new FieldFault.OutOfRange(low, high, value));
    }
    return value;
  }

  /** A number above 0, up to {@code high}. */
  double positive(double high) throws BadFieldException {
    double value = number(Double.NEGATIVE_INFINITY, high);
    if (!(value > 0)) {
      throw fault(new FieldFault.NotPositive(value));
    }
    return value;
  }

  /** A whole number from {@code low} to {@code high}, both allowed. */
  int wholeNumber(int low, int high) throws BadFieldException {
    double value = number(low, high);
    if (value != Math.rint(value)) {
      throw fault(new FieldFault.WrongKind(ValueKind.WHOLE_NUMBER, ValueKind.NUMBER));
    }
    return (int) value;
  }

  /** Exactly {@code count} numbers, each from {@code low} to {@code high}. */
  double[] numbers(int count, double low, double high) throws BadFieldException {
    List<Field> entries = list();
    if (entries.size() != count) {
      throw fault(new FieldFault.WrongLength(count, entries.size()));
    }
    double[] values = new double[count];
    for (int i = 0; i < count; i++) {
      values[i] = entries.get(i).number(low, high);
    }
    return values;
  }

  /** A date as year-month-day, within {@link DateSpan}. */
  LocalDate date() throws BadFieldException {
    String text = text();
    try {
      LocalDate date = LocalDate.parse(text);
      if (!DateSpan.holds(date)) {
        throw fault(new FieldFault.DateOutside(DateSpan.FIRST, DateSpan.LAST, date));
      }
      return date;
    } catch (DateTimeParseException e) {
      throw fault(new FieldFault.NoDate(text));
    }
  }

  /** One of the words of a closed list. */
  <E extends Enum<E>> E word(Class<E> words) throws BadFieldException {
    String text = text();
    for (E word : words.getEnumConstants()) {
      if (Spelling.of(word).equals(text)) {
        return word;
      }
    }
    throw fault(new FieldFault.UnknownWord(text, Spelling.all(words)));
  }

  /** The fields of a group that were never asked for, in their order. */
  List<Map.Entry<String, JsonNode>> unasked() {
    return node.properties().stream().filter(entry -> !asked.contains(entry.getKey())).toList();
  }

  BadFieldException fault(FieldFault fault) {
    return new BadFieldException(path, fault);
  }

  private void require(ValueKind expected, boolean holds) throws BadFieldException {
    if (holds) {
      return;
    }
    throw fault(
        isPresent() ? new FieldFault.WrongKind(expected, kind(node)) : new FieldFault.Absent());
  }

  private static ValueKind kind(JsonNode node) {
    return switch (node.getNodeType()) {
      case OBJECT, POJO -> ValueKind.GROUP;
      case ARRAY -> ValueKind.LIST;
      case BOOLEAN -> ValueKind.TRUE_OR_FALSE;
      case NUMBER -> ValueKind.NUMBER;
      case STRING, BINARY -> ValueKind.TEXT;
      case NULL, MISSING -> ValueKind.NOTHING;
    };
  }
}
