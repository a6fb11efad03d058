package org.panwright.app.swatches;

import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import org.panwright.app.fx.Fitted;
import org.panwright.swatch.picture.Point;

/** Draws the marks on a picture: rings at points, squares, what is read outlined. */
final class MarkPen {
  /** Half the width of a ring. */
  static final double HANDLE = 11;

  private final GraphicsContext pen;
  private final DeskView view;
  private final Color accent;
  private final boolean focused;

  /**
   * @param accent the colour of the mark in hand and of the frame
   * @param focused whether the keyboard moves the mark in hand
   */
  MarkPen(GraphicsContext pen, DeskView view, Color accent, boolean focused) {
    this.pen = pen;
    this.view = view;
    this.accent = accent;
    this.focused = focused;
  }

  /** What is read, to be seen on light and dark. */
  void outline(List<Point> places) {
    pen.setLineWidth(1);
    stroke(places, Color.gray(1, 0.9), 0.5);
    stroke(places, Color.gray(0, 0.8), -0.5);
  }

  /** The lines between the corners. */
  void frame(List<Point> corners) {
    pen.setLineWidth(1.5);
    stroke(corners, accent, 0);
  }

  /** A mark with its name. */
  void mark(PictureMarks.Mark mark, boolean picked) {
    pen.setLineWidth(picked && focused ? 4 : 2);
    if (mark.halfSide() > 0) {
      square(mark, picked);
    } else {
      ring(mark, picked);
    }
  }

  private void stroke(List<Point> places, Color ink, double off) {
    double[] x = new double[places.size()];
    double[] y = new double[places.size()];
    for (int i = 0; i < x.length; i++) {
      Point p = view.onDesk(places.get(i));
      x[i] = p.x() + off;
      y[i] = p.y() + off;
    }
    pen.setStroke(ink);
    pen.strokePolygon(x, y, x.length);
  }

  private void ring(PictureMarks.Mark mark, boolean picked) {
    Point at = view.onDesk(mark.place());
    pen.setStroke(Color.WHITE);
    pen.strokeOval(at.x() - HANDLE - 1, at.y() - HANDLE - 1, 2 * HANDLE + 2, 2 * HANDLE + 2);
    pen.setStroke(picked ? accent : Color.BLACK);
    pen.strokeOval(at.x() - HANDLE, at.y() - HANDLE, 2 * HANDLE, 2 * HANDLE);
    pen.setLineWidth(1);
    pen.strokeLine(at.x() - 4, at.y(), at.x() + 4, at.y());
    pen.strokeLine(at.x(), at.y() - 4, at.x(), at.y() + 4);
    name(mark, at.x() + HANDLE + 2, at.y() - HANDLE - 8);
  }

  private void square(PictureMarks.Mark mark, boolean picked) {
    Point at = view.onDesk(mark.place());
    double half = mark.halfSide() * view.scale();
    pen.setStroke(Color.WHITE);
    pen.strokeRect(at.x() - half - 1, at.y() - half - 1, 2 * half + 2, 2 * half + 2);
    pen.setStroke(picked ? accent : Color.BLACK);
    pen.strokeRect(at.x() - half, at.y() - half, 2 * half, 2 * half);
    name(mark, at.x() + half + 3, at.y() - half - 8);
  }

  private void name(PictureMarks.Mark mark, double x, double y) {
    double width = 5 + Fitted.width(mark.name(), pen.getFont());
    pen.setFill(Color.WHITE);
    pen.fillRect(x, y, width, 16);
    pen.setFill(Color.BLACK);
    pen.fillText(mark.name(), x + 3, y + 13);
  }
}
