package org.panwright.print;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.panwright.analysis.UsefulMix;
import org.panwright.analysis.UsefulMixes;
import org.panwright.colour.GamutFit;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Outing;
import org.panwright.kit.SubjectColour;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Portion;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.Wash;
import org.panwright.words.CardWords;

/**
 * A mix as a card tells it.
 *
 * @param words wells, recipe, wash and look in one line
 * @param look the printed colour and whether print can show it
 */
record CardMix(String words, GamutFit look) {
  /** How many mixes a card has unless the painter chooses. */
  private static final int USUAL = 12;

  /**
   * The mixes for a lineup's card.
   *
   * @param chosen recipes; those with a paint that is not in the lineup are left out; empty for the
   *     useful ones
   */
  static List<CardMix> of(
      Kit kit, Lineup lineup, PigmentLibrary library, Optional<List<Recipe>> chosen) {
    List<Paint> paints = LineupPaint.of(kit, lineup.id()).stream().map(LineupPaint::paint).toList();
    OpticsTable table = OpticsTable.of(paints, library, kit.paper());
    List<UsefulMix> mixes =
        chosen
            .map(recipes -> chosen(kit, table, recipes))
            .orElseGet(() -> useful(kit, lineup, table));
    Mixer mixer = new Mixer(table);
    List<CardMix> cardMixes = new ArrayList<>();
    for (UsefulMix mix : mixes) {
      GamutFit look = PrintColour.of(mixer.dry(mix.recipe(), kit.washes().load(mix.wash())));
      cardMixes.add(new CardMix(words(kit, lineup, mix, PaintMarks.look(look.shown())), look));
    }
    return cardMixes;
  }

  /** The useful mixes of a lineup, those for the subjects of its outings first. */
  static List<UsefulMix> useful(Kit kit, Lineup lineup, OpticsTable table) {
    List<SubjectColour> subjects =
        kit.outings().stream()
            .filter(outing -> outing.lineupId().equals(Optional.of(lineup.id())))
            .map(Outing::subjects)
            .flatMap(List::stream)
            .toList();
    return UsefulMixes.of(table, table.ids(), kit.washes(), subjects, USUAL, () -> false);
  }

  private static List<UsefulMix> chosen(Kit kit, OpticsTable table, List<Recipe> recipes) {
    Set<String> aboard = new HashSet<>(table.ids());
    Mixer mixer = new Mixer(table);
    return recipes.stream()
        .filter(recipe -> recipe.portions().stream().allMatch(p -> aboard.contains(p.paintId())))
        .map(
            recipe ->
                new UsefulMix(
                    recipe,
                    Wash.MILK,
                    mixer.lab(recipe, kit.washes().load(Wash.MILK)),
                    Optional.empty()))
        .toList();
  }

  private static String words(Kit kit, Lineup lineup, UsefulMix mix, String look) {
    List<String> wells = wells(kit, lineup, mix.recipe());
    return CardWords.mix(mix.subject(), wells, mix.recipe(), kit, mix.wash(), look);
  }

  /** The label of the first well of each paint of a recipe. */
  static List<String> wells(Kit kit, Lineup lineup, Recipe recipe) {
    List<String> wells = new ArrayList<>();
    for (Portion portion : recipe.portions()) {
      kit.boxOf(lineup).wells().stream()
          .filter(
              well ->
                  lineup
                      .in(well.id())
                      .filter(filling -> filling.paintId().equals(portion.paintId()))
                      .isPresent())
          .findFirst()
          .ifPresent(well -> wells.add(well.label()));
    }
    return wells;
  }
}
