package org.panwright.app.page;

import java.util.List;
import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.app.fx.Fitted;

/** How far each coat is from its prediction, as bars beside each other's names. */
final class ResidualBars extends CanvasRegion {
  private static final double ROW = 18;
  private static final double NAME = 170;
  private static final double NUMBER = 34;
  private static final double LEAST_SCALE = 6;

  /** From here on two coats look different to most people. */
  private static final double CLEAR = 3;

  private List<Bar> bars = List.of();

  /** One coat. */
  record Bar(String name, double ciede2000) {}

  void show(List<Bar> shown) {
    bars = List.copyOf(shown);
    setMinHeight(bars.size() * ROW + 4);
    setPrefHeight(bars.size() * ROW + 4);
    repaint();
  }

  @Override
  protected void paint(GraphicsContext pen, double width, double height) {
    Font font = Font.font(11);
    pen.setFont(font);
    pen.setTextBaseline(VPos.CENTER);
    double most = Math.max(LEAST_SCALE, bars.stream().mapToDouble(Bar::ciede2000).max().orElse(0));
    double room = Math.max(20, width - NAME - NUMBER);
    for (int i = 0; i < bars.size(); i++) {
      Bar bar = bars.get(i);
      double y = 2 + i * ROW + ROW / 2;
      pen.setTextAlign(TextAlignment.LEFT);
      pen.setFill(text());
      pen.fillText(Fitted.text(bar.name(), font, NAME - 8), 0, y);
      pen.setFill(bar.ciede2000() > CLEAR ? warn() : soft());
      pen.fillRect(NAME, y - 4, Math.max(1, room * bar.ciede2000() / most), 8);
      pen.setTextAlign(TextAlignment.RIGHT);
      pen.fillText(String.format(Locale.ROOT, "%.1f", bar.ciede2000()), width, y);
    }
    pen.setStroke(line());
    double clear = Math.rint(NAME + room * CLEAR / most) + 0.5;
    pen.strokeLine(clear, 0, clear, bars.size() * ROW + 4);
  }
}
