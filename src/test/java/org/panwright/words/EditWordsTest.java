package org.panwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.panwright.app.ThreePaintKit;
import org.panwright.kit.Edit;
import org.panwright.kit.Fill;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.LineupWishes;
import org.panwright.kit.Outing;
import org.panwright.kit.SwatchEdit;
import org.panwright.kit.TableEdit;
import org.panwright.paint.OpticsOrigin;
import org.panwright.paint.Paper;
import org.panwright.paint.WashStrengths;

class EditWordsTest {
  private static final Kit KIT = ThreePaintKit.kit();
  private static final String LINEUP = ThreePaintKit.LINEUP;

  static Stream<Arguments> edits() {
    Lineup lineup = KIT.lineups().get(0);
    Outing outing =
        new Outing("o", "harbour day", Optional.empty(), "", Optional.empty(), 2, 3, List.of());
    return Stream.of(
        Arguments.of(new Edit.PlacePaint(LINEUP, "w3", "red"), "put red into well 3"),
        Arguments.of(new Edit.MovePaint(LINEUP, "w1", "w3"), "move yellow to well 3"),
        Arguments.of(new Edit.EmptyWell(LINEUP, "w2"), "take blue out of well 2"),
        Arguments.of(new Edit.SetFill(LINEUP, "w2", Fill.HALF), "fill well 2 half"),
        Arguments.of(new Edit.RemovePaint("red"), "remove red"),
        Arguments.of(new Edit.RemovePaint("gone"), "remove a paint"),
        Arguments.of(
            new SwatchEdit.RecordSwatches(Map.of("red", List.of())), "keep swatches of red"),
        Arguments.of(new SwatchEdit.RemoveSwatch("red", "a"), "remove a swatch of red"),
        Arguments.of(
            new SwatchEdit.UseOptics(Map.of("red", Optional.empty()), OpticsOrigin.ESTIMATE),
            "estimate red from pigments"),
        Arguments.of(
            new SwatchEdit.LearnPaints(
                new SwatchEdit.RecordSwatches(Map.of()),
                new SwatchEdit.UseOptics(
                    Map.of("red", Optional.empty(), "blue", Optional.empty()),
                    OpticsOrigin.UNNOTED)),
            "learn 2 paints from swatches"),
        Arguments.of(new SwatchEdit.GoBack("red", 0), "go back to former colours of red"),
        Arguments.of(new Edit.RemoveBox("box"), "remove box small box"),
        Arguments.of(
            new Edit.ChangeLineup(lineup.withName("sea")), "rename lineup two paints to sea"),
        Arguments.of(
            new Edit.ChangeLineup(lineup.withFillings(Map.of())), "change lineup two paints"),
        Arguments.of(
            new Edit.SetWishes(LINEUP, LineupWishes.of(3, 0)),
            "change what is asked of lineup two paints"),
        Arguments.of(new Edit.RemoveLineup(LINEUP), "remove lineup two paints"),
        Arguments.of(new Edit.MuteFinding(LINEUP, "hue-gap:rose", "no roses"), "mute a finding"),
        Arguments.of(new Edit.TellFinding(LINEUP, "hue-gap:rose"), "tell a finding again"),
        Arguments.of(
            new Edit.SetCardMixes(LINEUP, Optional.empty()),
            "change the mixes on the key card of lineup two paints"),
        Arguments.of(
            new Edit.SetSubjects("o", List.of()), "change the subject colours of an outing"),
        Arguments.of(new Edit.AddOuting(outing), "add outing harbour day"),
        Arguments.of(new Edit.RemoveOuting("o"), "remove an outing"),
        Arguments.of(new Edit.SetPaper(Paper.NATURAL), "paint on natural white paper"),
        Arguments.of(new Edit.SetWashes(WashStrengths.USUAL), "change the wash strengths"),
        Arguments.of(new Edit.RenameKit("sea kit"), "rename the kit to sea kit"));
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("edits")
  void anEditIsSaidInTheNamesOfTheKitBeforeIt(Edit edit, String words) {
    assertThat(EditWords.of(edit, KIT)).isEqualTo(words);
  }

  @Test
  void everyKindOfEditHasWords() {
    assertThat(Edit.class.getPermittedSubclasses())
        .as("edits in the table above, or said like one of them")
        .hasSize(27);
    Lineup lineup = KIT.lineups().get(0);
    assertThat(
            EditWords.of(new TableEdit(KIT.shelf().paints(), List.of(), Optional.of(lineup)), KIT))
        .isEqualTo("fill lineup two paints from a table and take in 3 paints");
    assertThat(EditWords.of(new Edit.AddLineup(lineup), KIT)).isEqualTo("add lineup two paints");
    assertThat(EditWords.of(new Edit.AddBox(KIT.boxes().get(0)), KIT))
        .isEqualTo("add box small box");
    assertThat(EditWords.of(new Edit.ChangeBox(KIT.boxes().get(0)), KIT))
        .isEqualTo("change box small box");
    assertThat(EditWords.of(new Edit.AddPaint(KIT.shelf().paints().get(0)), KIT))
        .isEqualTo("add yellow");
    assertThat(EditWords.of(new Edit.ChangePaint(KIT.shelf().paints().get(0)), KIT))
        .isEqualTo("change yellow");
  }
}
