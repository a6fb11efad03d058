package org.panwright.app.box;

import javafx.scene.layout.Region;
import org.panwright.kit.Fill;

/** A small pan cut open, with its paint standing full, half or as a dab: read by shape, not hue. */
final class FillMark extends Region {
  private final Region trough = new Region();
  private final Region level = new Region();
  private Fill fill = Fill.FULL;

  FillMark() {
    getStyleClass().add("fill-mark");
    trough.getStyleClass().add("trough");
    level.getStyleClass().add("level");
    getChildren().addAll(level, trough);
    setMouseTransparent(true);
  }

  void show(Fill shown) {
    fill = shown;
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    double left = snappedLeftInset();
    double top = snappedTopInset();
    double width = getWidth() - left - snappedRightInset();
    double height = getHeight() - top - snappedBottomInset();
    trough.resizeRelocate(left, top, width, height);
    double wide = fill == Fill.DAB ? snapSizeX(width / 3) : width;
    double high =
        switch (fill) {
          case FULL -> height - 1;
          case HALF -> snapSizeY(height / 2);
          case DAB -> snapSizeY(height / 3);
        };
    double x = snapPositionX(left + (width - wide) / 2);
    level.resizeRelocate(x, top + height - high, wide, high);
  }
}
