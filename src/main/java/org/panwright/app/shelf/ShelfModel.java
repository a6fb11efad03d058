package org.panwright.app.shelf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.app.chip.FamilySense;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.chip.Tones;
import org.panwright.app.fx.Latest;
import org.panwright.app.hand.Hand;
import org.panwright.app.hand.Held;
import org.panwright.app.hand.Holding;
import org.panwright.app.hand.Outcome;
import org.panwright.app.hand.Spot;
import org.panwright.app.recipes.Wanted;
import org.panwright.kit.Edit;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.paint.Paint;
import org.panwright.paint.Paper;
import org.panwright.paint.WashStrengths;
import org.panwright.words.ShelfWords;

/**
 * What the shelf shows and what can be done from it. For the JavaFX thread; needs no toolkit.
 *
 * <p>Rows whose tones are not known yet are worked out away from the thread if they are many; until
 * then the old rows stay.
 */
public final class ShelfModel {
  /** So many new paints are worked out at once without anyone noticing. */
  private static final int FEW = 24;

  private final Session session;
  private final ToneBook book;
  private final Hand hand;
  private final Latest<Boolean> toning;
  private final ObjectProperty<ShelfQuery> query = new SimpleObjectProperty<>(ShelfQuery.ALL);
  private final ReadOnlyObjectWrapper<List<ShelfRow>> rows = new ReadOnlyObjectWrapper<>(List.of());
  private final ReadOnlyObjectWrapper<Optional<String>> picked =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private Map<String, ShelfRow> known = Map.of();
  private List<ShelfRow> all = List.of();
  private Optional<Ground> knownOn = Optional.empty();

  /** What tones depend on beside the paint. */
  private record Ground(Paper paper, WashStrengths washes) {}

  /**
   * @param away where tones of many paints are worked out
   * @param home the JavaFX thread
   */
  public ShelfModel(Session session, ToneBook book, Hand hand, Executor away, Executor home) {
    this.session = session;
    this.book = book;
    this.hand = hand;
    toning = new Latest<>(away, home);
    session.historyProperty().addListener((o, before, now) -> refresh());
    session.lineupProperty().addListener((o, before, now) -> refresh());
    session.selectionProperty().addListener((o, before, now) -> refreshPicked());
    query.addListener((o, before, now) -> select());
    refresh();
  }

  /** The rows shown, in order. */
  public ReadOnlyObjectProperty<List<ShelfRow>> rowsProperty() {
    return rows.getReadOnlyProperty();
  }

  /** What is looked for. */
  public ObjectProperty<ShelfQuery> queryProperty() {
    return query;
  }

  /** The paint picked on the shelf or in a well, if any. */
  public ReadOnlyObjectProperty<Optional<String>> pickedProperty() {
    return picked.getReadOnlyProperty();
  }

  /** The painter's hand. */
  public Hand hand() {
    return hand;
  }

  /** How many paints the whole shelf holds. */
  public int shelfSize() {
    return session.kit().shelf().paints().size();
  }

  /** Picks a paint, which picks no well, and says what can be done with it. */
  public void pick(String paintId) {
    if (!picked.get().equals(Optional.of(paintId))) {
      session.selectionProperty().set(new Selection.OfPaint(paintId));
      session.kit().shelf().find(paintId).map(ShelfWords::picked).ifPresent(hand::say);
    }
  }

  /** Takes a paint in hand, if there is a box to carry it to. */
  public boolean pickUp(String paintId, Holding.Means means) {
    if (lineup().isEmpty()) {
      hand.say(ShelfWords.noLineup());
      return false;
    }
    session.selectionProperty().set(new Selection.OfPaint(paintId));
    return hand.pickUp(new Held.FromShelf(paintId), means);
  }

  /** The wells of the box looked at, in their order; none if there is no lineup. */
  public List<Well> wells() {
    return lineup().map(lineup -> session.kit().boxOf(lineup).wells()).orElse(List.of());
  }

  /** The paint in a well, if any. */
  public Optional<Paint> occupant(String wellId) {
    return lineup().flatMap(lineup -> Outcome.paintIn(session.kit(), lineup, wellId));
  }

  /** Puts a paint into a well. */
  public void place(String paintId, String wellId) {
    if (hand.pickUp(new Held.FromShelf(paintId), Holding.Means.POINTER)) {
      hand.hover(new Spot.AtWell(wellId));
      hand.putDown();
    }
  }

  /** The first empty well. */
  public Optional<Well> nextEmpty() {
    return lineup()
        .flatMap(lineup -> wells().stream().filter(w -> lineup.in(w.id()).isEmpty()).findFirst());
  }

