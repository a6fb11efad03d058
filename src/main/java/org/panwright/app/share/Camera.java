package org.panwright.app.share;

import java.awt.image.BufferedImage;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.transform.Scale;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.app.theme.Theme;

/** Takes pictures of figures at {@value #DOTS_PER_INCH} dots per inch, in the light theme. */
final class Camera {
  static final int DOTS_PER_INCH = 300;

  /** The pixels of an inch in which figures are laid out, as in CSS. */
  private static final double PIXELS_PER_INCH = 96;

  private static final double MM_FOR_INCH = 25.4;
  private static final double DOTS = DOTS_PER_INCH / PIXELS_PER_INCH;

  private Camera() {}

  /** A figure in this size on paper. On the JavaFX thread. */
  static BufferedImage take(Region figure, double widthMm, double heightMm) {
    double width = widthMm / MM_FOR_INCH * PIXELS_PER_INCH;
    double height = heightMm / MM_FOR_INCH * PIXELS_PER_INCH;
    StackPane sheet = new StackPane(figure);
    Scene scene = new Scene(sheet, width, height);
    scene.getStylesheets().setAll(Theme.LIGHT.sheets());
    if (figure instanceof CanvasRegion canvas) {
      canvas.setDots(DOTS);
    }
    sheet.resize(width, height);
    sheet.applyCss();
    sheet.layout();
    SnapshotParameters enlarged = new SnapshotParameters();
    enlarged.setTransform(new Scale(DOTS, DOTS));
    WritableImage picture =
        new WritableImage((int) Math.round(width * DOTS), (int) Math.round(height * DOTS));
    return SwingFXUtils.fromFXImage(sheet.snapshot(enlarged, picture), null);
  }
}
