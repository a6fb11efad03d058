package org.panwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What is said of a chart as a whole. */
class ChartReadingWordsTest {
  @Test
  void aFewWrongCellsAreBlamedAndManySendToTheLabelsFirst() {
    assertThat(ChartReadingWords.summary(36, 0)).isEqualTo("All 36 cells agree.");
    assertThat(ChartReadingWords.summary(36, 2))
        .isEqualTo("2 of 36 cells disagree and are left out:");
    assertThat(ChartReadingWords.summary(16, 2)).doesNotContain("corners");
    assertThat(ChartReadingWords.summary(36, 4))
        .startsWith("Where so many disagree, first check the corners")
        .endsWith("4 of 36 cells disagree and are left out:");
  }

  @Test
  void cellsStruckThroughAreExplained() {
    assertThat(ChartReadingWords.beyond(1)).startsWith("One cell, struck through, is more vivid");
    assertThat(ChartReadingWords.beyond(3)).startsWith("3 cells, struck through, are more vivid");
  }
}
