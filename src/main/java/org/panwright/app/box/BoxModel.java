package org.panwright.app.box;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.hand.Hand;
import org.panwright.app.hand.Held;
import org.panwright.app.hand.Holding;
import org.panwright.app.hand.Outcome;
import org.panwright.app.hand.Spot;
import org.panwright.kit.Box;
import org.panwright.kit.Edit;
import org.panwright.kit.Fill;
import org.panwright.kit.History;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.paint.Paint;
import org.panwright.words.BoxWords;

/**
 * What the box shows and what can be done in it. For the JavaFX thread; needs no toolkit.
 *
 * <p>An undo or redo picks the well it touched, so that the eye finds what has changed.
 */
public final class BoxModel {
  private final Session session;
  private final ToneBook book;
  private final Hand hand;
  private final ReadOnlyObjectWrapper<Optional<BoxPicture>> picture =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<String>> picked =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Set<String>> related = new ReadOnlyObjectWrapper<>(Set.of());

  public BoxModel(Session session, ToneBook book, Hand hand) {
    this.session = session;
    this.book = book;
    this.hand = hand;
    session
        .historyProperty()
        .addListener(
            (o, before, now) -> {
              refresh();
              pickTouched(before, now);
            });
    session.lineupProperty().addListener((o, before, now) -> refresh());
    session.selectionProperty().addListener((o, before, now) -> refreshPicked());
    refresh();
  }

  /** The box of the lineup looked at; empty if there is no lineup. */
  public ReadOnlyObjectProperty<Optional<BoxPicture>> pictureProperty() {
    return picture.getReadOnlyProperty();
  }

  /** The id of the well picked, if one is. */
  public ReadOnlyObjectProperty<Optional<String>> pickedProperty() {
    return picked.getReadOnlyProperty();
  }

  /** The ids of the wells that hold the paint or the paints of the mix picked elsewhere. */
  public ReadOnlyObjectProperty<Set<String>> relatedProperty() {
    return related.getReadOnlyProperty();
  }

  /** The painter's hand. */
  public Hand hand() {
    return hand;
  }

  /** Picks a well, and says what can be done with it. */
  public void pick(String wellId) {
    session.selectionProperty().set(new Selection.OfWell(wellId));
    well(wellId)
        .ifPresent(
            well ->
                hand.say(
                    occupant(wellId)
                        .map(paint -> BoxWords.picked(well, paint))
                        .orElseGet(() -> BoxWords.emptyAlready(well))));
  }

  /** Takes the paint of a well in hand, or says that the well is empty. */
  public boolean pickUp(String wellId, Holding.Means means) {
    boolean isThere = hand.pickUp(new Held.FromWell(wellId), means);
    if (!isThere) {
      well(wellId).ifPresent(well -> hand.say(BoxWords.emptyAlready(well)));
    }
    return isThere;
  }

  /** Where a paint picked up by keys hovers first: the picked well, else the first empty one. */
  public Optional<Well> firstStop() {
    return lineup()
        .flatMap(
            lineup -> {
              Box box = session.kit().boxOf(lineup);
              return picked
                  .get()
                  .flatMap(box::find)
                  .filter(well -> lineup.in(well.id()).isEmpty())
                  .or(
                      () ->
                          box.wells().stream()
                              .filter(well -> lineup.in(well.id()).isEmpty())
                              .findFirst())
                  .or(() -> picked.get().flatMap(box::find))
                  .or(() -> Optional.of(box.wells().get(0)));
            });
  }

  /** The paint in a well, if any. */
  public Optional<Paint> occupant(String wellId) {
    return lineup().flatMap(lineup -> Outcome.paintIn(session.kit(), lineup, wellId));
  }

  /** Moves the paint of a well to another; what is there changes places with it. */
  public void move(String fromWellId, String toWellId) {
    if (pickUp(fromWellId, Holding.Means.POINTER)) {
      hand.hover(new Spot.AtWell(toWellId));
      hand.putDown();
    }
  }

  /** Takes the paint out of a well, or says that the well is empty. */
  public void empty(String wellId) {
    if (pickUp(wellId, Holding.Means.POINTER)) {
      hand.hover(new Spot.AtShelf());
      hand.putDown();
    }
  }

