package org.panwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.kit.Kit;
import org.panwright.kit.Outing;
import org.panwright.store.DemoKit;

class PackTest {
  private static final Kit DEMO = DemoKit.read(Console.LIBRARY);

  @TempDir Path folder;
  private final Console console = new Console();

  /** 3 hours and 4 sheets of A5 at the usual rates: 3 · 30 + 4 · 20 = 170 ml of water, so 200. */
  @Test
  void packsTheDemosOuting() throws Exception {
    JsonNode packed = packed(DEMO, "Morning on the quay");
    assertThat(packed.get("waterMl").asDouble()).isEqualTo(200);
    assertThat(packed.get("dirtyMl").asDouble()).isEqualTo(250); // 220
    assertThat(packed.get("paintMl").asDouble()).isEqualTo(0.14); // 4 · 0.035
    assertThat(packed.get("spareSheets").asInt()).isEqualTo(1);
    assertThat(packed.get("wipes").asInt()).isEqualTo(8);
    assertThat(packed.get("lineup").asText()).isEqualTo("Quay in May");
    assertThat(packed.get("checklist")).hasSize(18);
    assertThat(packed.get("paints")).hasSizeGreaterThan(10);
    double used = 0;
    for (JsonNode paint : packed.get("paints")) {
      used += paint.get("useMl").asDouble();
    }
    assertThat(used).isBetween(0.139, 0.141);
  }

  @Test
  void saysTheSameInWords() throws Exception {
    assertThat(
            console.run("pack", Console.demo(folder).toString(), "--outing", "morning on the quay"))
        .isZero();
    assertThat(console.said())
        .contains("Morning on the quay: Saturday, 15 May 2027")
        .containsPattern("Clean water +200 ml")
        .contains("[x] Paint box, filled and dry: 15 paints")
        .contains("[ ] Tide table")
        .contains("4 of 18 packed")
        .contains("safety sheet")
        .contains("Carry the rinse water home");
  }

  @Test
  void aDayThatIsOverOrFarOffIsPackedForWithANote() throws Exception {
    Outing outing = DEMO.outings().get(0);
    Kit past = withOuting(outing.withDate(Optional.of(LocalDate.of(1999, 2, 28))));
    assertThat(packed(past, outing.name()).get("dateNote").asText()).contains("over");
    Kit far = withOuting(outing.withDate(Optional.of(LocalDate.of(9999, 12, 31))));
    assertThat(packed(far, outing.name()).get("dateNote").asText()).contains("check the year");
    assertThat(packed(far, outing.name()).get("date").asText()).isEqualTo("9999-12-31");
  }

  @Test
  void anOutingWithoutLineupHoursOrSheetsIsStillAnswered() throws Exception {
    Kit bare =
        withOuting(
            new Outing("o", "Bare", Optional.empty(), "", Optional.empty(), 0, 0, List.of()));
    JsonNode packed = packed(bare, "Bare");
    assertThat(packed.get("date").isNull()).isTrue();
    assertThat(packed.get("lineup").isNull()).isTrue();
    assertThat(packed.get("paints")).isEmpty();
    assertThat(packed.get("waterMl").asDouble()).isZero();
  }

  @Test
  void anUnknownOutingIsAnsweredWithTheKnownOnes() throws Exception {
    assertThat(console.run("pack", Console.demo(folder).toString(), "--outing", "moon"))
        .isEqualTo(CommandLine.BAD_USE);
    assertThat(console.complained()).contains("moon").contains("Morning on the quay");
  }

  @Test
  void theOutingAndOneKitMustBeNamed() throws Exception {
    String kit = Console.demo(folder).toString();
    assertThat(console.run("pack", kit)).isEqualTo(CommandLine.BAD_USE);
    assertThat(console.complained()).contains("--outing");
    assertThat(console.run("pack", "--outing", "x")).isEqualTo(CommandLine.BAD_USE);
    assertThat(console.run("pack", kit, kit, "--outing", "x")).isEqualTo(CommandLine.BAD_USE);
  }

  private static Kit withOuting(Outing outing) {
    return DEMO.withOutings(List.of(outing));
  }

  private JsonNode packed(Kit kit, String outing) throws Exception {
    Console fresh = new Console();
    String file = Console.saved(kit, folder).toString();
    assertThat(fresh.run("pack", file, "--outing", outing, "--json")).isZero();
    return new ObjectMapper().readTree(fresh.said());
  }
}
