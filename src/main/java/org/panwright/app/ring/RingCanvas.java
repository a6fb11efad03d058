package org.panwright.app.ring;

import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyEvent;
import javafx.scene.paint.Color;
import javafx.scene.shape.ArcType;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.panwright.analysis.reach.Ring;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.app.fx.Fitted;
import org.panwright.app.fx.Swatches;
import org.panwright.colour.GamutFit;
import org.panwright.colour.Hue;
import org.panwright.colour.HueWord;
import org.panwright.colour.Oklch;
import org.panwright.words.ColourWords;

/**
 * Paints the hue circle: a rim of hues with their words, the shelf's ring as a pale shape, the
 * lineup's before it, gaps as hatched arcs on the rim, and a dot for each paint.
 *
 * <p>Hue 0° points to the right and angles grow anticlockwise, as in the a–b plane of the
 * standards.
 */
final class RingCanvas extends CanvasRegion {
  private static final double FULL_CHROMA = RingCursor.MOST_CHROMA;
  private static final double CURSOR = 6;
  private static final double RIM = 9;
  private static final double LABEL_OFFSET = 8;
  private static final double LABEL_HEIGHT = 14;
  private static final double AIR = 4;
  private static final Font LABEL_FONT = Font.font(10.5);

  /** The cosine of the hues whose words are centred over or under the ring. */
  private static final double CENTRED = 0.3;

  private static final HueWord[] NAMED = {
    HueWord.RED, HueWord.ORANGE, HueWord.YELLOW, HueWord.GREEN,
    HueWord.TURQUOISE, HueWord.BLUE, HueWord.VIOLET, HueWord.MAGENTA
  };

  private final ObservableValue<Optional<RingPicture>> picture;
  private final Optional<RingCursor> cursor;
  private double centreX;
  private double centreY;
  private double radius;

  /**
   * @param cursor what mouse and keys move; without it there is only something to see
   */
  RingCanvas(ObservableValue<Optional<RingPicture>> picture, Optional<RingCursor> cursor) {
    this.picture = picture;
    this.cursor = cursor;
    getStyleClass().add("ring-canvas");
    picture.addListener(o -> repaint());
    cursor.ifPresent(this::follow);
  }

  private void follow(RingCursor moved) {
    setFocusTraversable(true);
    focusedProperty().addListener(o -> repaint());
    moved.placeProperty().addListener(o -> repaint());
    setOnMousePressed(event -> requestFocus());
    setOnMouseClicked(event -> pick(moved, canvasX(event.getX()), canvasY(event.getY())));
    setOnKeyPressed(event -> act(moved, event));
  }

  private static void act(RingCursor moved, KeyEvent event) {
    switch (event.getCode()) {
      case LEFT -> moved.turn(1);
      case RIGHT -> moved.turn(-1);
      case UP -> moved.outward(1);
      case DOWN -> moved.outward(-1);
      case ENTER, SPACE -> moved.pick();
      default -> {
        return;
      }
    }
    event.consume();
  }

  @Override
  protected void paint(GraphicsContext pen, double width, double height) {
    centreX = width / 2;
    centreY = height / 2;
    radius = largestRadius(width, height);
    if (radius < 20) {
      return;
    }
    paintRim(pen);
    paintScale(pen);
    picture.getValue().ifPresent(shown -> paintRings(pen, shown));
    cursor.flatMap(c -> c.placeProperty().get()).ifPresent(at -> paintCursor(pen, at));
    if (isFocused()) {
      paintFocus(pen);
    }
  }

  private void pick(RingCursor moved, double canvasX, double canvasY) {
    double dx = canvasX - centreX;
    double dy = centreY - canvasY;
    double distance = Math.hypot(dx, dy);
    if (radius >= 20 && distance <= radius) {
      moved.pick(distance / radius * FULL_CHROMA, Math.toDegrees(Math.atan2(dy, dx)));
    }
  }

  private void paintRings(GraphicsContext pen, RingPicture picture) {
    paintShape(pen, picture.part(), picture.shelf(), line().deriveColor(0, 1, 1, 0.45), soft());
    paintShape(pen, picture.part(), picture.lineup(), text().deriveColor(0, 1, 1, 0.16), text());
    picture
        .trial()
        .ifPresent(trial -> paintShape(pen, picture.part(), trial, Color.TRANSPARENT, accent()));
    picture.gaps().forEach(gap -> paintArc(pen, gap.fromDeg(), gap.toDeg(), warn(), 5));
    picture.lost().forEach(arc -> paintArc(pen, arc.fromDeg(), arc.toDeg(), warn(), 5));
    picture.won().forEach(arc -> paintArc(pen, arc.fromDeg(), arc.toDeg(), accent(), 17));
    picture.paints().forEach(dot -> paintDot(pen, dot));
  }

  private void paintRim(GraphicsContext pen) {
    pen.setLineWidth(RIM);
    double r = radius + RIM / 2;
    for (int step = 0; step < Ring.STEPS; step++) {
      double hue = step * Ring.STEP_DEG;
      pen.setStroke(Swatches.color(GamutFit.of(new Oklch(0.74, 0.13, hue)).shown()));
      pen.strokeArc(
          centreX - r, centreY - r, 2 * r, 2 * r, hue - 2.6, Ring.STEP_DEG + 0.2, ArcType.OPEN);
    }
    pen.setFont(LABEL_FONT);
    pen.setFill(soft());
    pen.setTextBaseline(VPos.CENTER);
    for (HueWord word : NAMED) {
      double hue = middle(word);
      pen.setTextAlign(align(hue));
      pen.fillText(
          ColourWords.label(word),
          x(hue, radius + RIM + LABEL_OFFSET),
          y(hue, radius + RIM + LABEL_OFFSET));
    }
  }

