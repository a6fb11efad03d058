package org.panwright.app.spots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.panwright.app.swatches.PictureMarks;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.spot.Spot;
import org.panwright.swatch.spot.SpotKind;

/** The spots on the picture, and what the next one will be. */
public final class SpotMarks implements PictureMarks {
  /** At first a spot is this share of the picture's shorter side. */
  private static final double SIDE = 0.025;

  private final ReadOnlyObjectWrapper<List<Spot>> spots = new ReadOnlyObjectWrapper<>(List.of());
  private final IntegerProperty picked = new SimpleIntegerProperty(NONE);
  private final ObjectProperty<SpotKind> nextKind = new SimpleObjectProperty<>(SpotKind.PAPER);
  private final ObjectProperty<Optional<String>> nextPaint =
      new SimpleObjectProperty<>(Optional.empty());
  private double nextSide = 1;
  private double right;
  private double bottom;

  /** All spots, in the order they were placed. */
  ReadOnlyObjectProperty<List<Spot>> spotsProperty() {
    return spots.getReadOnlyProperty();
  }

  /** What the next spot will be of. */
  ObjectProperty<SpotKind> nextKindProperty() {
    return nextKind;
  }

  /** The paint of the next spot, if it is a coat. */
  ObjectProperty<Optional<String>> nextPaintProperty() {
    return nextPaint;
  }

  /** Starts anew on another picture. */
  void layOn(Picture picture) {
    right = picture.width() - 1.0;
    bottom = picture.height() - 1.0;
    nextSide = Math.max(4, SIDE * Math.min(picture.width(), picture.height()));
    picked.set(NONE);
    spots.set(List.of());
  }

  /** Puts another spot in the place of one. */
  void change(int place, Spot changed) {
    List<Spot> all = new ArrayList<>(spots.get());
    all.set(place, changed);
    spots.set(List.copyOf(all));
  }

  /** The side of the spot in hand in pixels, or of the next one. */
  double sidePx() {
    return picked.get() == NONE ? nextSide : spots.get().get(picked.get()).sidePx();
  }

  /** The largest side there can be. */
  double mostSidePx() {
    return Math.max(8, Math.min(right, bottom) / 4);
  }

  /** Makes the spot in hand, and those placed from now on, larger or smaller. */
  void resize(double sidePx) {
    nextSide = Math.max(4, Math.min(mostSidePx(), sidePx));
    if (picked.get() != NONE) {
      change(picked.get(), spots.get().get(picked.get()).withSide(nextSide));
    }
  }

  @Override
  public List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    for (Spot spot : spots.get()) {
      marks.add(new Mark(String.valueOf(marks.size() + 1), spot.middle(), spot.sidePx() / 2));
    }
    return marks;
  }

  @Override
  public boolean areFrame() {
    return false;
  }

  @Override
  public List<List<Point>> outlines() {
    return List.of();
  }

  @Override
  public IntegerProperty pickedProperty() {
    return picked;
  }

  @Override
  public void move(int mark, Point place) {
    change(
        mark,
        spots
            .get()
            .get(mark)
            .at(
                new Point(
                    Math.max(0, Math.min(right, place.x())),
                    Math.max(0, Math.min(bottom, place.y())))));
  }

  /** Places the next spot there and takes it in hand. */
  @Override
  public void pointAt(Point place) {
    SpotKind kind = nextKind.get();
    add(new Spot(kind, kind.isCoat() ? nextPaint.get() : Optional.empty(), place, nextSide));
  }

  /** Adds a spot and takes it in hand. */
  public void add(Spot spot) {
    List<Spot> all = new ArrayList<>(spots.get());
    all.add(spot);
    spots.set(List.copyOf(all));
    picked.set(all.size() - 1);
  }

  @Override
  public void remove(int mark) {
    if (mark >= 0 && mark < spots.get().size()) {
      List<Spot> all = new ArrayList<>(spots.get());
      all.remove(mark);
      picked.set(NONE);
      spots.set(List.copyOf(all));
      picked.set(Math.min(mark, all.size() - 1));
    }
  }

  @Override
  public void whenChanged(Runnable then) {
    spots.addListener(changed -> then.run());
    picked.addListener(changed -> then.run());
  }
}
