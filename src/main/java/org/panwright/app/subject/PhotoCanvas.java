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
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.TransferMode;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.words.SubjectWords;

/**
 * The photo as large as there is room; right of a line that can be moved, the photo as it could be
 * painted.
 */
final class PhotoCanvas extends CanvasRegion {
  private static final double GRIP = 6;
  private static final double KEY_STEP = 0.05;

  private final BiConsumer<Integer, Integer> pick;
  private Optional<Image> photo = Optional.empty();
  private Optional<Image> painted = Optional.empty();
  private double line = 0.5;
  private boolean dragging;
  private double left;
  private double top;
  private double scale = 1;

  /**
   * @param pick told the pixel that is clicked
   * @param open told a file that is dropped
   */
  PhotoCanvas(BiConsumer<Integer, Integer> pick, Consumer<Path> open) {
    this.pick = pick;
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
    painted.ifPresent(
        other -> {
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
        });
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
      int x = (int) Math.floor(photoX(event));
      int y = (int) Math.floor((canvasY(event.getY()) - top) / scale);
      if (x >= 0 && y >= 0 && x < photoWidth() && y < photo.get().getHeight()) {
        pick.accept(x, y);
      }
    }
  }

  private void key(KeyEvent event) {
    if (painted.isPresent() && event.getCode() == KeyCode.LEFT) {
      moveLine(line - KEY_STEP);
      event.consume();
    } else if (painted.isPresent() && event.getCode() == KeyCode.RIGHT) {
      moveLine(line + KEY_STEP);
      event.consume();
    }
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
