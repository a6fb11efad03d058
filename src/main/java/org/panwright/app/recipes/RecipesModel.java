package org.panwright.app.recipes;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import org.panwright.analysis.judge.Judgement;
import org.panwright.analysis.subject.Match;
import org.panwright.analysis.subject.RecipeBook;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.app.fx.Latest;
import org.panwright.colour.ColourText;
import org.panwright.colour.Lab;
import org.panwright.kit.Kit;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.Portion;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.words.RecipeViewWords;

/** Which paints of the box give the colour that is picked; knows no control. */
public final class RecipesModel {
  private static final int ALTERNATIVES = 3;

  private final Session session;
  private final Consumer<RuntimeException> failures;
  private final RecipeBook book = new RecipeBook();
  private final Latest<RecipesPicture> finding;
  private final ReadOnlyObjectWrapper<Optional<RecipesPicture>> picture =
      new ReadOnlyObjectWrapper<>(Optional.empty());

  /**
   * @param away one thread: the book is for one at a time
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public RecipesModel(
      Session session, Executor away, Executor home, Consumer<RuntimeException> failures) {
    this.session = session;
    this.failures = failures;
    finding = new Latest<>(away, home);
    session.selectionProperty().addListener((o, before, now) -> wantAnew(before, now));
    session.judgementProperty().addListener((o, before, now) -> find());
    find();
  }

  /** The newest whole answer; empty while no colour is picked. */
  ReadOnlyObjectProperty<Optional<RecipesPicture>> pictureProperty() {
    return picture.getReadOnlyProperty();
  }

  /** Whether a colour is picked. */
  public ObservableValue<Boolean> shownProperty() {
    return session.selectionProperty().map(selection -> selection instanceof Selection.OfColour);
  }

  /** The colour that is picked. */
  Optional<Selection.OfColour> wanted() {
    return session.selectionProperty().get() instanceof Selection.OfColour colour
        ? Optional.of(colour)
        : Optional.empty();
  }

  /** Picks a colour typed in; whether the text was one. */
  boolean type(String text) {
    Optional<Lab> typed = ColourText.parse(text);
    typed.ifPresent(
        lab -> session.selectionProperty().set(Wanted.colour(lab, RecipeViewWords.TYPED)));
    return typed.isPresent();
  }

  /** Marks the wells of a recipe's paints in the box, or takes the marks away if they are there. */
  void mark(Match match) {
    List<String> paints = match.recipe().portions().stream().map(Portion::paintId).toList();
    wanted()
        .ifPresent(
            colour ->
                session
                    .selectionProperty()
                    .set(
                        colour.marking(
                            colour.markedPaintIds().equals(paints) ? List.of() : paints)));
  }

  /** The paints whose wells are marked. */
  ObservableValue<List<String>> markedProperty() {
    return session
        .selectionProperty()
        .map(s -> s instanceof Selection.OfColour colour ? colour.markedPaintIds() : List.of());
  }

  /** Whether the wells of a recipe's paints are marked. */
  boolean isMarked(Match match) {
    List<String> paints = match.recipe().portions().stream().map(Portion::paintId).toList();
    return wanted().filter(colour -> colour.markedPaintIds().equals(paints)).isPresent();
  }

  /** Picks nothing. */
  void leave() {
    session.selectionProperty().set(Selection.NOTHING);
  }

  private void wantAnew(Selection before, Selection now) {
    boolean onlyMarked =
        before instanceof Selection.OfColour was
            && now instanceof Selection.OfColour is
            && was.marking(List.of()).equals(is.marking(List.of()));
    if (!onlyMarked) {
      find();
    }
  }

  private void find() {
    Optional<Judgement> judgement = session.judgementProperty().get();
    Optional<Selection.OfColour> colour = wanted();
    if (colour.isEmpty() || judgement.isEmpty()) {
      finding.cancel();
      picture.set(Optional.empty());
      return;
    }
    finding.request(
        outdated -> answer(judgement.get(), colour.get(), outdated),
        found -> picture.set(Optional.of(found)),
        failures);
  }

  private RecipesPicture answer(
      Judgement judgement, Selection.OfColour colour, BooleanSupplier outdated) {
    Kit kit = judgement.kit();
    List<String> box =
        judgement.earnings().stream()
            .map(earning -> earning.paintId())
            .filter(id -> !colour.withoutPaintId().equals(Optional.of(id)))
            .toList();
    List<String> shelf =
        kit.shelf().paints().stream()
            .filter(paint -> paint.ownership() == Ownership.OWNED || box.contains(paint.id()))
            .map(Paint::id)
            .filter(id -> !colour.withoutPaintId().equals(Optional.of(id)))
            .toList();
    List<Match> fromBox = recipes(judgement, box, colour.lab(), ALTERNATIVES, outdated);
    List<Match> best = recipes(judgement, shelf, colour.lab(), 1, outdated);
    Optional<Match> fromShelf =
        best.stream()
            .filter(match -> fromBox.stream().noneMatch(m -> m.recipe().equals(match.recipe())))
            .findFirst();
    Mixer mixer = new Mixer(judgement.table());
    double error =
        Stream.concat(fromBox.stream(), fromShelf.stream())
            .mapToDouble(match -> mixer.expectedError(match.recipe()))
            .max()
            .orElse(0);
    return new RecipesPicture(colour, kit, fromBox, fromShelf, mixer, error);
  }

  private List<Match> recipes(
      Judgement judgement, List<String> paints, Lab target, int most, BooleanSupplier outdated) {
    return book.nearest(
        judgement.table(), paints, judgement.kit().washes(), target, most, outdated);
  }
}
