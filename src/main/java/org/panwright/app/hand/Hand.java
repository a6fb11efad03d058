package org.panwright.app.hand;

import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.kit.Edit;
import org.panwright.kit.Lineup;
import org.panwright.paint.Paint;
import org.panwright.words.HandWords;

/**
 * The painter's hand between shelf and box: pick up, hover with a preview, put down or let go.
 *
 * <p>The same for the mouse and for keys. Decides what may be put where; the views only show it. It
 * also speaks: {@link #statusProperty} says in words what is held and what will happen, or what
 * happened last. For the JavaFX thread.
 */
public final class Hand {
  private final Session session;
  private final ReadOnlyObjectWrapper<Optional<Holding>> holding =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyStringWrapper status = new ReadOnlyStringWrapper(HandWords.idle());

  public Hand(Session session) {
    this.session = session;
    session.historyProperty().addListener((o, before, now) -> letGoOfWhatIsGone());
    session.lineupProperty().addListener((o, before, now) -> letGoOfWhatIsGone());
  }

  /** What is held, if anything. */
  public ReadOnlyObjectProperty<Optional<Holding>> holdingProperty() {
    return holding.getReadOnlyProperty();
  }

  /** What is held; see {@link #holdingProperty}. */
  public Optional<Holding> holding() {
    return holding.get();
  }

  /** One sentence, never empty: what is held and will happen, else what happened last. */
  public ReadOnlyStringProperty statusProperty() {
    return status.getReadOnlyProperty();
  }

  /**
   * Picks something up.
   *
   * @return whether there was something to pick up
   */
  public boolean pickUp(Held held, Holding.Means means) {
    Optional<Paint> paint = paint(held);
    if (paint.isEmpty()) {
      return false;
    }
    session.endPreview();
    holding.set(Optional.of(new Holding(held, means, Optional.empty(), Optional.empty())));
    status.set(
        means == Holding.Means.KEYS
            ? HandWords.pickedUpByKeys(paint.get())
            : HandWords.pickedUp(paint.get()));
    return true;
  }

  /** Hovers over a spot: the window shows what putting down there would bring. */
  public void hover(Spot spot) {
    Optional<Holding> now = holding();
    if (now.isEmpty() || now.get().spot().equals(Optional.of(spot))) {
      return;
    }
    Held held = now.get().held();
    Optional<Outcome> outcome =
        session.lineup().flatMap(lineup -> Outcome.of(session.kit(), lineup, held, spot));
    holding.set(Optional.of(new Holding(held, now.get().means(), Optional.of(spot), outcome)));
    outcome.map(Outcome::promise).ifPresent(status::set);
    outcome.flatMap(Outcome::edit).ifPresentOrElse(session::preview, session::endPreview);
  }

  /** Leaves the spot, still holding. */
  public void leave() {
    Optional<Holding> now = holding();
    if (now.isPresent() && now.get().spot().isPresent()) {
      pickUp(now.get().held(), now.get().means());
    }
  }

  /**
   * Puts down where it hovers.
   *
   * @return whether the kit changed
   */
  public boolean putDown() {
    Optional<Outcome> outcome = holding().flatMap(Holding::outcome);
    Optional<Spot> spot = holding().flatMap(Holding::spot);
    release();
    if (outcome.isEmpty()) {
      return false;
    }
    outcome.get().edit().ifPresent(session::perform);
    if (spot.get() instanceof Spot.AtWell at) {
      session.selectionProperty().set(new Selection.OfWell(at.wellId()));
    }
    status.set(outcome.get().report());
    return outcome.get().edit().isPresent();
  }

  /** Lets go; all stays as it was. */
  public void cancel() {
    if (holding().isPresent()) {
      release();
      status.set(HandWords.putBack());
    }
  }

  /** Does an edit that needed no carrying, and says so. */
  public void perform(Edit edit, String report) {
    release();
    session.perform(edit);
    status.set(report);
  }

  /** Says something without doing anything, unless something is held: then that goes first. */
  public void say(String sentence) {
    if (holding().isEmpty()) {
      status.set(sentence);
    }
  }

  private void release() {
    holding.set(Optional.empty());
    session.endPreview();
  }

  private void letGoOfWhatIsGone() {
    if (holding().isPresent()) {
      cancel();
    } else {
      status.set(HandWords.idle());
    }
  }

  private Optional<Paint> paint(Held held) {
    if (held instanceof Held.FromShelf fromShelf) {
      return session.kit().shelf().find(fromShelf.paintId());
    }
    String wellId = ((Held.FromWell) held).wellId();
    Optional<Lineup> lineup = session.lineup();
    return lineup.flatMap(l -> Outcome.paintIn(session.kit(), l, wellId));
  }
}
