package org.panwright.app.mix;

import java.util.List;
import java.util.function.IntConsumer;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.app.fx.Fitted;
import org.panwright.app.fx.Swatches;
import org.panwright.colour.Lab;

/** A row of swatches with a word under each, of which one is chosen by mouse or arrow keys. */
final class SwatchStrip extends CanvasRegion {
  private static final double WORDS = 16;

  private final IntConsumer chosen;
  private List<Lab> swatches = List.of();
  private List<String> words = List.of();
  private int choice;

  /**
   * @param chosen told the place of the swatch that is chosen
   */
  SwatchStrip(IntConsumer chosen) {
    this.chosen = chosen;
    getStyleClass().add("swatch-strip");
    setMinHeight(46);
    setPrefHeight(52);
    setFocusTraversable(true);
    focusedProperty().addListener(o -> repaint());
    setOnMousePressed(
        e -> {
          requestFocus();
          choose((int) (e.getX() / Math.max(1, getWidth()) * swatches.size()));
        });
    setOnKeyPressed(
        e -> {
          switch (e.getCode()) {
            case LEFT -> choose(choice - 1);
            case RIGHT -> choose(choice + 1);
            default -> {
              return;
            }
          }
          e.consume();
        });
  }

  /** Shows these swatches, one of them marked as chosen. */
  void show(List<Lab> colours, List<String> names, int marked) {
    swatches = List.copyOf(colours);
    words = List.copyOf(names);
    choice = marked;
    if (marked < names.size()) {
      setAccessibleText(names.get(marked));
    }
    repaint();
  }

  private void choose(int place) {
    if (place >= 0 && place < swatches.size()) {
      chosen.accept(place);
    }
  }

  @Override
  protected void paint(GraphicsContext pen, double width, double height) {
    int count = swatches.size();
    double each = width / Math.max(1, count);
    pen.setFill(surround());
    pen.fillRect(0, 0, width, height - WORDS);
    pen.setTextAlign(TextAlignment.CENTER);
    pen.setTextBaseline(VPos.BOTTOM);
    pen.setFont(Font.font(10.5));
    for (int i = 0; i < count; i++) {
      double x = i * each + 3;
      pen.setFill(Swatches.color(swatches.get(i)));
      pen.fillRect(x, 3, each - 6, height - WORDS - 6);
      pen.setFill(i == choice ? text() : soft());
      pen.fillText(Fitted.text(words.get(i), pen.getFont(), each - 2), x + each / 2 - 3, height);
      if (i == choice) {
        pen.setStroke(accent());
        pen.setLineWidth(isFocused() ? 3 : 2);
        pen.strokeRect(x - 1, 2, each - 4, height - WORDS - 4);
      }
    }
  }
}
