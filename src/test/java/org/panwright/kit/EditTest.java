package org.panwright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.panwright.paint.Granulation;
import org.panwright.paint.Handling;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Staining;
import org.panwright.paint.Transparency;

class EditTest {
  private static final Box BOX = BoxPlan.ofHalfPans(1, 2, 1).box("box");
  private static final Lineup LINEUP = new Lineup("lineup", "Lineup", "box", Map.of());
  private static final Outing OUTING =
      new Outing("outing", "Outing", Optional.empty(), "", Optional.of("lineup"), 2, 3, List.of());
  private static final Kit KIT = kit();

  @Test
  void aPaintFillsAWellAndDabsADabPlace() {
    Kit kit = new Edit.PlacePaint("lineup", "dab-1", "blue").apply(KIT);
    assertThat(inWell(kit, "well-1")).contains(new Filling("red", Fill.FULL));
    assertThat(inWell(kit, "dab-1")).contains(new Filling("blue", Fill.DAB));
  }

  @Test
  void movingChangesPlaces() {
    Kit kit = new Edit.PlacePaint("lineup", "well-2", "blue").apply(KIT);
    Kit moved = new Edit.MovePaint("lineup", "well-1", "well-2").apply(kit);
    assertThat(inWell(moved, "well-1")).contains(new Filling("blue", Fill.FULL));
    assertThat(inWell(moved, "well-2")).contains(new Filling("red", Fill.FULL));
  }

  @Test
  void movingIntoADabPlaceMakesADabAndBackAFullWell() {
    Kit dabbed = new Edit.MovePaint("lineup", "well-1", "dab-1").apply(KIT);
    assertThat(inWell(dabbed, "well-1")).isEmpty();
    assertThat(inWell(dabbed, "dab-1")).contains(new Filling("red", Fill.DAB));
    assertThat(new Edit.MovePaint("lineup", "dab-1", "well-1").apply(dabbed)).isEqualTo(KIT);
  }

  @Test
  void movingKeepsAHalfFilledWellHalfFilled() {
    Kit half = new Edit.SetFill("lineup", "well-1", Fill.HALF).apply(KIT);
    Kit moved = new Edit.MovePaint("lineup", "well-1", "well-2").apply(half);
    assertThat(inWell(moved, "well-2")).contains(new Filling("red", Fill.HALF));
  }

  @Test
  void fillingAnEmptyWellHigherLeavesItEmpty() {
    assertThat(new Edit.SetFill("lineup", "well-2", Fill.HALF).apply(KIT)).isEqualTo(KIT);
  }

  @Test
  void aPaintTakenOffTheShelfLeavesEveryWell() {
    Kit kit = new Edit.RemovePaint("red").apply(KIT);
    assertThat(kit.shelf().find("red")).isEmpty();
    assertThat(inWell(kit, "well-1")).isEmpty();
  }

  @Test
  void aSmallerBoxLosesThePaintsOfItsLostWells() {
    Kit kit = new Edit.PlacePaint("lineup", "well-2", "blue").apply(KIT);
    Kit smaller = new Edit.ChangeBox(BoxPlan.ofHalfPans(1, 1, 0).box("box")).apply(kit);
    assertThat(smaller.lineup("lineup").orElseThrow().fillings()).containsOnlyKeys("well-1");
  }

  @Test
  void aBoxTakesItsLineupsWithItAndOutingsStay() {
    Kit kit = new Edit.RemoveBox("box").apply(KIT);
    assertThat(kit.lineups()).isEmpty();
    assertThat(kit.outings()).containsExactly(OUTING.withLineup(Optional.empty()));
  }

  @Test
  void aLineupLeavesItsOutings() {
    Kit kit = new Edit.RemoveLineup("lineup").apply(KIT);
    assertThat(kit.outings()).containsExactly(OUTING.withLineup(Optional.empty()));
    assertThat(kit.boxes()).containsExactly(BOX);
  }

  @Test
  void aFindingIsMutedForTheNewestReasonAndToldAgain() {
    Kit once = new Edit.MuteFinding("lineup", "fading:red", "a sketchbook").apply(KIT);
    Kit twice = new Edit.MuteFinding("lineup", "fading:red", "never framed").apply(once);
    assertThat(twice.lineup("lineup").orElseThrow().muted())
        .containsExactly(new MutedFinding("fading:red", "never framed"));
    assertThat(new Edit.TellFinding("lineup", "fading:red").apply(twice)).isEqualTo(KIT);
  }

  @Test
  void aMuteOutlivesChangesOfTheFillings() {
    Kit muted = new Edit.MuteFinding("lineup", "no-dark", "high-key sketches").apply(KIT);
    Kit changed = new Edit.EmptyWell("lineup", "well-1").apply(muted);
    assertThat(changed.lineup("lineup").orElseThrow().mute("no-dark")).isPresent();
  }

