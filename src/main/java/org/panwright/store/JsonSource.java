package org.panwright.store;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamReadException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.panwright.kit.FileProblem;

/** Turns the bytes of a file into a JSON tree, or says where they stop making sense. */
final class JsonSource {
  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.USE_BIG_INTEGER_FOR_INTS)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .build();

  private JsonSource() {}

  /**
   * The tree the bytes stand for. Numbers keep every digit they are written with.
   *
   * @throws FileProblemException if the file is empty, cut short or no JSON
   */
  static JsonNode parse(Path file, byte[] bytes) throws FileProblemException {
    try {
      JsonNode tree = MAPPER.readTree(bytes);
      if (tree == null || tree.isMissingNode()) {
        throw new FileProblemException(new FileProblem.Empty(file));
      }
      return tree;
    } catch (JsonEOFException e) {
      throw new FileProblemException(new FileProblem.CutShort(file, line(e)), e);
    } catch (JsonProcessingException e) {
      throw new FileProblemException(problem(file, bytes, e), e);
    } catch (IOException e) {
      // Reading from memory fails only on bytes that are no text.
      throw new FileProblemException(new FileProblem.NotJson(file, 1, 1), e);
    }
  }

  private static FileProblem problem(Path file, byte[] bytes, JsonProcessingException e) {
    JsonLocation at = e.getLocation();
    if (e instanceof StreamReadException read
        && read.getOriginalMessage().startsWith("Duplicate field")) {
      JsonParser parser = read.getProcessor();
      String name = parser == null ? "" : parser.getParsingContext().getCurrentName();
      return new FileProblem.FieldTwice(file, name == null ? "" : name, line(e));
    }
    if (at != null && at.getByteOffset() >= bytes.length) {
      return new FileProblem.CutShort(file, line(e));
    }
    return new FileProblem.NotJson(file, line(e), at == null ? 1 : Math.max(1, at.getColumnNr()));
  }

  private static int line(JsonProcessingException e) {
    return e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNr());
  }
}
