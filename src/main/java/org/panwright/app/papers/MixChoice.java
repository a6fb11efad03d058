package org.panwright.app.papers;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.panwright.app.fx.Latest;
import org.panwright.kit.Kit;
import org.panwright.mixing.Ratio;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Paint;
import org.panwright.print.CardMixes;
import org.panwright.print.CardOptions;
import org.panwright.print.Occasion;
import org.panwright.print.PaperKind;

/** Which mixes the key card shows: the useful ones until the painter takes one away or adds one. */
final class MixChoice {
  /** The parts offered for a mix. */
  static final List<Ratio> RATIOS =
      List.of(new Ratio(1, 1), new Ratio(2, 1), new Ratio(1, 2), new Ratio(3, 1), new Ratio(1, 3));

  private final PapersModel model;
  private final Latest<List<Recipe>> working;
  private final ReadOnlyObjectWrapper<List<Recipe>> recipes =
      new ReadOnlyObjectWrapper<>(List.of());

  MixChoice(PapersModel model) {
    this.model = model;
    working = model.latest();
    model.madeProperty().addListener((property, before, now) -> refresh());
    refresh();
  }

  /** The recipes on the card, in its order. */
  ReadOnlyObjectProperty<List<Recipe>> recipesProperty() {
    return recipes.getReadOnlyProperty();
  }

  /** Whether the painter chose them. */
  boolean isOwn() {
    return order().mixes().isPresent();
  }

  /** The paints a mix can be made of. */
  List<Paint> paints() {
    return model.occasion().map(Occasion::paints).orElse(List.of());
  }

  /** The kit, for names. */
  Optional<Kit> kit() {
    return model.occasion().map(Occasion::kit);
  }

  /** A recipe in short: the wells of its paints, its parts, its paints. */
  String inShort(Recipe recipe) {
    return model.occasion().map(o -> CardMixes.inShort(o, recipe)).orElse("");
  }

  /** Leaves a mix out. */
  void remove(Recipe recipe) {
    List<Recipe> left = new ArrayList<>(recipes.get());
    left.remove(recipe);
    model.change(order().withMixes(Optional.of(left)));
  }

  /** Adds a mix of two paints; nothing if it is there or they are the same paint. */
  void add(Paint first, Paint second, Ratio parts) {
    if (first.id().equals(second.id())) {
      return;
    }
    Recipe added = Recipe.of(first.id(), parts.first(), second.id(), parts.second());
    if (!recipes.get().contains(added)) {
      List<Recipe> more = new ArrayList<>(recipes.get());
      more.add(added);
      model.change(order().withMixes(Optional.of(more)));
    }
  }

  /** Goes back to the useful ones. */
  void useUsual() {
    model.change(order().withMixes(Optional.empty()));
  }

  private CardOptions order() {
    return (CardOptions) model.order(PaperKind.KEY_CARD);
  }

  private void refresh() {
    Optional<Occasion> occasion = model.occasion();
    if (model.kindProperty().get() != PaperKind.KEY_CARD || occasion.isEmpty()) {
      return;
    }
    Optional<List<Recipe>> own = order().mixes();
    if (own.isPresent()) {
      working.cancel();
      Set<String> aboard = new HashSet<>(paints().stream().map(Paint::id).toList());
      recipes.set(own.get().stream().filter(recipe -> isOf(aboard, recipe)).toList());
    } else {
      working.request(outdated -> CardMixes.usual(occasion.get()), recipes::set, model.failures());
    }
  }

  private static boolean isOf(Set<String> paintIds, Recipe recipe) {
    return recipe.portions().stream().allMatch(portion -> paintIds.contains(portion.paintId()));
  }
}
