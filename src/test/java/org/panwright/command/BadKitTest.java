package org.panwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is impossible in a kit is told in sentences by the commands that fill, fit and pack. */
class BadKitTest {
  private static final String KIT =
      """
      {"schemaVersion": 1, "name": "Sunday kit",
       "shelf": {"paints": [
         {"id": "blue", "name": "Ultramarine blue", "pigments": [{"code": "PB29"}]},
         {"id": "earth", "name": "Burnt sienna", "pigments": [{"code": "PBr7", "variant": "burnt sienna"}]}]},
       "boxes": [{"id": "tin", "name": "Tin", "widthMm": 40, "heightMm": 24, "depthMm": 12, "wells": [
         {"id": "1", "kind": "half-pan", "xMm": 1, "yMm": 2, "widthMm": 16, "heightMm": 19.5},
         {"id": "2", "kind": "half-pan", "pan": "own", "xMm": 18, "yMm": 2, "widthMm": 16, "heightMm": 19.5}]}],
       "lineups": [{"id": "two", "name": "Just two", "box": "tin",
         "fillings": [{"well": "1", "paint": "blue"}, {"well": "2", "paint": "earth"}]}],
       "outings": [{"id": "sea", "name": "By the sea", "date": "2027-05-15", "lineup": "two", "hours": 2, "sheets": 2}],
       "stock": {
         "tubes": [{"id": "t", "paint": "blue", "sizeMl": 5, "leftMl": 4}],
         "filled": [{"box": "tin", "well": "1", "paint": "blue", "filledOn": "2026-05-01", "filledMl": 1.5}],
         "pans": [{"id": "own", "name": "clay dish", "brimMl": 2,
           "outer": {"lengthMm": 19, "widthMm": 15.5, "heightMm": 10},
           "inner": {"lengthMm": 17, "widthMm": 13.5, "heightMm": 8}}]}}
      """;

  @TempDir Path folder;
  private final Console console = new Console();

  @ParameterizedTest(name = "{0} → {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"xMm\": 18, \"yMm\": 2 | \"xMm\": 10, \"yMm\": 2 | boxes[0].wells[1]",
        "\"widthMm\": 40, \"heightMm\": 24 | \"widthMm\": 30, \"heightMm\": 24 | boxes[0].wells[1]",
        "\"brimMl\": 2 | \"brimMl\": 0 | stock.pans[0].brimMl",
        "\"leftMl\": 4 | \"leftMl\": 9 | stock.tubes[0].leftMl",
        "\"filledOn\": \"2026-05-01\" | \"filledOn\": \"9999-01-01\" | stock.filled[0].filledOn",
        "\"filledMl\": 1.5 | \"filledMl\": 0 | stock.filled[0].filledMl",
      })
  void whatCannotBeIsNamedByItsPlaceAndTheRestIsUsed(String was, String now, String place)
      throws Exception {
    Path file = kit(was, now);
    byte[] before = Files.readAllBytes(file);
    for (String command : new String[] {"fill", "fit"}) {
      Console each = new Console();
      assertThat(each.run(command, file.toString())).as(command).isZero();
      assertThat(each.complained()).contains(place).doesNotContain("Exception", "\tat ");
      assertThat(each.said()).contains("Tin");
    }
    assertThat(Files.readAllBytes(file)).as("the file").isEqualTo(before);
  }

  /** A dish of 60 × 60 × 30 mm in a tin of 40 × 24 mm. */
  @Test
  void aPanLargerThanItsBoxDoesNotGoIn() throws Exception {
    Path file =
        kit(
            "\"lengthMm\": 19, \"widthMm\": 15.5, \"heightMm\": 10",
            "\"lengthMm\": 60, \"widthMm\": 60, \"heightMm\": 30");
    assertThat(console.run("fit", file.toString())).isZero();
    assertThat(console.said())
        .contains("Well 2: the clay dish is larger than the box", "none goes in");
    assertThat(console.complained()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"1926-05-15", "9999-12-31"})
  void anOutingLongAgoOrInTheYear9999IsPackedAndRemarkedOn(String date) throws Exception {
    Path file = kit("2027-05-15", date);
    assertThat(console.run("pack", file.toString(), "--outing", "By the sea")).isZero();
    assertThat(console.said()).contains("By the sea", "Clean water").contains(date.substring(0, 4));
    assertThat(console.complained()).isEmpty();
  }

  private Path kit(String was, String now) throws Exception {
    assertThat(KIT).contains(was);
    return Files.writeString(folder.resolve("sunday.kit.json"), KIT.replace(was, now));
  }
}
