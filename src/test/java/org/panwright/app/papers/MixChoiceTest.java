package org.panwright.app.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.mixing.Ratio;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;
import org.panwright.print.CardOptions;
import org.panwright.print.PaperFormat;
import org.panwright.print.PaperKind;

class MixChoiceTest {
  private PapersModel model;
  private MixChoice choice;

  @BeforeEach
  void open() {
    model =
        new PapersModel(
            Sessions.on(ThreePaintKit.kit()),
            new PigmentLibrary(List.of()),
            PaperFormat.A4,
            () -> LocalDate.of(2026, 11, 25),
            Sessions.AT_ONCE,
            Sessions.AT_ONCE,
            Sessions::fail);
    choice = new MixChoice(model);
  }

  @Test
  void theUsefulOnesStandThereAtFirst() {
    assertThat(choice.isOwn()).isFalse();
    assertThat(choice.recipesProperty().get()).isNotEmpty();
  }

  @Test
  void oneTakenAwayIsGoneFromTheOrder() {
    Recipe first = choice.recipesProperty().get().get(0);

    choice.remove(first);

    assertThat(choice.isOwn()).isTrue();
    assertThat(choice.recipesProperty().get()).doesNotContain(first);
    assertThat(order().mixes().orElseThrow()).doesNotContain(first);
  }

  @Test
  void oneAddedStandsLastAndOnlyOnce() {
    List<Paint> paints = choice.paints();
    choice.add(paints.get(0), paints.get(1), new Ratio(2, 1));
    choice.add(paints.get(0), paints.get(1), new Ratio(2, 1));

    Recipe added = Recipe.of(paints.get(0).id(), 2, paints.get(1).id(), 1);
    assertThat(order().mixes().orElseThrow()).endsWith(added).containsOnlyOnce(added);
  }

  @Test
  void aPaintWithItselfIsNoMix() {
    Paint paint = choice.paints().get(0);

    choice.add(paint, paint, new Ratio(1, 1));

    assertThat(choice.isOwn()).isFalse();
  }

  @Test
  void theUsefulOnesComeBack() {
    List<Recipe> useful = choice.recipesProperty().get();
    choice.remove(useful.get(0));

    choice.useUsual();

    assertThat(choice.recipesProperty().get()).isEqualTo(useful);
  }

  private CardOptions order() {
    return (CardOptions) model.order(PaperKind.KEY_CARD);
  }
}
