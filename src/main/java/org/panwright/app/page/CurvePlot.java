package org.panwright.app.page;

import java.util.List;
import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.colour.Bands;
import org.panwright.colour.Spectrum;

/** Some curves over wavelength, each told by its dashes and its name beneath, on one scale. */
final class CurvePlot extends CanvasRegion {
  private static final double LEFT = 40;
  private static final double TOP = 8;
  private static final double AXIS = 16;
  private static final double NAMES = 18;
  private static final double[][] DASHES = {{}, {5, 4}, {1.5, 3}, {8, 3, 1.5, 3}};

  private final boolean logarithmic;
  private List<Curve> curves = List.of();

  /** One curve. */
  record Curve(String name, Spectrum values) {}

  /**
   * @param logarithmic whether the scale runs by powers of ten, else from 0 to 1
   */
  CurvePlot(boolean logarithmic) {
    this.logarithmic = logarithmic;
    setMinHeight(140);
    setPrefHeight(180);
    getStyleClass().add("curve-plot");
  }

  void show(List<Curve> shown) {
    curves = List.copyOf(shown);
    repaint();
  }

  @Override
  protected void paint(GraphicsContext pen, double width, double height) {
    double right = width - 6;
    double bottom = height - AXIS - NAMES;
    double low = logarithmic ? -2 : 0;
    double high = logarithmic ? Math.max(1, Math.ceil(highest())) : 1;
    double step = logarithmic ? 1 : 0.5;
    pen.setFont(Font.font(10));
    pen.setLineWidth(1);
    pen.setTextBaseline(VPos.CENTER);
    pen.setTextAlign(TextAlignment.RIGHT);
    for (double mark = low; mark <= high + 1e-9; mark += step) {
      double y = bottom - (mark - low) / (high - low) * (bottom - TOP);
      pen.setStroke(line());
      pen.strokeLine(LEFT, y, right, y);
      pen.setFill(soft());
      pen.fillText(label(mark), LEFT - 4, y);
    }
    pen.setTextAlign(TextAlignment.CENTER);
    for (int nm = 400; nm <= 700; nm += 100) {
      pen.fillText(nm + " nm", x(nm, right), bottom + AXIS / 2 + 2);
    }
    for (int i = 0; i < curves.size(); i++) {
      draw(pen, curves.get(i).values(), i, low, high, right, bottom);
      name(pen, i, LEFT + i * (right - LEFT) / curves.size(), height - NAMES / 2);
    }
    pen.setLineDashes();
  }

  private void draw(
      GraphicsContext pen,
      Spectrum values,
      int place,
      double low,
      double high,
      double right,
      double bottom) {
    double[] xs = new double[Bands.COUNT];
    double[] ys = new double[Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      double value = logarithmic ? Math.log10(Math.max(1e-9, values.at(band))) : values.at(band);
      double share = Math.max(0, Math.min(1, (value - low) / (high - low)));
      xs[band] = x(Bands.wavelengthNm(band), right);
      ys[band] = bottom - share * (bottom - TOP);
    }
    pen.setStroke(ink(place));
    pen.setLineWidth(1.8);
    pen.setLineDashes(DASHES[place % DASHES.length]);
    pen.strokePolyline(xs, ys, Bands.COUNT);
  }

  private void name(GraphicsContext pen, int place, double x, double y) {
    pen.setStroke(ink(place));
    pen.setLineDashes(DASHES[place % DASHES.length]);
    pen.strokeLine(x, y, x + 22, y);
    pen.setFill(text());
    pen.setTextAlign(TextAlignment.LEFT);
    pen.fillText(curves.get(place).name(), x + 26, y);
  }

  private Color ink(int place) {
    return place < 2 ? text() : accent();
  }

  private double highest() {
    return curves.stream().mapToDouble(c -> Math.log10(c.values().max())).max().orElse(1);
  }

  private String label(double mark) {
    return logarithmic
        ? String.format(
            Locale.ROOT, mark < 0 ? "%." + (int) -mark + "f" : "%.0f", Math.pow(10, mark))
        : Math.round(mark * 100) + "%";
  }

  private static double x(int nm, double right) {
    double share = (nm - Bands.FIRST_NM) / (double) ((Bands.COUNT - 1) * Bands.STEP_NM);
    return LEFT + 4 + share * (right - LEFT - 8);
  }
}
