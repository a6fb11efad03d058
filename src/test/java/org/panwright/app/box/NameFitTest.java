package org.panwright.app.box;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NameFitTest {
  /** A face in which every character is half its size wide. */
  private static double half(String text) {
    return 0.5 * text.codePointCount(0, text.length());
  }

  private static NameFit fit(String name, String codes, double width, double height) {
    return NameFit.of(name, codes, width, height, 14, 10, NameFitTest::half);
  }

  @Test
  void shortNameStandsOnOneLineAtTheLargestSize() {
    NameFit fit = fit("Viridian", "PG18", 100, 60);
    assertThat(fit.name()).containsExactly("Viridian");
    assertThat(fit.codes()).containsExactly("PG18");
    assertThat(fit.sizePx()).isEqualTo(14);
  }

  @Test
  void longNameWrapsBetweenWords() {
    NameFit fit = fit("Quinacridone Rose", "PV19", 90, 60);
    assertThat(fit.name()).containsExactly("Quinacridone", "Rose");
  }

  @Test
  void nameShrinksBeforeItIsCut() {
    NameFit fit = fit("Quinacridone", "PV19", 66, 60);
    assertThat(fit.name()).containsExactly("Quinacridone");
    assertThat(fit.sizePx()).isBetween(10.0, 11.0);
  }

  @Test
  void wordIsShortenedWhenThereIsNoLineToBreakItInto() {
    NameFit fit = fit("Quinacridone", "PV19", 40, 25);
    assertThat(fit.name()).containsExactly("Quinacr.");
    assertThat(fit.codes()).containsExactly("PV19");
  }

  @Test
  void theWordThatTellsTwoPaintsApartStays() {
    assertThat(fit("Quinacridone rose", "PV19", 40, 28).name()).containsExactly("Quinacr.", "rose");
    assertThat(fit("Quinacridone red", "PV19", 40, 28).name()).containsExactly("Quinacr.", "red");
  }

  @Test
  void nameIsCutWhenNothingElseHelpsAndCodesStay() {
    NameFit fit = fit("Buff of old sails", "PW6", 25, 26);
    assertThat(fit.name()).containsExactly("Buff…");
    assertThat(fit.codes()).containsExactly("PW6");
  }

  @Test
  void wordTooLongForTheRoomIsBroken() {
    NameFit fit = fit("Quinacridone", "PV19", 40, 40);
    assertThat(fit.name()).containsExactly("Quinac-", "ridone");
    assertThat(fit.codes()).containsExactly("PV19");
  }

  /** Where a word is broken, as far as a consonant before a vowel tells. */
  @ParameterizedTest
  @CsvSource({
    "Ultramarine, 35, Ultra-, marine",
    "Cerulean, 35, Ceru-, lean",
    "Scarlet, 30, Scar-, let",
    "Orange, 25, Oran-, ge",
    "Turquoise, 35, Tur-, quoise",
    "Ultramarine, 50, Ultrama-, rine"
  })
  void wordsAreBrokenBetweenSyllables(String name, double width, String start, String end) {
    assertThat(fit(name, "PB29", width, 40).name()).containsExactly(start, end);
  }

  @Test
  void theRestOfABrokenWordTakesTheNextAlong() {
    assertThat(fit("Phthalo red", "PR254", 32, 40).name()).containsExactly("Phtha-", "lo red");
  }

  @Test
  void codesGoBeforeANameIsCut() {
    NameFit fit = fit("Burnt sienna", "PBr7", 40, 30);
    assertThat(fit.name()).containsExactly("Burnt", "sienna");
    assertThat(fit.codes()).isEmpty();
  }

  @Test
  void manyCodesAreCutBeforeAName() {
    NameFit fit = fit("Neutral tint", "PB15:3 + PV19 + PBk7", 40, 40);
    assertThat(fit.name()).containsExactly("Neutral", "tint");
    assertThat(fit.codes()).hasSize(1);
    assertThat(fit.codes().get(0)).endsWith("…");
  }

  @Test
  void roomForOneLineGoesToTheCodes() {
    NameFit fit = fit("Quinacridone Rose", "PV19", 60, 13);
    assertThat(fit.name()).isEmpty();
    assertThat(fit.codes()).containsExactly("PV19");
  }

  @Test
  void aCodeOrNameOfWhichNothingTellingIsLeftIsLeftOut() {
    NameFit fit = fit("Buff of old sails", "PW6", 12, 26);
    assertThat(fit.name()).isEmpty();
    assertThat(fit.codes()).isEmpty();
  }

  @Test
  void lineCutShortSaysSo() {
    NameFit fit = fit("Very long name of a paint that goes on", "PB29", 60, 36);
    assertThat(fit.name().get(fit.name().size() - 1)).endsWith("…");
  }

  @ParameterizedTest(name = "{0} in {2} x {3}")
  @CsvSource({
    "Quinacridone burnt orange, PO48 + PR101 + PBk7, 40, 40",
    "Ωχρα ποταμού, PY43, 30, 25",
    "🎨🎨🎨🎨🎨🎨🎨🎨🎨🎨🎨🎨, PB29, 20, 50",
    "אולטרמרין צרפתי עמוק מאוד, PB29, 35, 33",
    "x, PB29, 1, 1",
    "Ultramarine, PB29, 0, 0"
  })
  void nothingEverLeavesItsRoom(String name, String codes, double width, double height) {
    NameFit fit = fit(name, codes, width, height);
    assertThat(fit.heightPx()).isLessThanOrEqualTo(height);
    assertThat(fit.name())
        .allSatisfy(line -> assertThat(half(line) * fit.sizePx()).isLessThanOrEqualTo(width));
    assertThat(fit.codes())
        .allSatisfy(
            line ->
                assertThat(half(line) * fit.sizePx() * NameFit.CODES).isLessThanOrEqualTo(width));
  }

  @Test
  void threeHundredLettersWithoutASpaceAreCut() {
    NameFit fit = fit("a".repeat(300), "PB29", 50, 40);
    assertThat(fit.name()).hasSize(1);
    assertThat(fit.name().get(0)).endsWith("…");
  }
}
