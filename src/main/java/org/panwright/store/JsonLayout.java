package org.panwright.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Writes a JSON tree as text that people can read: a group or list stands on one line where it
 * fits, a list of plain values always does.
 */
final class JsonLayout {
  private static final int WIDEST = 128;
  private static final int STEP = 2;
  private static final double LARGEST_WHOLE = 1e15;

  private JsonLayout() {}

  /** The text of a tree, with a line end after it. */
  static String text(JsonNode tree) {
    return (tree.isContainerNode() && !tree.isEmpty() ? broken(tree, 0) : flat(tree)) + "\n";
  }

  private static String arranged(JsonNode node, int indent, int before) {
    String flat = flat(node);
    boolean onOneLine =
        !node.isContainerNode() || indent + before + flat.length() <= WIDEST || isPlainList(node);
    return onOneLine ? flat : broken(node, indent);
  }

  private static String broken(JsonNode node, int indent) {
    int inner = indent + STEP;
    List<String> lines = new ArrayList<>();
    if (node.isObject()) {
      for (Map.Entry<String, JsonNode> field : node.properties()) {
        String name = quoted(field.getKey()) + ": ";
        lines.add(" ".repeat(inner) + name + arranged(field.getValue(), inner, name.length()));
      }
    } else {
      for (JsonNode entry : node) {
        lines.add(" ".repeat(inner) + arranged(entry, inner, 0));
      }
    }
    String open = node.isObject() ? "{" : "[";
    String close = node.isObject() ? "}" : "]";
    return open + "\n" + String.join(",\n", lines) + "\n" + " ".repeat(indent) + close;
  }

  private static String flat(JsonNode node) {
    List<String> parts = new ArrayList<>();
    if (node.isObject()) {
      for (Map.Entry<String, JsonNode> field : node.properties()) {
        parts.add(quoted(field.getKey()) + ": " + flat(field.getValue()));
      }
      return "{" + String.join(", ", parts) + "}";
    }
    if (node.isArray()) {
      node.forEach(entry -> parts.add(flat(entry)));
      return "[" + String.join(", ", parts) + "]";
    }
    return plain(node);
  }

  private static String plain(JsonNode node) {
    if (node.isTextual()) {
      return quoted(node.textValue());
    }
    if (node.isDouble()) {
      double value = node.doubleValue();
      if (value == Math.rint(value) && Math.abs(value) < LARGEST_WHOLE) {
        return Long.toString((long) value);
      }
    }
    return node.toString();
  }

  private static boolean isPlainList(JsonNode node) {
    if (!node.isArray()) {
      return false;
    }
    for (JsonNode entry : node) {
      if (entry.isContainerNode()) {
        return false;
      }
    }
    return true;
  }

  /** A JSON string; halves of surrogate pairs are escaped, because UTF-8 cannot hold them. */
  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean pair =
          Character.isHighSurrogate(c)
              && i + 1 < text.length()
              && Character.isLowSurrogate(text.charAt(i + 1));
      if (pair) {
        quoted.append(c).append(text.charAt(++i));
      } else if (c == '"' || c == '\\') {
        quoted.append('\\').append(c);
      } else if (c == '\n') {
        quoted.append("\\n");
      } else if (c == '\t') {
        quoted.append("\\t");
      } else if (c < ' ' || Character.isSurrogate(c)) {
        quoted.append("\\u%04x".formatted((int) c));
      } else {
        quoted.append(c);
      }
    }
    return quoted.append('"').toString();
  }
}
