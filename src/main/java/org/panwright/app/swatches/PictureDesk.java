package org.panwright.app.swatches;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.Image;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.paint.Color;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.swatch.picture.Point;
import org.panwright.words.SwatchesWords;

/** The picture with its four corners, to be dragged or moved by keys, and what is read outlined. */
final class PictureDesk extends CanvasRegion {
  private static final double HANDLE = 11;
  private static final double REACH = 22;
  private static final double CLOSER = 1.25;
  private static final double CLOSEST = 40;

  private final PictureModel model;
  private final Supplier<List<List<Point>>> outlines;
  private DeskView view = DeskView.of(1, 1, 1, 1);
  private boolean whole = true;
  private int picked;
  private boolean holding;
  private double lastX;
  private double lastY;

  PictureDesk(PictureModel model, Supplier<List<List<Point>>> outlines) {
    this.model = model;
    this.outlines = outlines;
    getStyleClass().addAll("picture-desk", "swatch-ground");
    setFocusTraversable(true);
    setAccessibleText(SwatchesWords.PICTURE);
    model
        .pictureProperty()
        .addListener(
            changed -> {
              whole = true;
              picked = 0;
              repaint();
            });
    model.cornersProperty().addListener(changed -> repaint());
    focusedProperty().addListener(changed -> repaint());
    setOnMousePressed(this::press);
    setOnMouseDragged(this::drag);
    setOnMouseReleased(event -> holding = false);
    setOnScroll(this::scroll);
    setOnKeyPressed(this::key);
  }

  private void press(MouseEvent event) {
    requestFocus();
    lastX = canvasX(event.getX());
    lastY = canvasY(event.getY());
    holding = false;
    List<Point> corners = model.cornersProperty().get();
    double nearest = REACH;
    for (int i = 0; i < corners.size(); i++) {
      double away = view.onDesk(corners.get(i)).distance(new Point(lastX, lastY));
      if (away < nearest) {
        nearest = away;
        picked = i;
        holding = true;
      }
    }
    repaint();
  }

  private void drag(MouseEvent event) {
    double x = canvasX(event.getX());
    double y = canvasY(event.getY());
    if (holding) {
      Point corner = view.onDesk(model.cornersProperty().get().get(picked));
      model.moveCorner(picked, view.inPicture(corner.plus(x - lastX, y - lastY)));
    } else {
      view = view.moved(x - lastX, y - lastY);
      whole = false;
      repaint();
    }
    lastX = x;
    lastY = y;
  }

  private void scroll(ScrollEvent event) {
    if (event.getDeltaY() != 0) {
      zoom(
          event.getDeltaY() > 0 ? CLOSER : 1 / CLOSER,
          canvasX(event.getX()),
          canvasY(event.getY()));
      event.consume();
    }
  }

  private void zoom(double factor, double x, double y) {
    double scale = view.scale() * factor;
    if (scale < CLOSEST && scale > 1.0 / CLOSEST) {
      view = view.closer(factor, x, y);
      whole = false;
      repaint();
    }
  }

  private void key(KeyEvent event) {
    double step = event.isShiftDown() ? 10 : 1;
    switch (event.getCode()) {
      case LEFT -> move(-step, 0);
      case RIGHT -> move(step, 0);
      case UP -> move(0, -step);
      case DOWN -> move(0, step);
      case DIGIT1, NUMPAD1 -> pick(0);
      case DIGIT2, NUMPAD2 -> pick(1);
      case DIGIT3, NUMPAD3 -> pick(2);
      case DIGIT4, NUMPAD4 -> pick(3);
      case PLUS, ADD, EQUALS -> zoom(CLOSER, getWidth() / 2, getHeight() / 2);
      case MINUS, SUBTRACT -> zoom(1 / CLOSER, getWidth() / 2, getHeight() / 2);
      case DIGIT0, NUMPAD0 -> {
        whole = true;
        repaint();
      }
      default -> {
        return;
      }
    }
    event.consume();
  }

  private void move(double dx, double dy) {
    List<Point> corners = model.cornersProperty().get();
    if (!corners.isEmpty()) {
      model.moveCorner(picked, corners.get(picked).plus(dx, dy));
    }
  }

  private void pick(int corner) {
    picked = corner;
    repaint();
  }

  @Override
  protected void paint(GraphicsContext pen, double width, double height) {
    if (model.pictureProperty().get().isEmpty()) {
      return;
    }
    ShownPicture shown = model.pictureProperty().get().get();
    if (whole) {
      view = DeskView.of(shown.picture().width(), shown.picture().height(), width, height);
    }
    Image image = shown.image();
    pen.drawImage(
        image,
        view.left(),
        view.top(),
        shown.picture().width() * view.scale(),
        shown.picture().height() * view.scale());
    pen.setLineWidth(1);
    for (List<Point> outline : outlines.get()) {
      stroke(pen, outline, Color.gray(1, 0.9), 0.5);
      stroke(pen, outline, Color.gray(0, 0.8), -0.5);
    }
    List<Point> corners = model.cornersProperty().get();
    if (corners.size() == 4) {
      pen.setLineWidth(1.5);
      stroke(pen, corners, accent(), 0);
      for (int i = 0; i < corners.size(); i++) {
        handle(pen, view.onDesk(corners.get(i)), i);
      }
    }
  }

  private void stroke(GraphicsContext pen, List<Point> places, Color ink, double off) {
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

  private void handle(GraphicsContext pen, Point at, int number) {
    boolean isPicked = number == picked;
    pen.setLineWidth(isPicked && isFocused() ? 4 : 2);
    pen.setStroke(Color.WHITE);
    pen.strokeOval(at.x() - HANDLE - 1, at.y() - HANDLE - 1, 2 * HANDLE + 2, 2 * HANDLE + 2);
    pen.setStroke(isPicked ? accent() : Color.BLACK);
    pen.strokeOval(at.x() - HANDLE, at.y() - HANDLE, 2 * HANDLE, 2 * HANDLE);
    pen.setLineWidth(1);
    pen.strokeLine(at.x() - 4, at.y(), at.x() + 4, at.y());
    pen.strokeLine(at.x(), at.y() - 4, at.x(), at.y() + 4);
    String name = String.valueOf(number + 1);
    pen.setFill(Color.WHITE);
    pen.fillRect(at.x() + HANDLE + 2, at.y() - HANDLE - 8, 13, 16);
    pen.setFill(Color.BLACK);
    pen.fillText(name, at.x() + HANDLE + 5, at.y() - HANDLE + 5);
  }
}
