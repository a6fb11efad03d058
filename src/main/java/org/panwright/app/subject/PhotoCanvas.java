package org.panwright.app.subject;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.scene.Cursor;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.paint.Color;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.words.SubjectWords;

/**
 * The photo as large as there is room; right of a line that can be moved, the photo as it could be
 * painted.
 */
final class PhotoCanvas extends CanvasRegion {
  private static final double GRIP = 6;
  private static final double KEY_STEP = 0.05;
  private static final double CURSOR_STEP = 0.02;
  private static final double CURSOR = 7;

  private final BiConsumer<Integer, Integer> pick;
  private final BiConsumer<Integer, Integer> look;
  private Optional<Image> photo = Optional.empty();
  private Optional<Image> painted = Optional.empty();
  private double line = 0.5;
  private boolean dragging;
  private double left;
  private double top;
  private double scale = 1;
  private Optional<double[]> cursor = Optional.empty();

  /**
   * @param pick told the pixel that is clicked, or gone to by keys and taken by Enter
   * @param look told the pixel that is gone to
   * @param open told a file that is dropped
   */
  PhotoCanvas(
      BiConsumer<Integer, Integer> pick, BiConsumer<Integer, Integer> look, Consumer<Path> open) {
    this.pick = pick;
    this.look = look;
    focusedProperty().addListener(changed -> repaint());
    getStyleClass().add("photo-canvas");
    setFocusTraversable(true);
    setAccessibleText(SubjectWords.PHOTO);
    setOnMousePressed(this::press);
    setOnMouseDragged(this::drag);
    setOnMouseMoved(e -> setCursor(isOnLine(e) ? Cursor.H_RESIZE : Cursor.CROSSHAIR));
    setOnMouseClicked(this::click);
    setOnKeyPressed(this::key);
    setOnDragOver(
        event -> {
          if (event.getDragboard().hasFiles()) {
            event.acceptTransferModes(TransferMode.COPY);
          }
        });
    setOnDragDropped(
        event -> {
          event.setDropCompleted(event.getDragboard().hasFiles());
          event.getDragboard().getFiles().stream()
              .findFirst()
              .ifPresent(file -> open.accept(file.toPath()));
        });
  }

  void showPhoto(Optional<Photo> shown) {
    photo = shown.map(p -> image(p.rgb(), p.width(), p.height()));
    cursor = Optional.empty();
    repaint();
  }

  void showPainted(Optional<int[]> pixels, Optional<Photo> of) {
    painted = of.flatMap(p -> pixels.map(rgb -> image(rgb, p.width(), rgb.length / p.width())));
    repaint();
  }

  @Override
  protected void paint(GraphicsContext pen, double width, double height) {
    pen.setFill(surround());
    pen.fillRect(0, 0, width, height);
    if (photo.isEmpty()) {
      return;
    }
    Image image = photo.get();
    scale = Math.min(width / image.getWidth(), height / image.getHeight());
    double w = image.getWidth() * scale;
    double h = image.getHeight() * scale;
    left = (width - w) / 2;
    top = (height - h) / 2;
    pen.drawImage(image, left, top, w, h);
    painted.ifPresent(other -> paintOther(pen, other, w, h));
    cursor.ifPresent(at -> paintCursor(pen, left + at[0] * w, top + at[1] * h));
    if (isFocused()) {
      pen.setStroke(accent());
      pen.setLineWidth(2);
      pen.strokeRect(1, 1, width - 2, height - 2);
    }
  }

  private void paintOther(GraphicsContext pen, Image other, double w, double h) {
    double from = line * other.getWidth();
    pen.drawImage(
        other,
        from,
        0,
        other.getWidth() - from,
        other.getHeight(),
        left + line * w,
        top,
        w - line * w,
        h);
    pen.setStroke(accent());
    pen.setLineWidth(2);
    pen.strokeLine(left + line * w, top, left + line * w, top + h);
  }

  /** A ring in black and white, to be seen on any colour. */
  private static void paintCursor(GraphicsContext pen, double x, double y) {
    pen.setStroke(Color.BLACK);
    pen.setLineWidth(3);
    pen.strokeOval(x - CURSOR, y - CURSOR, 2 * CURSOR, 2 * CURSOR);
    pen.setStroke(Color.WHITE);
    pen.setLineWidth(1.4);
    pen.strokeOval(x - CURSOR, y - CURSOR, 2 * CURSOR, 2 * CURSOR);
  }

  private void press(MouseEvent event) {
    requestFocus();
    dragging = isOnLine(event);
  }

  private void drag(MouseEvent event) {
    if (dragging) {
      moveLine(photoX(event) / photoWidth());
    }
  }

  private void click(MouseEvent event) {
    if (!dragging && event.isStillSincePress() && photo.isPresent()) {
      double x = photoX(event) / photoWidth();
      double y = (canvasY(event.getY()) - top) / scale / photo.get().getHeight();
      if (x >= 0 && y >= 0 && x < 1 && y < 1) {
        go(x, y);
        pixel(pick);
      }
    }
  }

  private void key(KeyEvent event) {
    if (photo.isEmpty()) {
      return;
    }
    boolean isLine = event.isShiftDown() && painted.isPresent();
    switch (event.getCode()) {
      case LEFT -> move(isLine, -1, 0);
      case RIGHT -> move(isLine, 1, 0);
      case UP -> move(false, 0, -1);
      case DOWN -> move(false, 0, 1);
      case ENTER, SPACE -> pixel(pick);
      default -> {
        return;
      }
    }
    event.consume();
  }

  private void move(boolean isLine, int right, int down) {
    if (isLine) {
      moveLine(line + right * KEY_STEP);
      return;
    }
    double[] from = cursor.orElse(new double[] {0.5, 0.5});
    go(from[0] + right * CURSOR_STEP, from[1] + down * CURSOR_STEP);
    pixel(look);
  }

  private void go(double x, double y) {
    cursor =
        Optional.of(
            new double[] {Math.max(0, Math.min(0.9999, x)), Math.max(0, Math.min(0.9999, y))});
    repaint();
  }

  private void pixel(BiConsumer<Integer, Integer> told) {
    cursor.ifPresent(
        at ->
            photo.ifPresent(
                image ->
                    told.accept(
                        (int) (at[0] * image.getWidth()), (int) (at[1] * image.getHeight()))));
  }

  private void moveLine(double place) {
    line = Math.max(0, Math.min(1, place));
    repaint();
  }

  private boolean isOnLine(MouseEvent event) {
    return painted.isPresent() && Math.abs(photoX(event) - line * photoWidth()) * scale <= GRIP;
  }

  private double photoX(MouseEvent event) {
    return (canvasX(event.getX()) - left) / scale;
  }

  private double photoWidth() {
    return photo.map(Image::getWidth).orElse(1.0);
  }

  private static Image image(int[] argb, int width, int height) {
    WritableImage image = new WritableImage(width, height);
    image
        .getPixelWriter()
        .setPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), argb, 0, width);
    return image;
  }
}
