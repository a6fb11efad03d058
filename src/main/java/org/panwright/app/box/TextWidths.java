package org.panwright.app.box;

import java.util.HashMap;
import java.util.Map;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/**
 * Widths of texts at font size 1, measured once at a middle size; small sizes set a little wider,
 * which a margin covers.
 */
final class TextWidths {
  private static final double MEASURED_PX = 20;
  private static final double MARGIN = 1.03;
  private static final int LARGEST = 5000;

  private final Text text = new Text();
  private final Map<String, Double> known = new HashMap<>();

  TextWidths(Font font) {
    text.setFont(Font.font(font.getFamily(), MEASURED_PX));
  }

  double of(String words) {
    if (known.size() >= LARGEST) {
      known.clear();
    }
    return known.computeIfAbsent(words, this::measure);
  }

  private double measure(String words) {
    text.setText(words);
    return text.getLayoutBounds().getWidth() / MEASURED_PX * MARGIN;
  }
}
