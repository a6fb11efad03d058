package org.panwright.app.chart;

import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.app.fx.Swatches;
import org.panwright.swatch.grid.CellVerdict;
import org.panwright.swatch.grid.PaintedGrid;
import org.panwright.words.ChartReadingWords;

/**
 * The cells of a chart, each as painted above as foretold; those that disagree framed, those left
 * out struck through.
 */
final class ChartCanvas extends CanvasRegion {
  private static final double HEAD = 18;
  private static final double LARGEST = 46;
  private static final double GAP = 3;

  private final ChartModel model;
  private double side = 1;

  ChartCanvas(ChartModel model) {
    this.model = model;
    getStyleClass().addAll("chart-canvas", "swatch-ground");
    setFocusTraversable(true);
    model.stateProperty().addListener(changed -> show());
    model.cursor().pickedProperty().addListener(changed -> show());
    widthProperty().addListener(changed -> fit());
    focusedProperty().addListener((property, before, now) -> focus(now));
    setOnMousePressed(this::press);
    setOnKeyPressed(this::key);
    show();
  }

  /** The keyboard never stands on nothing. */
  private void focus(boolean here) {
    if (here && model.cursor().picked().isEmpty()) {
      model.cursor().step(0, 0);
    }
    repaint();
  }

  private void show() {
    setAccessibleText(
        model
            .cursor()
            .picked()
            .map(cell -> ChartReadingWords.cell(cell.reading(), model::name))
            .orElse(ChartReadingWords.CELLS));
    fit();
    repaint();
  }

  /** Cells as large as the width allows, and as high as they then need. */
  private void fit() {
    model
        .stateProperty()
        .get()
        .grid()
        .ifPresent(
            grid -> {
              double room = getWidth() - snappedLeftInset() - snappedRightInset() - HEAD;
              side = Math.max(8, Math.min(LARGEST, room / grid.columns()));
              double height =
                  HEAD + side * grid.rows() + snappedTopInset() + snappedBottomInset() + GAP;
              if (getMinHeight() != height) {
                setMinHeight(height);
                setPrefHeight(height);
                setMaxHeight(height);
              }
            });
  }

  private void press(MouseEvent event) {
    requestFocus();
    double x = canvasX(event.getX()) - HEAD;
    double y = canvasY(event.getY()) - HEAD;
    if (x >= 0 && y >= 0) {
      model.cursor().pick((int) (y / side), (int) (x / side));
    }
  }

  private void key(KeyEvent event) {
    switch (event.getCode()) {
      case UP -> model.cursor().step(-1, 0);
      case DOWN -> model.cursor().step(1, 0);
      case LEFT -> model.cursor().step(0, -1);
      case RIGHT -> model.cursor().step(0, 1);
      case SPACE -> model.cursor().picked().ifPresent(cell -> model.keepPicked(!cell.kept()));
      default -> {
        return;
      }
    }
    event.consume();
  }

  @Override
  protected void paint(GraphicsContext pen, double width, double height) {
    ChartState state = model.stateProperty().get();
    if (state.grid().isEmpty()) {
      return;
    }
    PaintedGrid grid = state.grid().get();
    pen.setFont(Font.font(Math.min(11, Math.max(7, side - 2))));
    pen.setTextBaseline(VPos.CENTER);
    pen.setTextAlign(TextAlignment.CENTER);
    pen.setFill(text());
    for (int row = 0; row < grid.rows(); row++) {
      pen.fillText(String.valueOf(row + 1), HEAD / 2, HEAD + (row + 0.5) * side);
    }
    for (int column = 0; column < grid.columns(); column++) {
      pen.fillText(String.valueOf(column + 1), HEAD + (column + 0.5) * side, HEAD / 2);
    }
    state.cells().forEach(cell -> paint(pen, cell));
    model.cursor().picked().ifPresent(cell -> frame(pen, cell, accent(), isFocused() ? 3 : 2));
  }

  private void paint(GraphicsContext pen, ChartCell cell) {
    double x = left(cell);
    double y = top(cell);
    double extent = side - GAP;
    pen.setFill(Swatches.color(cell.painted()));
    pen.fillRect(x, y, extent, cell.predicted().isPresent() ? extent / 2 : extent);
    cell.predicted()
        .ifPresent(
            lab -> {
              pen.setFill(Swatches.color(lab));
              pen.fillRect(x, y + extent / 2, extent, extent / 2);
            });
    if (cell.verdict() != CellVerdict.AGREES) {
      frame(pen, cell, warn(), 2);
    }
    if (!cell.kept() && cell.judged().isPresent()) {
      pen.setStroke(Color.WHITE);
      pen.setLineWidth(3);
      pen.strokeLine(x + 2, y + extent - 2, x + extent - 2, y + 2);
      pen.setStroke(Color.BLACK);
      pen.setLineWidth(1.5);
      pen.strokeLine(x + 2, y + extent - 2, x + extent - 2, y + 2);
    }
  }

  private void frame(GraphicsContext pen, ChartCell cell, Color ink, double thick) {
    pen.setStroke(ink);
    pen.setLineWidth(thick);
    pen.strokeRect(left(cell) - 1, top(cell) - 1, side - GAP + 2, side - GAP + 2);
  }

  private double left(ChartCell cell) {
    return HEAD + cell.reading().column() * side + GAP / 2;
  }

  private double top(ChartCell cell) {
    return HEAD + cell.reading().row() * side + GAP / 2;
  }
}
