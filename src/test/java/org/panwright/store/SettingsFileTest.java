package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.store.Settings.WindowSpot;

class SettingsFileTest {
  private static final Settings SOME =
      new Settings(
          true,
          List.of(Path.of("/home/ada/sea.kit.json"), Path.of("/home/ada/Ærø 🎨.kit.json")),
          Map.of(Path.of("/home/ada/sea.kit.json"), "winter"),
          Optional.of(new WindowSpot(10, 20, 1200, 800, true)),
          List.of(0.2, 0.7),
          Map.of("key-card.paper", "A5"));

  @TempDir Path folder;

  @Test
  void whatIsWrittenIsReadAgain() throws Exception {
    Path file = folder.resolve("new").resolve("settings.json");
    new SettingsFile(file).write(SOME);
    assertThat(new SettingsFile(file).read()).isEqualTo(SOME);
  }

  @Test
  void noFileMeansTheFirstSettings() {
    SettingsFile settings = new SettingsFile(folder.resolve("settings.json"));
    assertThat(settings.read()).isEqualTo(Settings.FIRST);
    assertThat(settings.isBroken()).isFalse();
  }

  @ParameterizedTest(name = "<{0}>")
  @ValueSource(strings = {"", "{", "[]", "not json", "{\"window\": ", "7"})
  void aBrokenFileStartsAnewAndIsSetAsideBeforeItIsWrittenOver(String content) throws Exception {
    Path file = Files.writeString(folder.resolve("settings.json"), content);
    SettingsFile settings = new SettingsFile(file);
    assertThat(settings.read()).isEqualTo(Settings.FIRST);
    assertThat(file).hasContent(content);
    settings.write(SOME);
    assertThat(folder.resolve("settings.json.unreadable-1")).hasContent(content);
    assertThat(new SettingsFile(file).read()).isEqualTo(SOME);
  }

  @Test
  void aValueThatMakesNoSenseCountsAsNotSetAndTheOthersStay() throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("settings.json"),
            """
            {"window": {"dark": true, "x": "left", "y": 1, "width": 2, "height": 3, "dividers": [0.5, 7]},
             "recentKits": ["/a.kit.json"]}
            """);
    Settings read = new SettingsFile(file).read();
    assertThat(read).isEqualTo(Settings.FIRST.withDark(true).withRecent(Path.of("/a.kit.json")));
  }

  @Test
  void fieldsOfOtherVersionsAreKept() throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("settings.json"), "{\"window\": {\"zoom\": 3}, \"later\": [1]}");
    SettingsFile settings = new SettingsFile(file);
    settings.read();
    settings.write(SOME);
    assertThat(file).content().contains("\"zoom\" : 3").contains("\"later\"");
  }

  @Test
  void theLineupOfAKitIsForgottenWithTheKit() {
    Path kit = Path.of("a");
    Settings settings = Settings.FIRST.withRecent(kit).withLineup(kit, "winter");
    assertThat(settings.withRecent(Path.of("b")).lineups()).containsEntry(kit, "winter");
    assertThat(settings.withoutRecent(kit).lineups()).isEmpty();
  }

  @Test
  void theNewestKitComesFirstAndOnce() {
    Settings settings =
        Settings.FIRST.withRecent(Path.of("a")).withRecent(Path.of("b")).withRecent(Path.of("a"));
    assertThat(settings.recent()).containsExactly(Path.of("a"), Path.of("b"));
  }
}