  /** Puts a paint into the first empty well, or says that there is none. */
  public void placeInNextEmpty(String paintId) {
    nextEmpty()
        .ifPresentOrElse(
            well -> place(paintId, well.id()),
            () -> hand.say(lineup().isPresent() ? ShelfWords.full() : ShelfWords.noLineup()));
  }

  /** Takes a paint out of all wells of the lineup, as one step. */
  public void takeOut(String paintId) {
    Optional<Paint> paint = session.kit().shelf().find(paintId);
    Optional<Lineup> lineup = lineup();
    if (paint.isEmpty() || lineup.isEmpty()) {
      return;
    }
    Map<String, Filling> kept = new HashMap<>(lineup.get().fillings());
    List<String> holding = new ArrayList<>();
    for (Well well : wells()) {
      Filling filling = kept.get(well.id());
      if (filling != null && filling.paintId().equals(paintId)) {
        holding.add(well.id());
        kept.remove(well.id());
      }
    }
    if (!holding.isEmpty()) {
      Edit edit =
          holding.size() == 1
              ? new Edit.EmptyWell(lineup.get().id(), holding.get(0))
              : new Edit.ChangeLineup(lineup.get().withFillings(kept));
      hand.perform(edit, ShelfWords.takenOut(paint.get()));
    }
  }

  /** The lineup looked at as it is in the kit now: while an edit arrives the session's may lag. */
  private Optional<Lineup> lineup() {
    return session.lineup().flatMap(l -> session.kit().lineup(l.id()));
  }

  private void refresh() {
    Kit kit = session.kit();
    Ground ground = new Ground(kit.paper(), kit.washes());
    if (!knownOn.equals(Optional.of(ground))) {
      known = Map.of();
      knownOn = Optional.of(ground);
    }
    List<Paint> missing =
        kit.shelf().paints().stream()
            .filter(paint -> knownRow(paint).isEmpty())
            .filter(paint -> !book.holds(paint, kit.paper(), kit.washes()))
            .toList();
    if (missing.size() > FEW) {
      toning.request(
          outdated -> tone(missing, kit, outdated),
          done -> refresh(),
          failure -> {
            throw failure;
          });
      return;
    }
    toning.cancel();
    gather(kit);
    select();
    refreshPicked();
  }

  private boolean tone(List<Paint> missing, Kit kit, BooleanSupplier outdated) {
    for (Paint paint : missing) {
      if (outdated.getAsBoolean()) {
        throw new CancellationException();
      }
      book.of(paint, kit.paper(), kit.washes());
    }
    return true;
  }

  private void gather(Kit kit) {
    Map<String, List<Well>> placed = placed(kit);
    Map<String, ShelfRow> fresh = new HashMap<>();
    List<ShelfRow> shelf = new ArrayList<>();
    for (Paint paint : kit.shelf().paints()) {
      List<Well> wells = placed.getOrDefault(paint.id(), List.of());
      ShelfRow row =
          knownRow(paint)
              .map(before -> before.wells().equals(wells) ? before : before.with(wells))
              .orElseGet(() -> row(paint, kit, wells));
      fresh.put(paint.id(), row);
      shelf.add(row);
    }
    known = fresh;
    all = shelf;
  }

  private void select() {
    rows.set(query.get().select(all));
  }

  private Optional<ShelfRow> knownRow(Paint paint) {
    return Optional.ofNullable(known.get(paint.id())).filter(row -> row.paint().equals(paint));
  }

  private ShelfRow row(Paint paint, Kit kit, List<Well> wells) {
    Tones tones = book.of(paint, kit.paper(), kit.washes());
    return ShelfRow.of(paint, tones, FamilySense.of(paint, tones, book.library()), wells);
  }

  private Map<String, List<Well>> placed(Kit kit) {
    Map<String, List<Well>> placed = new HashMap<>();
    lineup()
        .ifPresent(
            lineup -> {
              for (Well well : kit.boxOf(lineup).wells()) {
                lineup
                    .in(well.id())
                    .map(Filling::paintId)
                    .ifPresent(
                        id -> placed.computeIfAbsent(id, none -> new ArrayList<>()).add(well));
              }
            });
    return placed;
  }

  /** Looks for mixes of the box that come near a paint. */
  void mixFromBox(String paintId) {
    Wanted.pickPaint(session, paintId);
  }

  private void refreshPicked() {
    Selection selection = session.selectionProperty().get();
    if (selection instanceof Selection.OfPaint of) {
      picked.set(session.kit().shelf().find(of.paintId()).map(Paint::id));
    } else if (selection instanceof Selection.OfWell of) {
      picked.set(lineup().flatMap(l -> l.in(of.wellId())).map(Filling::paintId));
    } else {
      picked.set(Optional.empty());
    }
  }
}
