package org.panwright.analysis.subject;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.reach.PaintSet;
import org.panwright.analysis.reach.Parts;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.mixing.BatchMixer;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Portion;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Paper;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

class RecipesTest {
  private static final List<String> IDS =
      List.of("PY175", "PY65", "PR254", "PR122", "PV23", "PB29", "PB15:3", "PG7", "PY43", "PBr7");
  private static final OpticsTable TABLE =
      OpticsTable.of(Lineups.paints(IDS.toArray(new String[0])), Lineups.LIBRARY, Paper.WHITE);
  private static final WashStrengths WASHES = WashStrengths.USUAL;
  private static final Recipes RECIPES = Recipes.of(TABLE, IDS, WASHES, () -> false);

  /** Colours of the mixes themselves must be found again; parts 1:3 and 2:1:1 lie on the net. */
  @Test
  void findsAMixAgain() {
    Recipe pair = Recipe.of("PY175", 1, "PB29", 3);
    Recipe triad =
        new Recipe(
            List.of(new Portion("PR254", 2), new Portion("PB29", 1), new Portion("PBr7", 1)));
    for (Recipe recipe : List.of(Recipe.of("PV23"), pair, triad)) {
      for (Wash wash : List.of(Wash.CREAM, Wash.COFFEE)) {
        Lab target = new Mixer(TABLE).lab(recipe, WASHES.load(wash));
        assertThat(RECIPES.nearest(target, 1).get(0).deltaE()).isLessThan(0.25);
      }
    }
  }

  /** Brute force over every set of paints, all whole parts, all washes. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void isNeverWorseThanTheWholeNetByMoreThanAFifth(int seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 4; i++) {
      Lab target =
          new Lab(
              25 + 65 * random.nextDouble(),
              -50 + 100 * random.nextDouble(),
              -50 + 110 * random.nextDouble());
      assertThat(RECIPES.nearest(target, 1).get(0).deltaE()).isLessThan(exhaustive(target) + 0.2);
    }
  }

  @Test
  void tellsTheTruthAboutItsColour() {
    Lab target = new Lab(55, -20, 25);
    for (Match match : RECIPES.nearest(target, 3)) {
      Lab lab = new Mixer(TABLE).lab(match.recipe(), match.load());
      assertThat(Difference.ciede2000(lab, match.lab())).isLessThan(1e-6);
      assertThat(match.deltaE()).isCloseTo(Difference.ciede2000(target, lab), within(1e-6));
      double parts = match.recipe().portions().stream().mapToDouble(Portion::parts).sum();
      assertThat(parts).isLessThanOrEqualTo(Parts.MOST);
    }
  }

  @Test
  void alternativesAreOfOtherPaints() {
    List<Match> matches = RECIPES.nearest(new Lab(50, 20, 20), 3);
    assertThat(matches).hasSize(3);
    Set<Set<String>> sets = new HashSet<>();
    for (Match match : matches) {
      Set<String> ids = new HashSet<>();
      match.recipe().portions().forEach(portion -> ids.add(portion.paintId()));
      assertThat(sets.add(ids)).isTrue();
    }
  }

  @Test
  void onePaintCanOnlyBeThinned() {
    Recipes one = Recipes.of(TABLE, List.of("PB29"), WASHES, () -> false);
    List<Match> matches = one.nearest(new Lab(60, 0, -30), 3);
    assertThat(matches).hasSize(1);
    assertThat(matches.get(0).load()).isBetween(0.04, 1.0);
  }

  /** Of many paints only those that alone come nearest are asked; the one of that colour is. */
  @Test
  void aLongShelfIsShortlistedByNearness() {
    List<String> many = new ArrayList<>();
    for (int i = 0; i < 150; i++) {
      many.add(i == 77 ? "PB29" : "PY175");
    }
    Lab blue = new Mixer(TABLE).lab(Recipe.of("PB29"), 0.25);
    assertThat(RecipeBook.shortlist(TABLE, many, WASHES, blue)).contains("PB29");
    List<Match> matches = new RecipeBook().nearest(TABLE, IDS, WASHES, blue, 2, () -> false);
    assertThat(matches).isEqualTo(RECIPES.nearest(blue, 2));
  }

  @Test
  void noPaintGivesNoRecipe() {
    assertThat(Recipes.of(TABLE, List.of(), WASHES, () -> false).nearest(new Lab(50, 0, 0), 3))
        .isEmpty();
  }

  private static double exhaustive(Lab target) {
    BatchMixer mixer = new BatchMixer(TABLE, Light.D65);
    double[] lab = new double[3];
    double least = Double.POSITIVE_INFINITY;
    for (PaintSet set : sets(IDS.size())) {
      for (Parts parts : set.parts()) {
        set.stir(mixer, TABLE, parts);
        for (Wash wash : Wash.values()) {
          mixer.writeLab(WASHES.load(wash), lab, 0);
          least = Math.min(least, Difference.ciede2000(target, new Lab(lab[0], lab[1], lab[2])));
        }
      }
    }
    return least;
  }

  private static List<PaintSet> sets(int paints) {
    List<PaintSet> sets = new ArrayList<>();
    for (int i = 0; i < paints; i++) {
      sets.add(new PaintSet(i, PaintSet.NONE, PaintSet.NONE));
      for (int j = i + 1; j < paints; j++) {
        sets.add(new PaintSet(i, j, PaintSet.NONE));
        for (int k = j + 1; k < paints; k++) {
          sets.add(new PaintSet(i, j, k));
        }
      }
    }
    return sets;
  }
}
