package org.panwright.app.swatches;

import java.util.List;
import java.util.OptionalInt;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.Image;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.swatch.picture.Point;
import org.panwright.words.SwatchesWords;

/** The picture with the marks on it, to be dragged or moved by keys, and what is read outlined. */
final class PictureDesk extends CanvasRegion {
  private static final double REACH = 22;
  private static final double CLOSER = 1.25;
  private static final double CLOSEST = 40;

  private final PictureModel model;
  private PictureMarks marks;
  private DeskView view = DeskView.of(1, 1, 1, 1);
  private boolean whole = true;
  private boolean holding;
  private double lastX;
  private double lastY;

  PictureDesk(PictureModel model, PictureMarks marks) {
    this.model = model;
    this.marks = marks;
    getStyleClass().addAll("picture-desk", "swatch-ground");
    setFocusTraversable(true);
    setAccessibleText(SwatchesWords.PICTURE);
    model
        .pictureProperty()
        .addListener(
            changed -> {
              whole = true;
              repaint();
            });
    focusedProperty().addListener(changed -> repaint());
    setOnMousePressed(this::press);
    setOnMouseDragged(this::drag);
    setOnMouseReleased(event -> holding = false);
    setOnMouseClicked(this::click);
    setOnScroll(this::scroll);
    setOnKeyPressed(this::key);
  }

  /** Shows other marks on the same picture. */
  void show(PictureMarks others) {
    marks = others;
    repaint();
  }

  private void press(MouseEvent event) {
    requestFocus();
    lastX = canvasX(event.getX());
    lastY = canvasY(event.getY());
    holding = false;
    markAt(new Point(lastX, lastY))
        .ifPresent(
            mark -> {
              marks.pickedProperty().set(mark);
              holding = true;
            });
    repaint();
  }

  /** The nearest mark within reach of a place on the desk. */
  private OptionalInt markAt(Point at) {
    List<PictureMarks.Mark> all = marks.marks();
    double nearest = Double.POSITIVE_INFINITY;
    OptionalInt found = OptionalInt.empty();
    for (int i = 0; i < all.size(); i++) {
      double half = all.get(i).halfSide() * view.scale();
      double away = view.onDesk(all.get(i).place()).distance(at);
      if (away < Math.min(nearest, half > 0 ? Math.max(MarkPen.HANDLE, half) : REACH)) {
        nearest = away;
        found = OptionalInt.of(i);
      }
    }
    return found;
  }

  private void drag(MouseEvent event) {
    double x = canvasX(event.getX());
    double y = canvasY(event.getY());
    int picked = marks.pickedProperty().get();
    if (holding && picked < marks.marks().size()) {
      Point place = view.onDesk(marks.marks().get(picked).place());
      marks.move(picked, view.inPicture(place.plus(x - lastX, y - lastY)));
    } else {
      view = view.moved(x - lastX, y - lastY);
      whole = false;
      repaint();
    }
    lastX = x;
    lastY = y;
  }

  private void click(MouseEvent event) {
    Point at = new Point(canvasX(event.getX()), canvasY(event.getY()));
    if (event.isStillSincePress() && markAt(at).isEmpty()) {
      pointAt(view.inPicture(at));
    }
  }

  private void pointAt(Point place) {
    boolean onPicture =
        model
            .pictureProperty()
            .get()
            .filter(shown -> shown.picture().holds(place.x(), place.y()))
            .isPresent();
    if (onPicture) {
      marks.pointAt(place);
    }
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
      case PAGE_DOWN -> step(1);
      case PAGE_UP -> step(-1);
      case INSERT -> pointAtMiddle();
      case DELETE, BACK_SPACE -> marks.remove(marks.pickedProperty().get());
      case PLUS, ADD, EQUALS -> zoom(CLOSER, getWidth() / 2, getHeight() / 2);
      case MINUS, SUBTRACT -> zoom(1 / CLOSER, getWidth() / 2, getHeight() / 2);
      case DIGIT0, NUMPAD0 -> {
        whole = true;
        repaint();
      }
      default -> {
        if (!pickByNumber(event.getCode())) {
          return;
        }
      }
    }
    event.consume();
  }

  private boolean pickByNumber(KeyCode key) {
    String name = key.getName();
    int number = key.isDigitKey() ? Character.digit(name.charAt(name.length() - 1), 10) : 0;
    if (number < 1 || number > marks.marks().size()) {
      return false;
    }
    pick(number - 1);
    return true;
  }

  private void step(int by) {
    int count = marks.marks().size();
    if (count > 0) {
      pick(Math.floorMod(marks.pickedProperty().get() + by, count));
    }
  }

  private void pick(int mark) {
    marks.pickedProperty().set(mark);
    reveal();
  }

  private void pointAtMiddle() {
    pointAt(view.inPicture(new Point(getWidth() / 2, getHeight() / 2)));
  }

  /** Moves the picture so that the mark in hand is seen. */
  private void reveal() {
    int picked = marks.pickedProperty().get();
    if (picked < 0 || picked >= marks.marks().size()) {
      return;
    }
    Point at = view.onDesk(marks.marks().get(picked).place());
    if (at.x() < 0 || at.y() < 0 || at.x() > getWidth() || at.y() > getHeight()) {
      view = view.moved(getWidth() / 2 - at.x(), getHeight() / 2 - at.y());
      repaint();
    }
  }

  private void move(double dx, double dy) {
    int picked = marks.pickedProperty().get();
    if (picked >= 0 && picked < marks.marks().size()) {
      marks.move(picked, marks.marks().get(picked).place().plus(dx, dy));
      reveal();
    }
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
    MarkPen marker = new MarkPen(pen, view, accent(), isFocused());
    marks.outlines().forEach(marker::outline);
    List<PictureMarks.Mark> all = marks.marks();
    if (marks.areFrame() && !all.isEmpty()) {
      marker.frame(
          all.stream().filter(m -> m.halfSide() == 0).map(PictureMarks.Mark::place).toList());
    }
    for (int i = 0; i < all.size(); i++) {
      marker.mark(all.get(i), i == marks.pickedProperty().get());
    }
  }
}
