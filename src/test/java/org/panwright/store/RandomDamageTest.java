package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.kit.Edit;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Kit;
import org.panwright.kit.RandomEdits;
import org.panwright.paint.PigmentLibrary;

/** Files nobody would think of; the damage is random, its seeds are not. */
class RandomDamageTest {
  private static final Path FILE = Path.of("sample.kit.json");
  private static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private static final List<JsonNode> ODD_VALUES =
      List.of(
          JSON.nullNode(),
          JSON.booleanNode(true),
          JSON.numberNode(-1),
          JSON.numberNode(0),
          JSON.numberNode(2.5),
          JSON.numberNode(BigInteger.TEN.pow(400)),
          JSON.textNode(""),
          JSON.textNode("p1"),
          JSON.textNode("🎨 عين"),
          JSON.arrayNode(),
          JSON.arrayNode().add(JSON.objectNode()),
          JSON.objectNode(),
          JSON.objectNode().put("id", "p1").put("name", "x"));

  @TempDir Path folder;

  /** Two to four values anywhere in the file are changed, removed or doubled. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void anythingButTheFrameOpensAndASaveKeepsWhatItHeld(long seed) throws Exception {
    Random random = new Random(seed);
    int opened = 0;
    for (int i = 0; i < 150; i++) {
      JsonNode damaged = damaged(random);
      KitReader.Result result;
      try {
        result = read(damaged);
      } catch (FileProblemException e) {
        assertThat(e.problem())
            .isInstanceOfAny(FileProblem.NotAKit.class, FileProblem.BadField.class);
        continue;
      }
      opened++;
      JsonNode saved = rewritten(result);
      assertThat(textsMissing(damaged, saved)).as(damaged::toString).isEmpty();
      KitReader.Result again = read(saved);
      assertThat(again.kit()).as(damaged::toString).isEqualTo(result.kit());
      assertThat(rewritten(again)).as(damaged::toString).isEqualTo(saved);
    }
    assertThat(opened).isGreaterThan(75);
  }

  @Test
  void bytesChangedAtRandomNeverMakeTheProgramStumble() throws Exception {
    byte[] whole = JsonLayout.text(tree()).getBytes(StandardCharsets.UTF_8);
    KitFiles files = new KitFiles(LIBRARY);
    Path file = folder.resolve("a.kit.json");
    Random random = new Random(11);
    int refused = 0;
    for (int i = 0; i < 300; i++) {
      byte[] bytes = whole.clone();
      for (int change = 0; change <= random.nextInt(3); change++) {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
      }
      Files.write(file, bytes);
      try {
        assertThat(files.open(file).kit().name()).isNotBlank();
      } catch (FileProblemException e) {
        assertThat(e.problem().file()).isEqualTo(file);
        refused++;
      }
    }
    assertThat(refused).isBetween(50, 299);
  }

  /** Whatever a painter may do to a kit, the file gives it back. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8})
  void everyKitComesBackWhole(long seed) throws Exception {
    Kit kit = SampleKit.KIT;
    RandomEdits edits = new RandomEdits(seed);
    for (int i = 0; i < 120; i++) {
      Edit edit = edits.next(kit);
      kit = edit.apply(kit);
      KitReader.Result result = read(parsed(KitWriter.write(kit, Keepsake.NOTHING)));
      assertThat(result.kit()).isEqualTo(kit);
      assertThat(result.notices()).isEmpty();
    }
  }

  private static ObjectNode tree() {
    return KitWriter.write(SampleKit.KIT, Keepsake.NOTHING);
  }

  private static JsonNode damaged(Random random) throws Exception {
    JsonNode tree = parsed(tree());
    for (int change = 0; change < 2 + random.nextInt(3); change++) {
      List<JsonNode> containers = new ArrayList<>();
      collect(tree, containers);
      JsonNode at = containers.get(random.nextInt(containers.size()));
      JsonNode odd = ODD_VALUES.get(random.nextInt(ODD_VALUES.size())).deepCopy();
      if (at instanceof ObjectNode group && !group.isEmpty()) {
        List<String> names = new ArrayList<>();
        group.fieldNames().forEachRemaining(names::add);
        String name = names.get(random.nextInt(names.size()));
        if (random.nextInt(4) == 0) {
          group.remove(name);
        } else {
          group.set(name, odd);
        }
      } else if (at instanceof ArrayNode list && !list.isEmpty()) {
        int index = random.nextInt(list.size());
        switch (random.nextInt(3)) {
          case 0 -> list.remove(index);
          case 1 -> list.set(index, odd);
          default -> list.insert(index, list.get(random.nextInt(list.size())).deepCopy());
        }
      }
    }
    return parsed(tree);
  }

  private static void collect(JsonNode node, List<JsonNode> containers) {
    if (node.isContainerNode() && !node.isEmpty()) {
      containers.add(node);
      node.forEach(child -> collect(child, containers));
    }
  }

  /** Texts of the first tree, other than ids, that the second no longer has. */
  private static List<String> textsMissing(JsonNode before, JsonNode after) {
    List<String> missing = texts(before, "");
    texts(after, "").forEach(missing::remove);
    return missing;
  }

  private static List<String> texts(JsonNode node, String name) {
    List<String> texts = new ArrayList<>();
    if (name.equals("id")) {
      return texts;
    }
    if (node.isTextual() && !node.textValue().isEmpty()) {
      texts.add(node.textValue());
    }
    if (node.isObject()) {
      node.properties().forEach(f -> texts.addAll(texts(f.getValue(), f.getKey())));
    } else {
      node.forEach(child -> texts.addAll(texts(child, name)));
    }
    return texts;
  }

  private static KitReader.Result read(JsonNode tree) throws FileProblemException {
    return new KitReader(LIBRARY).read(FILE, tree.deepCopy());
  }

  private static JsonNode rewritten(KitReader.Result result) throws FileProblemException {
    return parsed(KitWriter.write(result.kit(), result.keepsake()));
  }

  private static JsonNode parsed(JsonNode tree) throws FileProblemException {
    return JsonSource.parse(FILE, JsonLayout.text(tree).getBytes(StandardCharsets.UTF_8));
  }
}
