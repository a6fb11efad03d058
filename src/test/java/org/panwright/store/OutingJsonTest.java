package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.kit.CheckItem;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Kit;
import org.panwright.kit.Outing;
import org.panwright.kit.PackingRates;
import org.panwright.kit.SheetSize;
import org.panwright.kit.Supply;

/** What an outing's sheets, rates and check list give back. */
class OutingJsonTest {
  private static final Path FILE = Path.of("outing.kit.json");

  private static final Outing PACKED =
      SampleKit.KIT
          .outings()
          .get(0)
          .withSheetSize(new SheetSize(380, 280.5))
          .withRates(new PackingRates(0.05, 40, 25, 3, 120, 0.5, 1))
          .withChecklist(
              Optional.of(
                  List.of(
                      new CheckItem("c1", "Water – still", "", false, Optional.of(Supply.WATER)),
                      new CheckItem("c2", "Hat", "the \"old\" one", true, Optional.empty()))));

  private static final Kit KIT = SampleKit.KIT.withOutings(List.of(PACKED));

  @Test
  void sheetsRatesAndCheckListComeBack() throws Exception {
    KitReader.Result result = read(tree(KIT));
    assertThat(result.kit()).isEqualTo(KIT);
    assertThat(result.notices()).isEmpty();
    assertThat(result.keepsake().isEmpty()).isTrue();
  }

  @Test
  void anEmptyCheckListIsNotTheUsualOne() throws Exception {
    Kit emptied = SampleKit.KIT.withOutings(List.of(PACKED.withChecklist(Optional.of(List.of()))));
    assertThat(read(tree(emptied)).kit().outings().get(0).checklist()).contains(List.of());
  }

  @Test
  void anOutingWithoutThemHasTheUsualOnes() throws Exception {
    ObjectNode tree = tree(KIT);
    ((ObjectNode) tree.at("/outings/0")).remove(List.of("sheetSize", "rates", "checklist"));
    KitReader.Result result = read(tree);
    assertThat(result.notices()).isEmpty();
    assertThat(result.kit()).isEqualTo(SampleKit.KIT);
  }

  @ParameterizedTest
  @ValueSource(strings = {"/outings/0/sheetSize", "/outings/0/rates", "/outings/0/checklist/1"})
  void unknownFieldsSurvive(String place) throws Exception {
    ObjectNode tree = tree(KIT);
    ((ObjectNode) tree.at(place)).put("x-weather", "fair");
    KitReader.Result result = read(tree);
    assertThat(result.notices()).isEmpty();
    assertThat(rewritten(result)).isEqualTo(parsed(tree));
  }

  @Test
  void anUnknownFieldSurvivesBesideRatesThatAreAllAsUsual() throws Exception {
    ObjectNode tree = tree(SampleKit.KIT);
    ((ObjectNode) tree.at("/outings/0")).putObject("rates").put("x-tea", 2);
    assertThat(rewritten(read(tree)).at("/outings/0/rates/x-tea").asInt()).isEqualTo(2);
  }

  @ParameterizedTest(name = "{0} = {1}")
  @CsvSource({
    "rates, cups, 2.5",
    "rates, cups, -1",
    "rates, waterMlPerHour, -30",
    "rates, paintMlPerA5, 11",
    "rates, cupMl, 0",
    "sheetSize, widthMm, 0",
    "sheetSize, heightMm, 3001"
  })
  void aBadFigureIsToldByItsFieldAndKept(String group, String field, double value)
      throws Exception {
    ObjectNode tree = tree(KIT);
    ((ObjectNode) tree.at("/outings/0/" + group)).put(field, value);
    KitReader.Result result = read(tree);
    assertThat(result.notices())
        .singleElement()
        .isInstanceOfSatisfying(
            FileProblem.Replaced.class,
            told -> assertThat(told.field()).isEqualTo("outings[0]." + group + "." + field));
    assertThat(rewritten(result)).isEqualTo(parsed(tree));
  }

  @Test
  void oneBadRateAmongUsualOnesIsKept() throws Exception {
    ObjectNode tree = tree(SampleKit.KIT);
    ((ObjectNode) tree.at("/outings/0")).putObject("rates").put("cups", -4);
    KitReader.Result result = read(tree);
    assertThat(result.kit().outings().get(0).rates()).isEqualTo(PackingRates.USUAL);
    assertThat(rewritten(result).at("/outings/0/rates/cups").asInt()).isEqualTo(-4);
  }

  @Test
  void ratesThatAreNoGroupAreKept() throws Exception {
    ObjectNode tree = tree(SampleKit.KIT);
    ((ObjectNode) tree.at("/outings/0")).put("rates", "as ever");
    assertThat(rewritten(read(tree))).isEqualTo(parsed(tree));
  }

  @Test
  void aBlankEntryIsLeftOutAndKept() throws Exception {
    ObjectNode tree = tree(KIT);
    ((ObjectNode) tree.at("/outings/0/checklist/0")).put("text", " ");
    KitReader.Result result = read(tree);
    assertThat(result.kit().outings().get(0).checklist().orElseThrow())
        .extracting(CheckItem::id)
        .containsExactly("c2");
    assertThat(rewritten(result)).isEqualTo(parsed(tree));
  }

  @Test
  void twoEntriesOfTheSameIdAreToldApart() throws Exception {
    ObjectNode tree = tree(KIT);
    ((ObjectNode) tree.at("/outings/0/checklist/1")).put("id", "c1");
    KitReader.Result result = read(tree);
    assertThat(result.kit().outings().get(0).checklist().orElseThrow())
        .extracting(CheckItem::text)
        .containsExactly("Water – still", "Hat");
    assertThat(result.notices()).hasSize(1);
  }

  @Test
  void anUnknownSupplyIsKeptAndTheEntryStays() throws Exception {
    ObjectNode tree = tree(KIT);
    ((ObjectNode) tree.at("/outings/0/checklist/0")).put("supply", "easel");
    KitReader.Result result = read(tree);
    assertThat(result.kit().outings().get(0).checklist().orElseThrow().get(0).supply()).isEmpty();
    assertThat(rewritten(result)).isEqualTo(parsed(tree));
  }

  @Test
  void theLastDayAFileCanNameComesBack() throws Exception {
    ObjectNode tree = tree(KIT);
    ((ObjectNode) tree.at("/outings/0")).put("date", "9999-12-31");
    KitReader.Result result = read(tree);
    assertThat(result.kit().outings().get(0).date().orElseThrow().getYear()).isEqualTo(9999);
    assertThat(rewritten(result)).isEqualTo(parsed(tree));
  }

  private static ObjectNode tree(Kit kit) {
    return KitWriter.write(kit, Keepsake.NOTHING);
  }

  private static JsonNode parsed(JsonNode tree) throws Exception {
    return JsonSource.parse(FILE, JsonLayout.text(tree).getBytes(StandardCharsets.UTF_8));
  }

  private static KitReader.Result read(JsonNode tree) throws Exception {
    return new KitReader(PigmentLibraryReader.read()).read(FILE, parsed(tree));
  }

  private static JsonNode rewritten(KitReader.Result result) throws Exception {
    return parsed(KitWriter.write(result.kit(), result.keepsake()));
  }
}