  /** The largest ring that leaves room for every word outside it. */
  private static double largestRadius(double width, double height) {
    double outer = Math.min(width, height) / 2;
    for (HueWord word : NAMED) {
      double hue = middle(word);
      double across = Math.abs(Math.cos(Math.toRadians(hue)));
      double up = Math.abs(Math.sin(Math.toRadians(hue)));
      double text = Fitted.width(ColourWords.label(word), LABEL_FONT) + AIR;
      double beside = align(hue) == TextAlignment.CENTER ? text / 2 : text;
      outer = Math.min(outer, (width / 2 - beside) / across);
      outer = Math.min(outer, (height / 2 - LABEL_HEIGHT / 2) / up);
    }
    return outer - LABEL_OFFSET - RIM;
  }

  private static double middle(HueWord word) {
    return (word.fromDeg() + word.toDeg()) / 2;
  }

  /** A word above or below the ring is centred; one beside it grows away from it. */
  private static TextAlignment align(double hueDeg) {
    double across = Math.cos(Math.toRadians(hueDeg));
    return Math.abs(across) < CENTRED
        ? TextAlignment.CENTER
        : across > 0 ? TextAlignment.LEFT : TextAlignment.RIGHT;
  }

  private void paintScale(GraphicsContext pen) {
    pen.setStroke(line());
    pen.setLineWidth(1);
    for (double chroma = 0.1; chroma < FULL_CHROMA; chroma += 0.1) {
      double r = radius * chroma / FULL_CHROMA;
      pen.strokeOval(centreX - r, centreY - r, 2 * r, 2 * r);
    }
  }

  private void paintShape(
      GraphicsContext pen, Ring.Part part, Ring ring, Color fill, Color stroke) {
    double[] xs = new double[Ring.STEPS];
    double[] ys = new double[Ring.STEPS];
    for (int step = 0; step < Ring.STEPS; step++) {
      double r = distance(ring.chroma(part, step));
      xs[step] = x(step * Ring.STEP_DEG, r);
      ys[step] = y(step * Ring.STEP_DEG, r);
    }
    pen.setFill(fill);
    pen.fillPolygon(xs, ys, Ring.STEPS);
    pen.setStroke(stroke);
    pen.setLineWidth(1.4);
    pen.strokePolygon(xs, ys, Ring.STEPS);
  }

  private void paintArc(
      GraphicsContext pen, double fromDeg, double toDeg, Color ink, double inside) {
    double r = radius - inside;
    double arc = Hue.arc(fromDeg, toDeg) == 0 ? 360 : Hue.arc(fromDeg, toDeg);
    pen.setStroke(ink);
    pen.setLineWidth(3);
    pen.strokeArc(centreX - r, centreY - r, 2 * r, 2 * r, fromDeg, arc, ArcType.OPEN);
    pen.setLineWidth(1.5);
    for (double hue : new double[] {fromDeg, toDeg}) {
      pen.strokeLine(x(hue, r - 6), y(hue, r - 6), x(hue, r + 5), y(hue, r + 5));
    }
  }

  private void paintDot(GraphicsContext pen, RingPicture.Dot dot) {
    double r = distance(dot.place().c());
    double x = x(dot.place().hueDeg(), r);
    double y = y(dot.place().hueDeg(), r);
    pen.setFill(Swatches.color(dot.lab()));
    pen.fillOval(x - 4.5, y - 4.5, 9, 9);
    pen.setStroke(text());
    pen.setLineWidth(1);
    pen.strokeOval(x - 4.5, y - 4.5, 9, 9);
  }

  private void paintCursor(GraphicsContext pen, RingCursor.Place at) {
    double x = x(at.hueDeg(), distance(at.chroma()));
    double y = y(at.hueDeg(), distance(at.chroma()));
    pen.setStroke(accent());
    pen.setLineWidth(1);
    pen.strokeLine(x, y, x(at.hueDeg(), radius), y(at.hueDeg(), radius));
    pen.setLineWidth(isFocused() ? 3 : 2);
    pen.strokeOval(x - CURSOR, y - CURSOR, 2 * CURSOR, 2 * CURSOR);
    pen.setStroke(Color.WHITE);
    pen.setLineWidth(1);
    pen.strokeOval(x - CURSOR + 2, y - CURSOR + 2, 2 * CURSOR - 4, 2 * CURSOR - 4);
  }

  private void paintFocus(GraphicsContext pen) {
    double r = radius + RIM + 2;
    pen.setStroke(accent());
    pen.setLineWidth(2);
    pen.strokeOval(centreX - r, centreY - r, 2 * r, 2 * r);
  }

  private double distance(double chroma) {
    return radius * Math.min(1, chroma / FULL_CHROMA);
  }

  private double x(double hueDeg, double distance) {
    return centreX + distance * Math.cos(Math.toRadians(hueDeg));
  }

  private double y(double hueDeg, double distance) {
    return centreY - distance * Math.sin(Math.toRadians(hueDeg));
  }
}
