package org.panwright.app.ring;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.panwright.app.Selection;
import org.panwright.app.recipes.Wanted;
import org.panwright.colour.Hue;

/**
 * A place of the hue circle that is gone to by mouse or keys and picked as a colour to be met.
 * Knows no control.
 */
public final class RingCursor {
  /** One step round the circle. */
  static final double TURN_DEG = 5;

  /** One step from grey towards pure, in OKLCh chroma. */
  static final double OUTWARD = 0.02;

  /** Chroma at the rim. */
  static final double MOST_CHROMA = 0.24;

  private static final Place TOP = new Place(0.12, 90);

  private final Consumer<Selection.OfColour> picked;
  private final ReadOnlyObjectWrapper<Optional<Place>> place =
      new ReadOnlyObjectWrapper<>(Optional.empty());

  /**
   * A direction and how far from grey.
   *
   * @param chroma OKLCh, 0..0.24
   * @param hueDeg OKLCh, 0 up to 360
   */
  public record Place(double chroma, double hueDeg) {
    public Place {
      chroma = Math.max(0, Math.min(MOST_CHROMA, chroma));
      hueDeg = Hue.normal(hueDeg);
    }
  }

  /**
   * @param picked told the colour that is picked
   */
  public RingCursor(Consumer<Selection.OfColour> picked) {
    this.picked = picked;
  }

  /** Where it is; empty as long as nobody went anywhere. */
  public ReadOnlyObjectProperty<Optional<Place>> placeProperty() {
    return place.getReadOnlyProperty();
  }

  /** Goes round by so many steps, anticlockwise if positive; the first step only shows it. */
  void turn(int steps) {
    step(from -> new Place(from.chroma(), from.hueDeg() + steps * TURN_DEG));
  }

  /** Goes so many steps away from grey. */
  void outward(int steps) {
    step(from -> new Place(from.chroma() + steps * OUTWARD, from.hueDeg()));
  }

  private void step(UnaryOperator<Place> way) {
    place.set(Optional.of(place.get().map(way).orElse(TOP)));
  }

  /** Goes to a place and picks it. */
  void pick(double chroma, double hueDeg) {
    place.set(Optional.of(new Place(chroma, hueDeg)));
    pick();
  }

  /** Picks the place it is at, if it is anywhere. */
  void pick() {
    place.get().ifPresent(at -> picked.accept(Wanted.hue(at.chroma(), at.hueDeg())));
  }
}
