package org.panwright.app.recipes;

import java.util.List;
import java.util.Optional;
import org.panwright.analysis.subject.Match;
import org.panwright.app.Selection;
import org.panwright.kit.Kit;
import org.panwright.mixing.Mixer;

/**
 * A colour and how to come near it.
 *
 * @param wanted the colour
 * @param kit the kit the recipes are from
 * @param fromBox the nearest recipes from the lineup, each of other paints, nearest first
 * @param fromShelf the nearest recipe from all owned paints and the lineup, if it is another
 * @param mixer of the paints they are of
 * @param error the greatest CIEDE2000 error to expect of the mixes shown; 0 if there is none
 */
record RecipesPicture(
    Selection.OfColour wanted,
    Kit kit,
    List<Match> fromBox,
    Optional<Match> fromShelf,
    Mixer mixer,
    double error) {
  RecipesPicture {
    fromBox = List.copyOf(fromBox);
  }
}
