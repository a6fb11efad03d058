package org.panwright.app.fx;

import java.util.List;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.css.StyleableProperty;
import javafx.css.StyleablePropertyFactory;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.transform.Scale;

/**
 * A region that paints itself on one canvas of its own size, at most once a pulse, in inks the
 * theme gives.
 *
 * <p>Subclasses paint in {@link #paint} and ask for it with {@link #repaint}.
 */
public abstract class CanvasRegion extends Region {
  private static final StyleablePropertyFactory<CanvasRegion> INKS =
      new StyleablePropertyFactory<>(Region.getClassCssMetaData());

  private final StyleableProperty<Color> text = ink("text", "-pw-ink-text", r -> r.text);
  private final StyleableProperty<Color> soft = ink("soft", "-pw-ink-soft", r -> r.soft);
  private final StyleableProperty<Color> line = ink("line", "-pw-ink-line", r -> r.line);
  private final StyleableProperty<Color> surround =
      ink("surround", "-pw-ink-surround", r -> r.surround);
  private final StyleableProperty<Color> accent = ink("accent", "-pw-ink-accent", r -> r.accent);
  private final StyleableProperty<Color> focus = ink("focus", "-pw-ink-focus", r -> r.focus);
  private final StyleableProperty<Color> warn = ink("warn", "-pw-ink-warn", r -> r.warn);

  private final Canvas canvas = new Canvas();
  private boolean stale = true;
  private double dots = 1;

  protected CanvasRegion() {
    getStyleClass().add("canvas-region");
    canvas.setManaged(false);
    getChildren().add(canvas);
  }

  private StyleableProperty<Color> ink(
      String name,
      String cssName,
      java.util.function.Function<CanvasRegion, StyleableProperty<Color>> of) {
    StyleableProperty<Color> ink =
        INKS.createStyleableColorProperty(this, name, cssName, of, Color.GRAY);
    ((javafx.beans.value.ObservableValue<?>) ink).addListener(o -> repaint());
    return ink;
  }

  /** The horizontal place on the canvas of a mouse event's x in this region. */
  protected final double canvasX(double x) {
    return x - snappedLeftInset();
  }

  /** The vertical place on the canvas of a mouse event's y in this region. */
  protected final double canvasY(double y) {
    return y - snappedTopInset();
  }

  /** Paints everything; the canvas is clear. */
  protected abstract void paint(GraphicsContext pen, double width, double height);

  /**
   * Paints with more dots than the region has pixels, for a picture that is taken enlarged.
   *
   * @param perPixel dots along each side of a pixel, 1 or more
   */
  public final void setDots(double perPixel) {
    dots = perPixel;
    canvas.getTransforms().setAll(new Scale(1 / dots, 1 / dots));
    repaint();
  }

  /** Asks for a new picture in the next pulse. */
  public final void repaint() {
    stale = true;
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    double width = Math.max(0, getWidth() - snappedLeftInset() - snappedRightInset());
    double height = Math.max(0, getHeight() - snappedTopInset() - snappedBottomInset());
    canvas.relocate(snappedLeftInset(), snappedTopInset());
    if (canvas.getWidth() != dots * width || canvas.getHeight() != dots * height) {
      canvas.setWidth(dots * width);
      canvas.setHeight(dots * height);
      stale = true;
    }
    if (stale && width > 0 && height > 0) {
      stale = false;
      GraphicsContext pen = canvas.getGraphicsContext2D();
      pen.setTransform(dots, 0, 0, dots, 0, 0);
      pen.clearRect(0, 0, width, height);
      paint(pen, width, height);
    }
  }

  /** The ink of main text. */
  protected final Color text() {
    return text.getValue();
  }

  /** The ink of lesser text. */
  protected final Color soft() {
    return soft.getValue();
  }

  /** The ink of thin lines. */
  protected final Color line() {
    return line.getValue();
  }

  /** The neutral grey around swatches. */
  protected final Color surround() {
    return surround.getValue();
  }

  /** The ink of what is picked. */
  protected final Color accent() {
    return accent.getValue();
  }

  /** The ink of the ring round what has the keyboard. */
  protected final Color focus() {
    return focus.getValue();
  }

  /** The ink of warnings. */
  protected final Color warn() {
    return warn.getValue();
  }

  @Override
  public List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
    return INKS.getCssMetaData();
  }
}
