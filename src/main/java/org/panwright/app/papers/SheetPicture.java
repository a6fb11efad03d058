package org.panwright.app.papers;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Paint;
import javafx.scene.paint.Stop;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.transform.Rotate;
import org.panwright.colour.Srgb;
import org.panwright.print.Area;
import org.panwright.print.Mark;
import org.panwright.print.Sheet;
import org.panwright.print.Typeface;

/**
 * A sheet as shapes and letters at a scale: the same picture for the screen and for a printer.
 *
 * <p>Shapes and not pixels, because a printer would get a picture of the screen's coarseness.
 */
final class SheetPicture extends Pane {
  private static final String FAMILY = "Liberation Sans";

  /** Makes the letters of the papers known to JavaFX; needed once before the first picture. */
  static void loadFonts() {
    for (Typeface face : Typeface.values()) {
      try (InputStream file = face.open()) {
        Font.loadFont(file, 12);
      } catch (IOException missing) {
        throw new UncheckedIOException(missing);
      }
    }
  }

  /**
   * @param scale units for one millimetre
   */
  SheetPicture(Sheet sheet, double scale) {
    double width = sheet.widthMm() * scale;
    double height = sheet.heightMm() * scale;
    setMinSize(width, height);
    setMaxSize(width, height);
    for (Mark mark : sheet.singleMarks()) {
      getChildren().add(node(mark, scale));
    }
  }

  private static Node node(Mark mark, double scale) {
    if (mark instanceof Mark.Text text) {
      return text(text, scale);
    }
    if (mark instanceof Mark.Line line) {
      return line(line, scale);
    }
    if (mark instanceof Mark.Rectangle rectangle) {
      return rectangle(rectangle, scale);
    }
    Mark.Swatch swatch = (Mark.Swatch) mark;
    Rectangle field = shape(swatch.area(), scale);
    field.setFill(run(swatch.run()));
    return field;
  }

  private static Node text(Mark.Text mark, double scale) {
    Text text = new Text(mark.text());
    FontWeight weight = mark.face() == Typeface.BOLD ? FontWeight.BOLD : FontWeight.NORMAL;
    text.setFont(Font.font(FAMILY, weight, mark.sizePt() * Typeface.MM_PER_PT * scale));
    text.setX(mark.xMm() * scale);
    text.setY(mark.baselineMm() * scale);
    text.setFill(color(mark.ink()));
    if (mark.upwards()) {
      text.getTransforms().add(new Rotate(-90, mark.xMm() * scale, mark.baselineMm() * scale));
    }
    return text;
  }

  private static Node line(Mark.Line mark, double scale) {
    Line line =
        new Line(
            mark.fromXMm() * scale,
            mark.fromYMm() * scale,
            mark.toXMm() * scale,
            mark.toYMm() * scale);
    line.setStroke(color(mark.ink()));
    line.setStrokeWidth(mark.strokeMm() * scale);
    if (mark.dashed()) {
      line.getStrokeDashArray().setAll(1.2 * scale, 0.8 * scale);
    }
    return line;
  }

  private static Node rectangle(Mark.Rectangle mark, double scale) {
    Rectangle shape = shape(mark.area(), scale);
    shape.setArcWidth(2 * mark.radiusMm() * scale);
    shape.setArcHeight(2 * mark.radiusMm() * scale);
    shape.setStroke(color(mark.ink()));
    shape.setStrokeWidth(mark.strokeMm() * scale);
    shape.setFill(mark.fill().map(SheetPicture::color).orElse(null));
    if (mark.dashed()) {
      shape.getStrokeDashArray().setAll(1.2 * scale, 0.8 * scale);
    }
    return shape;
  }

  private static Rectangle shape(Area area, double scale) {
    return new Rectangle(
        area.xMm() * scale, area.yMm() * scale, area.widthMm() * scale, area.heightMm() * scale);
  }

  private static Paint run(List<Srgb> colours) {
    if (colours.size() == 1) {
      return color(colours.get(0));
    }
    List<Stop> stops = new ArrayList<>();
    for (int i = 0; i < colours.size(); i++) {
      stops.add(new Stop((double) i / (colours.size() - 1), color(colours.get(i))));
    }
    return new LinearGradient(0, 0, 1, 0, true, CycleMethod.NO_CYCLE, stops);
  }

  private static Color color(Srgb srgb) {
    return Color.color(srgb.red(), srgb.green(), srgb.blue());
  }
}
