package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The page that describes the format shows a kit that opens. */
class FileFormatPageTest {
  @Test
  void theExampleOpensWithoutANotice() throws Exception {
    String page = Files.readString(Path.of("docs", "file-format.md"));
    int start = page.indexOf("```json") + "```json".length();
    String example = page.substring(start, page.indexOf("```", start));
    Path name = Path.of("example.kit.json");
    KitReader.Result result =
        new KitReader(PigmentLibraryReader.read())
            .read(name, JsonSource.parse(name, example.getBytes(StandardCharsets.UTF_8)));
    assertThat(result.notices()).isEmpty();
    assertThat(result.kit().lineups()).hasSize(1);
    assertThat(result.kit().lineups().get(0).fillings()).hasSize(2);
  }
}
