package org.panwright.app.swatches;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.Point;

/** The four corners of something flat on a picture, clockwise from its upper left. */
public final class Corners implements PictureMarks {
  /** Where corners lie that nobody put anywhere: this share of the picture from its edges. */
  private static final double INSET = 0.08;

  private final ReadOnlyObjectWrapper<List<Point>> places = new ReadOnlyObjectWrapper<>(List.of());
  private final ObjectProperty<List<List<Point>>> outlines = new SimpleObjectProperty<>(List.of());
  private final IntegerProperty picked = new SimpleIntegerProperty(0);
  private Consumer<Point> pointed = place -> {};
  private double right;
  private double bottom;
  private boolean placed;

  /** Four places in pixels; none without a picture. */
  public ReadOnlyObjectProperty<List<Point>> placesProperty() {
    return places.getReadOnlyProperty();
  }

  /** Whether somebody put them where they are, or they were found there. */
  public boolean arePlaced() {
    return placed;
  }

  /** Lays the corners on another picture, near its edges for the painter to move. */
  public void layOn(Picture picture) {
    double x = INSET * picture.width();
    double y = INSET * picture.height();
    right = picture.width() - 1.0;
    bottom = picture.height() - 1.0;
    placed = false;
    start(
        List.of(
            new Point(x, y),
            new Point(picture.width() - x, y),
            new Point(picture.width() - x, picture.height() - y),
            new Point(x, picture.height() - y)));
  }

  /** Lays the corners on another picture, where they were found. */
  public void layOn(Picture picture, List<Point> found) {
    right = picture.width() - 1.0;
    bottom = picture.height() - 1.0;
    placed = true;
    start(found);
  }

  private void start(List<Point> four) {
    outlines.set(List.of());
    picked.set(0);
    places.set(List.copyOf(four));
  }

  /** Draws what is read between them. */
  public void outline(List<List<Point>> lines) {
    outlines.set(lines);
  }

  @Override
  public List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    for (Point place : places.get()) {
      marks.add(new Mark(String.valueOf(marks.size() + 1), place, 0));
    }
    return marks;
  }

  @Override
  public boolean areFrame() {
    return true;
  }

  @Override
  public List<List<Point>> outlines() {
    return outlines.get();
  }

  @Override
  public IntegerProperty pickedProperty() {
    return picked;
  }

  @Override
  public void move(int corner, Point place) {
    if (places.get().isEmpty()) {
      return;
    }
    List<Point> moved = new ArrayList<>(places.get());
    moved.set(corner, within(place));
    placed = true;
    places.set(List.copyOf(moved));
  }

  /** The place of the picture nearest to another. */
  Point within(Point place) {
    return new Point(
        Math.max(0, Math.min(right, place.x())), Math.max(0, Math.min(bottom, place.y())));
  }

  /** Says what is done when the painter points at a place that is no corner. */
  public void whenPointedAt(Consumer<Point> then) {
    pointed = then;
  }

  @Override
  public void pointAt(Point place) {
    pointed.accept(place);
  }

  @Override
  public void remove(int corner) {
    // There are four, always.
  }

  @Override
  public void whenChanged(Runnable then) {
    places.addListener(changed -> then.run());
    outlines.addListener(changed -> then.run());
    picked.addListener(changed -> then.run());
  }
}