  @ParameterizedTest
  @MethodSource("editsOfWhatIsNotThere")
  void anEditOfWhatTheKitDoesNotHaveIsRefused(Edit edit) {
    assertThatThrownBy(() -> edit.apply(KIT))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("nowhere");
  }

  static Stream<Edit> editsOfWhatIsNotThere() {
    return Stream.of(
        new Edit.PlacePaint("nowhere", "well-1", "red"),
        new Edit.PlacePaint("lineup", "nowhere", "red"),
        new Edit.PlacePaint("lineup", "well-1", "nowhere"),
        new Edit.MovePaint("nowhere", "well-1", "well-2"),
        new Edit.MovePaint("lineup", "nowhere", "well-2"),
        new Edit.MovePaint("lineup", "well-1", "nowhere"),
        new Edit.EmptyWell("nowhere", "well-1"),
        new Edit.EmptyWell("lineup", "nowhere"),
        new Edit.SetFill("nowhere", "well-1", Fill.HALF),
        new Edit.SetFill("lineup", "nowhere", Fill.HALF),
        new Edit.ChangePaint(paint("nowhere")),
        new Edit.RemovePaint("nowhere"),
        new Edit.ChangeBox(BoxPlan.ofHalfPans(1, 1, 0).box("nowhere")),
        new Edit.RemoveBox("nowhere"),
        new Edit.AddLineup(new Lineup("l", "L", "nowhere", Map.of())),
        new Edit.ChangeLineup(new Lineup("nowhere", "L", "box", Map.of())),
        new Edit.RemoveLineup("nowhere"),
        new Edit.MuteFinding("nowhere", "no-dark", ""),
        new Edit.TellFinding("lineup", "nowhere"),
        new Edit.SetSubjects("nowhere", List.of()),
        new Edit.AddOuting(
            new Outing("o", "O", Optional.empty(), "", Optional.of("nowhere"), 0, 0, List.of())),
        new Edit.ChangeOuting(
            new Outing("nowhere", "O", Optional.empty(), "", Optional.empty(), 0, 0, List.of())),
        new Edit.RemoveOuting("nowhere"),
        new StockEdit.AddTube(tube("t", "nowhere")),
        new StockEdit.ChangeTube(tube("nowhere", "red")),
        new StockEdit.RemoveTube("nowhere"),
        new StockEdit.FillWells(List.of(), List.of(), Map.of("nowhere", 1.0), DateSpan.FIRST),
        new StockEdit.FillWells(
            List.of(new FilledWell("box", "nowhere", "red", DateSpan.FIRST, 1, 1)),
            List.of(),
            Map.of(),
            DateSpan.FIRST),
        new StockEdit.ExchangePans(
            List.of(new FilledWell("box", "nowhere", "red", DateSpan.FIRST, 1, 1))),
        new StockEdit.WearDown("nowhere", "box", Map.of()));
  }

  /** The random painter of the history tests leaves no kind of edit out. */
  @Test
  void theRandomSequencesCoverEveryKindOfEdit() {
    Set<Class<?>> seen = new HashSet<>();
    for (long seed : new long[] {1, 2, 3, 5, 8, 13, 21, 34}) {
      new RandomEdits(seed)
          .sequence(Kit.empty("start"), 600)
          .forEach(edit -> seen.add(edit.getClass()));
    }
    assertThat(seen).containsAll(kindsOf(Edit.class));
  }

  /** All kinds of a sealed type, those of its sealed parts included. */
  private static List<Class<?>> kindsOf(Class<?> type) {
    return type.isSealed()
        ? Arrays.stream(type.getPermittedSubclasses())
            .flatMap(part -> kindsOf(part).stream())
            .toList()
        : List.of(type);
  }

  private static Tube tube(String id, String paintId) {
    return new Tube(
        id, paintId, 5, new Remainder.ByVolume(5), OptionalDouble.empty(), Optional.empty(), "");
  }

  private static Optional<Filling> inWell(Kit kit, String well) {
    return kit.lineup("lineup").orElseThrow().in(well);
  }

  private static Kit kit() {
    Kit kit = Kit.empty("kit");
    for (Edit edit :
        List.of(
            new Edit.AddPaint(paint("red")),
            new Edit.AddPaint(paint("blue")),
            new Edit.AddBox(BOX),
            new Edit.AddLineup(LINEUP),
            new Edit.AddOuting(OUTING),
            new Edit.PlacePaint("lineup", "well-1", "red"))) {
      kit = edit.apply(kit);
    }
    return kit;
  }

  private static Paint paint(String id) {
    return new Paint(
        id,
        id,
        "",
        List.of(new PigmentShare(PigmentName.of("PB29"), 1)),
        new Handling(Transparency.TRANSPARENT, Staining.LOW, Granulation.STRONG, Lightfastness.I),
        Ownership.OWNED,
        Optional.empty(),
        "");
  }
}
