package org.panwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.panwright.app.ThreePaintKit;
import org.panwright.kit.CheckItem;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.kit.Outing;
import org.panwright.kit.SheetSize;

class OutingEditWordsTest {
  private static final CheckItem HAT = new CheckItem("hat", "Hat", "", false, Optional.empty());
  private static final CheckItem TEA = new CheckItem("tea", "Tea", "", false, Optional.empty());
  private static final Outing DAY =
      new Outing("o", "harbour day", Optional.empty(), "", Optional.empty(), 2, 3, List.of())
          .withChecklist(Optional.of(List.of(HAT, TEA)));
  private static final Kit KIT = ThreePaintKit.kit().withOutings(List.of(DAY));

  static Stream<Arguments> changes() {
    return Stream.of(
        change("rename outing harbour day to sea day", o -> o.withName("sea day")),
        change(
            "change the date of harbour day",
            o -> o.withDate(Optional.of(LocalDate.of(2027, 1, 2)))),
        change("change the place of harbour day", o -> o.withPlace("quay")),
        change(
            "change the lineup of harbour day",
            o -> o.withLineup(Optional.of(ThreePaintKit.LINEUP))),
        change("change the hours of harbour day", o -> o.withHours(5)),
        change("change the sheets of harbour day", o -> o.withSheets(5)),
        change("change the sheet size of harbour day", o -> o.withSheetSize(new SheetSize(50, 60))),
        change("change outing harbour day", o -> o.withSheets(5).withHours(5)),
        change("tick “Hat”", o -> list(o, HAT.withTicked(true), TEA)),
        change("rename “Hat” to “Cap”", o -> list(o, HAT.withText("Cap"), TEA)),
        change("change the note on “Tea”", o -> list(o, HAT, TEA.withNote("hot"))),
        change("take “Hat” off the check list", o -> list(o, TEA)),
        change(
            "put “Map” on the check list",
            o -> list(o, HAT, TEA, new CheckItem("m", "Map", "", false, Optional.empty()))),
        change("change the order of the check list", o -> list(o, TEA, HAT)),
        change("put the usual check list back", o -> o.withChecklist(Optional.empty())));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("changes")
  void aChangeIsToldByWhatIsDifferent(String words, UnaryOperator<Outing> change) {
    assertThat(EditWords.of(new Edit.ChangeOuting(change.apply(DAY)), KIT)).isEqualTo(words);
  }

  @Test
  void theFirstTickOnTheUsualListIsTheTickAlone() {
    Outing usual = DAY.withChecklist(Optional.empty());
    List<CheckItem> ticked = new ArrayList<>(PackingWords.usual());
    Collections.replaceAll(ticked, ticked.get(3), ticked.get(3).withTicked(true));
    assertThat(
            EditWords.of(
                new Edit.ChangeOuting(usual.withChecklist(Optional.of(ticked))),
                KIT.withOutings(List.of(usual))))
        .isEqualTo("tick “Clean water”");
  }

  private static Outing list(Outing outing, CheckItem... items) {
    return outing.withChecklist(Optional.of(List.of(items)));
  }

  private static Arguments change(String words, UnaryOperator<Outing> change) {
    return Arguments.of(words, change);
  }
}
