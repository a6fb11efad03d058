package org.panwright.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.panwright.colour.Lab;

/**
 * How the commands write JSON: indented, in plain ASCII so that no console can garble it, numbers
 * rounded to what they are good for.
 */
final class Json {
  private static final ObjectWriter WRITER =
      JsonMapper.builder()
          .enable(JsonWriteFeature.ESCAPE_NON_ASCII)
          .build()
          .writerWithDefaultPrettyPrinter();

  private Json() {}

  static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }

  static ArrayNode array() {
    return JsonNodeFactory.instance.arrayNode();
  }

  /** L*, a*, b* to three decimals. */
  static ArrayNode lab(Lab lab) {
    return array().add(rounded(lab.l(), 3)).add(rounded(lab.a(), 3)).add(rounded(lab.b(), 3));
  }

  /** A list of numbers, rounded. */
  static ArrayNode numbers(double[] values, int decimals) {
    ArrayNode list = array();
    for (double value : values) {
      list.add(rounded(value, decimals));
    }
    return list;
  }

  static double rounded(double value, int decimals) {
    double scale = Math.pow(10, decimals);
    return Math.rint(value * scale) / scale;
  }

  static String text(JsonNode node) {
    try {
      return WRITER.writeValueAsString(node);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values could not be written", e);
    }
  }
}
