package org.panwright.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.panwright.print.PaperKind;

class PaperWordsTest {
  @ParameterizedTest
  @EnumSource(PaperKind.class)
  void everyKindHasANameAndAPurpose(PaperKind kind) {
    assertThat(PaperWords.name(kind.name())).isNotBlank();
    assertThat(PaperViewWords.purpose(kind.name())).endsWith(".");
    assertThat(PaperWords.title(kind.name(), "Ebb")).endsWith(": Ebb");
  }

  @Test
  void anUnknownKindIsAMistakeOfTheProgram() {
    assertThatThrownBy(() -> PaperWords.name("MENU"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no name for the paper MENU");
  }

  @Test
  void namesThatCannotBePrintedAreListedUpToThree() {
    assertThat(PaperWords.unprintable(List.of("a", "b", "c", "d", "e")))
        .isEqualTo(
            "Some letters or signs of “a”, “b”, “c” and 2 more cannot be printed; □ stands for"
                + " each.");
    assertThat(PaperWords.unprintable(List.of())).contains("of a name cannot");
  }

  @Test
  void aCellTooLargeIsToldWithTheLargestThatGoes() {
    assertThat(PaperWords.cellTooLarge(120, "A5", 98.4))
        .isEqualTo(
            "A cell of 120 mm does not go on A5 beside the names of the paints; the largest that"
                + " does measures 98 mm. Choose smaller cells or larger paper.");
  }
}
