package org.panwright.app.swatches;

import java.util.List;
import javafx.beans.property.IntegerProperty;
import org.panwright.swatch.picture.Point;

/** What the painter puts in its place on a picture: the corners of a sheet or chart, or spots. */
public interface PictureMarks {
  /** No mark is picked. */
  int NONE = -1;

  /**
   * One of them.
   *
   * @param name short, drawn beside it
   * @param place in pixels of the picture
   * @param halfSide of the square that is read there, in pixels of the picture; 0 for a bare place
   */
  record Mark(String name, Point place, double halfSide) {}

  /** All marks, in the order in which keys pick them. */
  List<Mark> marks();

  /** Whether those that are bare places are the corners of one frame, in order. */
  boolean areFrame();

  /** What else is to be drawn: closed lines in pixels of the picture. */
  List<List<Point>> outlines();

  /** The place in the list of the mark that keys move, or {@link #NONE}. */
  IntegerProperty pickedProperty();

  /** Puts a mark elsewhere, within the picture. */
  void move(int mark, Point place);

  /** A place without a mark was pointed at. */
  void pointAt(Point place);

  /** Takes a mark away, where that is possible. */
  void remove(int mark);

  /** Has something done after each change of what is drawn. */
  void whenChanged(Runnable then);
}
