package org.panwright.app.box;

import javafx.scene.layout.Region;
import org.panwright.kit.Fill;

/** A small pan cut open, with its paint standing full, half or as a dab: read by shape, not hue. */
final class FillMark extends Region {
  private final Region level = new Region();
  private Fill fill = Fill.FULL;

  FillMark() {
    getStyleClass().add("fill-mark");
    level.getStyleClass().add("level");
    getChildren().add(level);
    setMouseTransparent(true);
  }

  void show(Fill shown) {
    fill = shown;
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    double left = snappedLeftInset();
    double width = getWidth() - left - snappedRightInset();
    double height = getHeight() - snappedTopInset() - snappedBottomInset();
    double wide = fill == Fill.DAB ? width / 2 : width;
    double high =
        switch (fill) {
          case FULL -> height;
          case HALF -> snapSizeY(height / 2);
          case DAB -> snapSizeY(height / 3);
        };
    level.resizeRelocate(
        left + (width - wide) / 2, getHeight() - snappedBottomInset() - high, wide, high);
  }
}
