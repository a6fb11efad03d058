package org.panwright.app.mix;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import org.panwright.analysis.judge.Judgement;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.app.recipes.Wanted;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.Ratio;
import org.panwright.mixing.Recipe;
import org.panwright.mixing.WetLook;
import org.panwright.paint.Paint;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;
import org.panwright.words.MixWords;

/** The mix that is picked in the grid, or one paint alone on its diagonal; knows no control. */
public final class MixModel {
  private final Session session;
  private final ObjectProperty<Wash> wash = new SimpleObjectProperty<>(Wash.CREAM);
  private final ObservableValue<Optional<MixPicture>> picture;

  public MixModel(Session session) {
    this.session = session;
    picture =
        Bindings.createObjectBinding(
            this::picture, session.selectionProperty(), session.judgementProperty(), wash);
  }

  /** The wash shown large. */
  public ObjectProperty<Wash> washProperty() {
    return wash;
  }

  ObservableValue<Optional<MixPicture>> pictureProperty() {
    return picture;
  }

  /** Shows the same pair in another ratio. */
  void chooseRatio(int ratio) {
    if (session.selectionProperty().get() instanceof Selection.OfMix mix) {
      session
          .selectionProperty()
          .set(new Selection.OfMix(mix.rowPaintId(), mix.columnPaintId(), ratio));
    }
  }

  /** Looks for other mixes of the colour shown large. */
  void otherWays() {
    picture
        .getValue()
        .ifPresent(
            mix ->
                session
                    .selectionProperty()
                    .set(
                        Wanted.colour(
                            mix.dry(),
                            mix.alone() ? mix.first() : MixWords.pair(mix.first(), mix.second()))));
  }

  /** Picks nothing. */
  void leave() {
    session.selectionProperty().set(Selection.NOTHING);
  }

  private Optional<MixPicture> picture() {
    return session.selectionProperty().get() instanceof Selection.OfMix mix
        ? session.judgementProperty().get().flatMap(judgement -> picture(judgement, mix))
        : Optional.empty();
  }

  private Optional<MixPicture> picture(Judgement judgement, Selection.OfMix mix) {
    Optional<Paint> first = judgement.kit().shelf().find(mix.rowPaintId());
    Optional<Paint> second = judgement.kit().shelf().find(mix.columnPaintId());
    if (first.isEmpty() || second.isEmpty()) {
      return Optional.empty();
    }
    Mixer mixer = new Mixer(judgement.table());
    WashStrengths washes = judgement.kit().washes();
    double load = washes.load(wash.get());
    boolean alone = mix.rowPaintId().equals(mix.columnPaintId());
    Recipe recipe = recipe(mix, Ratio.GRID.get(mix.ratio()));
    Spectrum dry = mixer.dry(recipe, load);
    List<Lab> ratios =
        alone
            ? List.of(Light.D65.lab(dry))
            : Ratio.GRID.stream().map(r -> mixer.lab(recipe(mix, r), load)).toList();
    return Optional.of(
        new MixPicture(
            first.get().name(),
            second.get().name(),
            mix.ratio(),
            wash.get(),
            Light.D65.lab(dry),
            WetLook.of(mixer, judgement.kit().shelf()).lab(recipe, load),
            ratios,
            Arrays.stream(Wash.values()).map(w -> mixer.lab(recipe, washes.load(w))).toList(),
            mixer.volumes(recipe)[0],
            dry,
            mixer.expectedError(recipe),
            recipe.portions().stream()
                .map(p -> judgement.table().optics(judgement.table().indexOf(p.paintId())).source())
                .distinct()
                .toList()));
  }

  private static Recipe recipe(Selection.OfMix mix, Ratio ratio) {
    return Recipe.of(mix.rowPaintId(), mix.columnPaintId(), ratio);
  }
}
