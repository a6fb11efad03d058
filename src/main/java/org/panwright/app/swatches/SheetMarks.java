package org.panwright.app.swatches;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import org.panwright.swatch.picture.Homography;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.picture.Zone;
import org.panwright.swatch.sheet.SheetFormat;
import org.panwright.swatch.sheet.SheetPlan;
import org.panwright.words.SwatchesWords;

/** The corners of a printed sheet and, where one lies on the picture, the place of a card. */
final class SheetMarks implements PictureMarks {
  private static final int CARD = 4;

  /** Half the side of what is read of a card, as a share of the sheet's upper edge. */
  private static final double CARD_HALF = 0.02;

  private final Corners corners;
  private final BooleanProperty cardLies = new SimpleBooleanProperty();
  private final ReadOnlyObjectWrapper<Optional<Point>> card =
      new ReadOnlyObjectWrapper<>(Optional.empty());

  SheetMarks(Corners corners) {
    this.corners = corners;
    cardLies.addListener(changed -> clearCard());
  }

  /** Whether the painter says that a card lies on the picture. */
  BooleanProperty cardLiesProperty() {
    return cardLies;
  }

  /** Where it lies, in pixels, once that was pointed at. */
  ReadOnlyObjectProperty<Optional<Point>> cardProperty() {
    return card.getReadOnlyProperty();
  }

  /** Forgets where the card lies. */
  void clearCard() {
    if (card.get().isPresent()) {
      corners.pickedProperty().set(0);
      card.set(Optional.empty());
    }
  }

  /** The square of the card that is read, in millimetres of the sheet. */
  Optional<Zone> cardZone(SheetFormat format) {
    List<Point> plan = new SheetPlan(format).corners();
    double side = 2 * CARD_HALF * plan.get(0).distance(plan.get(1));
    return card.get()
        .flatMap(
            place ->
                Homography.of(corners.placesProperty().get(), plan)
                    .map(onSheet -> Zone.around(onSheet.map(place), side)));
  }

  @Override
  public List<Mark> marks() {
    List<Mark> marks = new ArrayList<>(corners.marks());
    List<Point> four = corners.placesProperty().get();
    card.get()
        .filter(place -> !four.isEmpty())
        .ifPresent(
            place ->
                marks.add(
                    new Mark(
                        SwatchesWords.CARD_MARK,
                        place,
                        Math.max(1, CARD_HALF * four.get(0).distance(four.get(1))))));
    return marks;
  }

  @Override
  public boolean areFrame() {
    return true;
  }

  @Override
  public List<List<Point>> outlines() {
    return corners.outlines();
  }

  @Override
  public IntegerProperty pickedProperty() {
    return corners.pickedProperty();
  }

  @Override
  public void move(int mark, Point place) {
    if (mark == CARD) {
      card.set(Optional.of(corners.within(place)));
    } else {
      corners.move(mark, place);
    }
  }

  /** Puts the card there, if one lies on the picture, and takes it in hand. */
  @Override
  public void pointAt(Point place) {
    if (cardLies.get()) {
      move(CARD, place);
      corners.pickedProperty().set(CARD);
    }
  }

  @Override
  public void remove(int mark) {
    if (mark == CARD) {
      clearCard();
    }
  }

  @Override
  public void whenChanged(Runnable then) {
    corners.whenChanged(then);
    card.addListener(changed -> then.run());
  }
}