  /** Fills a well that holds a paint to another height. */
  public void fill(String wellId, Fill fill) {
    Optional<Lineup> lineup = lineup();
    Optional<Paint> paint = occupant(wellId);
    Optional<Well> well = well(wellId);
    if (paint.isPresent() && well.isPresent()) {
      hand.perform(
          new Edit.SetFill(lineup.orElseThrow().id(), wellId, fill),
          BoxWords.filled(paint.get(), well.get(), fill));
    } else {
      well.ifPresent(w -> hand.say(BoxWords.emptyAlready(w)));
    }
  }

  /** Fills a well to the next height: full, half, dab, and full again. */
  public void cycleFill(String wellId) {
    Fill[] fills = Fill.values();
    Fill next =
        lineup()
            .flatMap(lineup -> lineup.in(wellId))
            .map(filling -> fills[(filling.fill().ordinal() + 1) % fills.length])
            .orElse(Fill.FULL);
    fill(wellId, next);
  }

  private Optional<Well> well(String wellId) {
    return lineup().flatMap(lineup -> session.kit().boxOf(lineup).find(wellId));
  }

  /** The lineup looked at as it is in the kit now: while an edit arrives the session's may lag. */
  private Optional<Lineup> lineup() {
    return session.lineup().flatMap(l -> session.kit().lineup(l.id()));
  }

  private void refresh() {
    picture.set(lineup().map(this::picture));
    refreshPicked();
  }

  private BoxPicture picture(Lineup lineup) {
    return BoxPicture.of(session.kit(), lineup, book);
  }

  private void refreshPicked() {
    Selection selection = session.selectionProperty().get();
    Set<String> paints = Set.of();
    Optional<String> wellId = Optional.empty();
    if (selection instanceof Selection.OfWell of) {
      wellId = well(of.wellId()).map(Well::id);
    } else if (selection instanceof Selection.OfPaint of) {
      paints = Set.of(of.paintId());
    } else if (selection instanceof Selection.OfMix of) {
      paints =
          of.rowPaintId().equals(of.columnPaintId())
              ? Set.of(of.rowPaintId())
              : Set.of(of.rowPaintId(), of.columnPaintId());
    } else if (selection instanceof Selection.OfColour of) {
      paints = Set.copyOf(of.markedPaintIds());
    }
    picked.set(wellId);
    related.set(wellsHolding(paints));
  }

  private Set<String> wellsHolding(Set<String> paintIds) {
    if (paintIds.isEmpty() || picture.get().isEmpty()) {
      return Set.of();
    }
    return picture.get().get().wells().stream()
        .filter(w -> w.content().filter(c -> paintIds.contains(c.paint().id())).isPresent())
        .map(w -> w.well().id())
        .collect(Collectors.toUnmodifiableSet());
  }

  private void pickTouched(History before, History now) {
    int past = now.past().size() - before.past().size();
    int future = now.future().size() - before.future().size();
    Optional<String> touched = Optional.empty();
    if (past == -1 && future == 1) {
      touched = now.redoable().flatMap(edit -> touched(edit, true));
    } else if (past == 1 && future == -1) {
      touched = now.undoable().flatMap(edit -> touched(edit, false));
    }
    touched.flatMap(this::well).map(Well::id).ifPresent(this::pick);
  }

  /** The well of the lineup looked at where the eye should go when an edit is undone or redone. */
  private Optional<String> touched(Edit edit, boolean isUndone) {
    String lineupId = lineup().map(Lineup::id).orElse("");
    if (edit instanceof Edit.PlacePaint place && place.lineupId().equals(lineupId)) {
      return Optional.of(place.wellId());
    }
    if (edit instanceof Edit.EmptyWell empty && empty.lineupId().equals(lineupId)) {
      return Optional.of(empty.wellId());
    }
    if (edit instanceof Edit.SetFill fill && fill.lineupId().equals(lineupId)) {
      return Optional.of(fill.wellId());
    }
    if (edit instanceof Edit.MovePaint move && move.lineupId().equals(lineupId)) {
      return Optional.of(isUndone ? move.fromWellId() : move.toWellId());
    }
    return Optional.empty();
  }
}
