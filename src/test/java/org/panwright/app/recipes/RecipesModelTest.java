package org.panwright.app.recipes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.subject.Match;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.app.box.BoxMarks;
import org.panwright.colour.Lab;
import org.panwright.kit.Edit;
import org.panwright.mixing.Portion;

class RecipesModelTest {
  private final Session session = Sessions.on(ThreePaintKit.kit());
  private final RecipesModel model =
      new RecipesModel(session, Sessions.AT_ONCE, Sessions.AT_ONCE, Sessions::fail);

  @Test
  void nothingIsShownUntilAColourIsPicked() {
    assertThat(model.pictureProperty().get()).isEmpty();
    assertThat(model.shownProperty().getValue()).isFalse();
  }

  @Test
  void aTypedColourIsAnsweredFromTheBoxNearestFirst() {
    assertThat(model.type("#6f9a50")).isTrue();
    RecipesPicture picture = model.pictureProperty().get().orElseThrow();
    assertThat(picture.fromBox()).isNotEmpty();
    assertThat(picture.fromBox().stream().map(Match::deltaE).toList()).isSorted();
    assertThat(paints(picture.fromBox().get(0))).isSubsetOf("yellow", "blue");
  }

  @Test
  void whatIsNoColourChangesNothing() {
    assertThat(model.type("a nice green")).isFalse();
    assertThat(session.selectionProperty().get()).isEqualTo(Selection.NOTHING);
  }

  /** Red is on the shelf, not in the box of yellow and blue: a red is met from the shelf only. */
  @Test
  void theShelfIsAskedToo() {
    session.selectionProperty().set(Wanted.colour(new Lab(50, 60, 30), "a roof"));
    RecipesPicture picture = model.pictureProperty().get().orElseThrow();
    Match shelf = picture.fromShelf().orElseThrow();
    assertThat(paints(shelf)).contains("red");
    assertThat(shelf.deltaE()).isLessThan(picture.fromBox().get(0).deltaE());
  }

  @Test
  void oneClickMarksTheWellsAndTheNextTakesTheMarksAway() {
    model.type("#6f9a50");
    Match match = model.pictureProperty().get().orElseThrow().fromBox().get(0);
    model.mark(match);
    assertThat(model.isMarked(match)).isTrue();
    assertThat(BoxMarks.of(session)).hasSize(paints(match).size());
    model.mark(match);
    assertThat(model.isMarked(match)).isFalse();
    assertThat(BoxMarks.of(session)).isEmpty();
  }

  @Test
  void marksStayWithTheAnswerTheyAreOf() {
    model.type("#6f9a50");
    RecipesPicture before = model.pictureProperty().get().orElseThrow();
    model.mark(before.fromBox().get(0));
    assertThat(model.pictureProperty().get()).containsSame(before);
  }

  @Test
  void aPaintIsNotMixedFromItself() {
    Wanted.pickPaint(session, "blue");
    RecipesPicture picture = model.pictureProperty().get().orElseThrow();
    assertThat(picture.wanted().withoutPaintId()).isEqualTo(Optional.of("blue"));
    assertThat(picture.fromBox()).allSatisfy(m -> assertThat(paints(m)).doesNotContain("blue"));
  }

  @Test
  void anEmptyBoxHasNoRecipe() {
    session.perform(new Edit.EmptyWell(ThreePaintKit.LINEUP, "w1"));
    session.perform(new Edit.EmptyWell(ThreePaintKit.LINEUP, "w2"));
    session.selectionProperty().set(Wanted.middleGrey());
    assertThat(model.pictureProperty().get().orElseThrow().fromBox()).isEmpty();
  }

  @Test
  void aPlaceOfTheRingKeepsItsHueAndChroma() {
    Selection.OfColour picked = Wanted.hue(0.1, 150);
    org.panwright.colour.Oklch back =
        org.panwright.colour.Oklab.ofD65(picked.lab().toXyz(org.panwright.colour.Light.D65.white()))
            .toOklch();
    assertThat(back.hueDeg()).isCloseTo(150, org.assertj.core.api.Assertions.within(0.01));
    assertThat(back.c()).isCloseTo(0.1, org.assertj.core.api.Assertions.within(1e-4));
  }

  private static List<String> paints(Match match) {
    return match.recipe().portions().stream().map(Portion::paintId).toList();
  }
}
