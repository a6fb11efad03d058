package org.panwright.print;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.panwright.analysis.subject.UsefulMixes;
import org.panwright.colour.GamutFit;
import org.panwright.kit.KeptMix;
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

  /** The mixes for a lineup's card: those the painter keeps for it, or those worth having. */
  static List<CardMix> of(Kit kit, Lineup lineup, PigmentLibrary library) {
    OpticsTable table = table(kit, lineup, library);
    Mixer mixer = new Mixer(table);
    List<CardMix> cardMixes = new ArrayList<>();
    for (KeptMix mix : kept(kit, lineup, table)) {
      GamutFit look = PrintColour.of(mixer.dry(recipe(mix), kit.washes().load(mix.wash())));
      String words =
          CardWords.mix(
              mix.name(),
              wells(kit, lineup, mix),
              recipe(mix),
              kit,
              mix.wash(),
              PaintMarks.look(look.shown()));
      cardMixes.add(new CardMix(words, look));
    }
    return cardMixes;
  }

  /** The optics of a lineup's paints. */
  static OpticsTable table(Kit kit, Lineup lineup, PigmentLibrary library) {
    List<Paint> paints = LineupPaint.of(kit, lineup.id()).stream().map(LineupPaint::paint).toList();
    return OpticsTable.of(paints, library, kit.paper());
  }

  /** The mixes on a lineup's card; of those kept, the ones whose paints are aboard. */
  static List<KeptMix> kept(Kit kit, Lineup lineup, OpticsTable table) {
    return lineup
        .cardMixes()
        .map(mixes -> mixes.stream().filter(mix -> isAboard(mix, table)).toList())
        .orElseGet(() -> useful(kit, lineup, table));
  }

  private static boolean isAboard(KeptMix mix, OpticsTable table) {
    return mix.parts().stream().allMatch(part -> table.ids().contains(part.paintId()));
  }

  /** The mixes worth having, those for the subjects of the lineup's outings first. */
  private static List<KeptMix> useful(Kit kit, Lineup lineup, OpticsTable table) {
    List<SubjectColour> subjects =
        kit.outings().stream()
            .filter(outing -> outing.lineupId().equals(Optional.of(lineup.id())))
            .map(Outing::subjects)
            .flatMap(List::stream)
            .toList();
    return UsefulMixes.of(table, table.ids(), kit.washes(), subjects, USUAL, () -> false).stream()
        .map(
            mix ->
                new KeptMix(
                    mix.recipe().portions().stream()
                        .map(portion -> new KeptMix.Part(portion.paintId(), portion.parts()))
                        .toList(),
                    mix.wash(),
                    mix.subject().orElse("")))
        .filter(distinctKeys())
        .toList();
  }

  private static Predicate<KeptMix> distinctKeys() {
    Set<String> keys = new HashSet<>();
    return mix -> keys.add(mix.key());
  }

  static Recipe recipe(KeptMix mix) {
    return new Recipe(
        mix.parts().stream().map(part -> new Portion(part.paintId(), part.parts())).toList());
  }

  /** The label of the first well of each paint of a recipe. */
  static List<String> wells(Kit kit, Lineup lineup, KeptMix mix) {
    List<String> wells = new ArrayList<>();
    for (KeptMix.Part part : mix.parts()) {
      kit.boxOf(lineup).wells().stream()
          .filter(
              well ->
                  lineup
                      .in(well.id())
                      .filter(filling -> filling.paintId().equals(part.paintId()))
                      .isPresent())
          .findFirst()
          .ifPresent(well -> wells.add(well.label()));
    }
    return wells;
  }
}
