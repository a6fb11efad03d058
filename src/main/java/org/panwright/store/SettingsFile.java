package org.panwright.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.StreamSupport;
import org.panwright.kit.FileProblem;
import org.panwright.store.Settings.WindowSpot;

/**
 * The settings in a small JSON file.
 *
 * <p>Reading never fails: a value that is missing or makes no sense counts as not set, and a file
 * that is no JSON counts as none. Such a file is given another name before the first write, so that
 * nothing is lost; fields of other versions are kept as they are. Not for several threads at once.
 */
public final class SettingsFile {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Path file;
  private final SafeFile safe = new SafeFile();
  private ObjectNode known = JSON.createObjectNode();
  private boolean broken;

  /** The settings in {@code file}, which need not exist. */
  public SettingsFile(Path file) {
    this.file = file;
  }

  /** The settings as far as they can be understood. */
  public Settings read() {
    known = JSON.createObjectNode();
    broken = false;
    try {
      if (JSON.readTree(Files.readAllBytes(file)) instanceof ObjectNode group) {
        known = group;
      } else {
        broken = true;
      }
    } catch (JsonProcessingException unreadable) {
      broken = true;
    } catch (IOException absent) {
      broken = Files.exists(file);
    }
    return new Settings(
        known.path("window").path("dark").asBoolean(false),
        recent(known.path("recentKits")),
        lineups(known.path("lineups")),
        window(known.path("window")),
        numbers(known.path("window").path("dividers")),
        words(known.path("papers")));
  }

  /**
   * Whether the file was there and could not be understood; it is then set aside at the first
   * write.
   */
  public boolean isBroken() {
    return broken;
  }

  /**
   * Writes the settings, making the folder if needed.
   *
   * @throws FileProblemException if they cannot be written; the file is then as it was
   */
  public void write(Settings settings) throws FileProblemException {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      if (broken) {
        setAside();
      }
    } catch (IOException failed) {
      throw new FileProblemException(
          new FileProblem.CannotWrite(file, String.valueOf(failed.getMessage())), failed);
    }
    ObjectNode window = known.withObjectProperty("window");
    window.put("dark", settings.dark());
    settings
        .window()
        .ifPresent(
            spot ->
                window
                    .put("x", spot.x())
                    .put("y", spot.y())
                    .put("width", spot.width())
                    .put("height", spot.height())
                    .put("maximised", spot.maximised()));
    ArrayNode dividers = window.putArray("dividers");
    settings.dividers().forEach(dividers::add);
    ArrayNode recent = known.putArray("recentKits");
    settings.recent().forEach(path -> recent.add(path.toString()));
    ObjectNode lineups = known.putObject("lineups");
    new TreeMap<>(settings.lineups()).forEach((kit, id) -> lineups.put(kit.toString(), id));
    ObjectNode papers = known.putObject("papers");
    new TreeMap<>(settings.papers()).forEach(papers::put);
    safe.write(file, known.toPrettyString().getBytes(StandardCharsets.UTF_8));
  }

  private void setAside() throws IOException {
    int number = 1;
    while (Files.exists(aside(number))) {
      number++;
    }
    Files.move(file, aside(number));
    broken = false;
  }

  private Path aside(int number) {
    return file.resolveSibling(file.getFileName() + ".unreadable-" + number);
  }

  private static List<Path> recent(JsonNode list) {
    return StreamSupport.stream(list.spliterator(), false)
        .flatMap(entry -> path(entry.asText()).stream())
        .toList();
  }

  /** A path; none if it is one of another system and makes no sense here. */
  private static Optional<Path> path(String text) {
    try {
      return Optional.of(Path.of(text));
    } catch (InvalidPathException impossible) {
      return Optional.empty();
    }
  }

  private static Map<Path, String> lineups(JsonNode group) {
    Map<Path, String> lineups = new HashMap<>();
    words(group).forEach((kit, id) -> path(kit).ifPresent(file -> lineups.put(file, id)));
    return lineups;
  }

  private static Map<String, String> words(JsonNode group) {
    Map<String, String> words = new HashMap<>();
    for (Map.Entry<String, JsonNode> field : group.properties()) {
      if (field.getValue().isTextual()) {
        words.put(field.getKey(), field.getValue().asText());
      }
    }
    return words;
  }

  private static Optional<WindowSpot> window(JsonNode group) {
    for (String side : List.of("x", "y", "width", "height")) {
      if (!group.path(side).isNumber()) {
        return Optional.empty();
      }
    }
    return Optional.of(
        new WindowSpot(
            group.path("x").asDouble(),
            group.path("y").asDouble(),
            group.path("width").asDouble(),
            group.path("height").asDouble(),
            group.path("maximised").asBoolean(false)));
  }

  private static List<Double> numbers(JsonNode list) {
    boolean good =
        StreamSupport.stream(list.spliterator(), false)
            .allMatch(n -> n.isNumber() && n.asDouble() >= 0 && n.asDouble() <= 1);
    return good
        ? StreamSupport.stream(list.spliterator(), false).map(JsonNode::asDouble).toList()
        : List.of();
  }
}
