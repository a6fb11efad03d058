package org.panwright.app.mix;

import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.colour.Bands;
import org.panwright.colour.Spectrum;

/** The reflectance of the dry coat over wavelength, 0 to 1, with the paper's for comparison. */
final class ReflectanceCurve extends CanvasRegion {
  private static final double LEFT = 34;
  private static final double BOTTOM = 16;
  private static final double TOP = 6;

  private Spectrum reflectance = Spectrum.flat(1);

  ReflectanceCurve() {
    getStyleClass().add("reflectance-curve");
    setMinHeight(84);
    setPrefHeight(110);
  }

  void show(Spectrum shown) {
    reflectance = shown;
    repaint();
  }

  @Override
  protected void paint(GraphicsContext pen, double width, double height) {
    double right = width - 4;
    double bottom = height - BOTTOM;
    pen.setFont(Font.font(10));
    pen.setLineWidth(1);
    for (double r = 0; r <= 1; r += 0.5) {
      double y = bottom - r * (bottom - TOP);
      pen.setStroke(line());
      pen.strokeLine(LEFT, y, right, y);
      pen.setFill(soft());
      pen.setTextAlign(TextAlignment.RIGHT);
      pen.setTextBaseline(VPos.CENTER);
      pen.fillText(Math.round(r * 100) + "%", LEFT - 3, y);
    }
    pen.setTextAlign(TextAlignment.CENTER);
    pen.setTextBaseline(VPos.BOTTOM);
    for (int nm = 400; nm <= 700; nm += 100) {
      pen.fillText(nm + " nm", x(nm, right), height);
    }
    double[] xs = new double[Bands.COUNT];
    double[] ys = new double[Bands.COUNT];
    for (int band = 0; band < Bands.COUNT; band++) {
      xs[band] = x(Bands.wavelengthNm(band), right);
      ys[band] = bottom - Math.min(1, reflectance.at(band)) * (bottom - TOP);
    }
    pen.setStroke(text());
    pen.setLineWidth(1.8);
    pen.strokePolyline(xs, ys, Bands.COUNT);
  }

  private static double x(int nm, double right) {
    double share = (nm - Bands.FIRST_NM) / (double) ((Bands.COUNT - 1) * Bands.STEP_NM);
    return LEFT + 4 + share * (right - LEFT - 8);
  }
}
