package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.kit.DateSpan;
import org.panwright.kit.Edit;
import org.panwright.kit.FileProblem;
import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.kit.Kit;
import org.panwright.kit.PanKind;
import org.panwright.kit.Stock;

/** Tubes, pans, filled wells and the parts of a box come back from their file, or are kept. */
class StockJsonTest {
  private static final Path FILE = Path.of("sample.kit.json");

  @Test
  void everythingComesBack() throws Exception {
    KitReader.Result result = read(tree());
    assertThat(result.kit()).isEqualTo(StockedKit.KIT);
    assertThat(result.notices()).isEmpty();
    assertThat(result.keepsake().isEmpty()).isTrue();
  }

  @Test
  void aKitWithoutStockHasTheUsualPansAndIsWrittenWithoutOne() throws Exception {
    ObjectNode tree = KitWriter.write(SampleKit.KIT, Keepsake.NOTHING);
    assertThat(tree.has("stock")).isFalse();
    assertThat(read(tree).kit().stock()).isEqualTo(Stock.NONE);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/boxes/0/parts/1",
        "/stock",
        "/stock/tubes/0",
        "/stock/tubes/0/weighed",
        "/stock/filled/0",
        "/stock/aside/0",
        "/stock/pans/4",
        "/stock/pans/4/outer",
        "/stock/practice",
        "/stock/tolerance"
      })
  void unknownFieldsSurvive(String place) throws Exception {
    ObjectNode tree = tree();
    ((ObjectNode) tree.at(place)).put("x-weather", "fair");
    KitReader.Result result = read(tree);
    assertThat(result.kit()).isEqualTo(StockedKit.KIT);
    assertThat(rewritten(result)).isEqualTo(parsed(tree));
  }

  @ParameterizedTest(name = "{0}.{1} = {2}")
  @CsvSource({
    "/stock/tubes/1, sizeMl,    0",
    "/stock/tubes/1, sizeMl,    -5",
    "/stock/tubes/1, leftMl,    5.5",
    "/stock/tubes/0/weighed, grossG, 40",
    "/stock/tubes/0/weighed, grossG, 3",
    "/stock/tubes/1, paint,     \"nobody\"",
    "/stock/filled/0, filledOn, \"9999-01-01\"",
    "/stock/filled/0, filledMl, 0",
    "/stock/filled/0, well,     \"w9\"",
    "/stock/aside/0, paint,     \"nobody\"",
    "/stock/aside/0, filledMl,  101",
    "/stock/pans/4, brimMl,     0",
    "/stock/pans/4/inner, lengthMm, 29.5",
    "/boxes/0/parts/0, widthMm, 900",
    "/boxes/0/parts/0, inLid,   false",
  })
  void anEntryThatCannotBeIsLeftOutWithANoticeAndKept(String place, String field, String value)
      throws Exception {
    ObjectNode tree = tree();
    ((ObjectNode) tree.at(place)).set(field, JsonSource.parse(FILE, bytes(value)));
    KitReader.Result result = read(tree);
    assertThat(result.kit()).isNotEqualTo(StockedKit.KIT);
    assertThat(result.notices()).isNotEmpty();
    assertThat(rewritten(result)).isEqualTo(parsed(tree));
  }

  @Test
  void aNegativePriceAndADayInTheYear9999AreReplacedAndKept() throws Exception {
    ObjectNode tree = tree();
    ObjectNode tube = (ObjectNode) tree.at("/stock/tubes/0");
    tube.put("price", -3).put("opened", "9999-12-31");
    KitReader.Result result = read(tree);
    assertThat(result.notices())
        .containsExactly(
            new FileProblem.Replaced(
                FILE, "stock.tubes[0].price", new FieldFault.OutOfRange(0, 1e6, -3), ""),
            new FileProblem.Replaced(
                FILE,
                "stock.tubes[0].opened",
                new FieldFault.DateOutside(
                    DateSpan.FIRST, DateSpan.LAST, LocalDate.of(9999, 12, 31)),
                ""));
    assertThat(result.kit().stock().tubes()).hasSize(2);
    assertThat(rewritten(result)).isEqualTo(parsed(tree));
  }

  @Test
  void aWellOfAnUnknownKindOfPanTakesTheUsualOneAndKeepsTheName() throws Exception {
    ObjectNode tree = tree();
    ((ObjectNode) tree.at("/boxes/0/wells/1")).put("pan", "bathtub");
    KitReader.Result result = read(tree);
    Kit kit = result.kit();
    assertThat(kit.stock().panFor(kit.boxes().get(0).wells().get(1)))
        .map(PanKind::id)
        .hasValue(PanKind.FULL_ID);
    assertThat(rewritten(result)).isEqualTo(parsed(tree));
  }

  @Test
  void aPaintLeavesTheKitWithItsTubesAndFilledWells() {
    Stock left = new Edit.RemovePaint("p1").apply(StockedKit.KIT).stock();
    assertThat(left.tubes()).isEmpty();
    assertThat(left.filled()).isEmpty();
    assertThat(left.aside()).hasSize(1);
    assertThat(left.pans()).isEqualTo(StockedKit.KIT.stock().pans());
  }

  private static ObjectNode tree() {
    return KitWriter.write(StockedKit.KIT, Keepsake.NOTHING);
  }

  private static KitReader.Result read(JsonNode tree) throws Exception {
    return new KitReader(PigmentLibraryReader.read()).read(FILE, parsed(tree));
  }

  private static JsonNode rewritten(KitReader.Result result) throws Exception {
    return parsed(KitWriter.write(result.kit(), result.keepsake()));
  }

  private static JsonNode parsed(JsonNode tree) throws Exception {
    return JsonSource.parse(FILE, bytes(JsonLayout.text(tree)));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
