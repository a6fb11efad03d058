package org.panwright.app.ground;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.app.ThreePaintKit;
import org.panwright.kit.Edit;
import org.panwright.paint.Paper;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

class GroundModelTest {
  private final GroundModel model = new GroundModel(ThreePaintKit.kit());

  @Test
  void nothingChangedIsNoEdit() {
    assertThat(model.edits()).isEmpty();
  }

  @Test
  void anotherPaperIsOneEdit() {
    model.paperProperty().set(Paper.NATURAL);
    assertThat(model.edits()).containsExactly(new Edit.SetPaper(Paper.NATURAL));
  }

  @Test
  void allStrengthsTogetherAreOneEdit() {
    model.loadProperty(Wash.BUTTER).set("1,2");
    model.loadProperty(Wash.TEA).set("0.05");
    WashStrengths typed = new WashStrengths(List.of(1.2, 0.55, 0.25, 0.10, 0.05));
    assertThat(model.edits()).containsExactly(new Edit.SetWashes(typed));
  }

  @ParameterizedTest(name = "{0} = {1}")
  @CsvSource({
    "MILK, 0.6, Milk must leave less paint than cream.",
    "MILK, 0.55, Milk must leave less paint than cream.",
    "TEA, 0, 'Tea must be a number above 0 and up to 4, such as 0.25.'",
    "BUTTER, 5, 'Butter must be a number above 0 and up to 4, such as 0.25.'",
    "CREAM, half, 'Cream must be a number above 0 and up to 4, such as 0.25.'"
  })
  void strengthsThatCannotBeAreNamed(Wash wash, String typed, String sentence) {
    model.loadProperty(wash).set(typed);
    assertThat(model.problemProperty().getValue()).isEqualTo(sentence);
    assertThat(model.edits()).isEmpty();
  }

  @Test
  void theUsualStrengthsComeBack() {
    model.loadProperty(Wash.MILK).set("x");
    model.usual();
    assertThat(model.problemProperty().getValue()).isEmpty();
  }
}
