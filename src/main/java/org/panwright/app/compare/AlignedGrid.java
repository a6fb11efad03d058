package org.panwright.app.compare;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.app.fx.Fitted;
import org.panwright.app.fx.Swatches;
import org.panwright.colour.Srgb;
import org.panwright.paint.Paint;

/**
 * The mix grid of one side, its rows and columns those of both sides together; where the side lacks
 * a paint its cells stay empty, so that equal places mean equal mixes. Arrow keys pick, Enter
 * opens.
 */
final class AlignedGrid extends CanvasRegion {
  private static final double HEADS = 120;
  private static final double TOP = 6;
  private static final double FONT = 11;
  private static final double LARGEST = 34;
  private static final double SMALLEST_NAMED = 8;

  private final PickedCell picked;
  private List<Paint> paints = List.of();
  private List<String> names = List.of();
  private double namedAt = -1;
  private Optional<AlignedCells> cells = Optional.empty();

  /**
   * @param picked the cell picked on both sides
   * @param open shows the picked mix large
   * @param hovered told the cell under the pointer
   */
  AlignedGrid(PickedCell picked, Runnable open, Consumer<Optional<int[]>> hovered) {
    this.picked = picked;
    getStyleClass().add("aligned-grid");
    setMinSize(HEADS + 60, 90);
    setFocusTraversable(true);
    focusedProperty().addListener(changed -> repaint());
    setOnMousePressed(
        event -> {
          requestFocus();
          cellAt(event).ifPresent(at -> picked.pick(at[0], at[1]));
        });
    setOnMouseClicked(
        event -> {
          if (event.getClickCount() == 2 && cellAt(event).isPresent()) {
            open.run();
          }
        });
    setOnMouseMoved(event -> hovered.accept(cellAt(event)));
    setOnMouseExited(event -> hovered.accept(Optional.empty()));
    setOnKeyPressed(event -> act(event, open));
  }

  private void act(KeyEvent event, Runnable open) {
    switch (event.getCode()) {
      case UP -> picked.step(-1, 0);
      case DOWN -> picked.step(1, 0);
      case LEFT -> picked.step(0, -1);
      case RIGHT -> picked.step(0, 1);
      case ENTER -> {
        if (picked.place().isEmpty()) {
          return;
        }
        open.run();
      }
      default -> {
        return;
      }
    }
    event.consume();
  }

  private Optional<int[]> cellAt(MouseEvent event) {
    int column = (int) Math.floor((canvasX(event.getX()) - HEADS) / cell());
    int row = (int) Math.floor((canvasY(event.getY()) - TOP) / cell());
    boolean inside = row >= 0 && column >= 0 && row < paints.size() && column < paints.size();
    return inside ? Optional.of(new int[] {row, column}) : Optional.empty();
  }

  /** Shows a side with rows and columns for these paints. */
  void show(AlignedCells shown, List<Paint> both) {
    cells = Optional.of(shown);
    if (!paints.equals(both)) {
      paints = List.copyOf(both);
      namedAt = -1;
    }
    repaint();
  }

  private double cell() {
    double width = getWidth() - HEADS - snappedLeftInset() - snappedRightInset();
    double height = getHeight() - TOP - snappedTopInset() - snappedBottomInset();
    return Math.max(
        3, Math.min(LARGEST, Math.floor(Math.min(width, height) / Math.max(1, paints.size()))));
  }

  @Override
  protected void paint(GraphicsContext pen, double width, double height) {
    if (cells.isEmpty() || paints.isEmpty()) {
      return;
    }
    double size = cell();
    double extent = size * paints.size();
    pen.setFill(surround());
    pen.fillRect(HEADS - 3, TOP - 3, extent + 5, extent + 5);
    paintNames(pen, cells.get(), size);
    for (int row = 0; row < paints.size(); row++) {
      for (int column = 0; column < paints.size(); column++) {
        paintCell(pen, cells.get().at(row, column), row, column, size);
      }
    }
    if (isFocused()) {
      pen.setStroke(accent());
      pen.setLineWidth(2);
      pen.strokeRect(HEADS - 4, TOP - 4, extent + 7, extent + 7);
    }
    picked.place().ifPresent(at -> paintPick(pen, at[0], at[1], size));
  }

  private void paintNames(GraphicsContext pen, AlignedCells shown, double size) {
    if (size < SMALLEST_NAMED) {
      return;
    }
    pen.setFont(Font.font(Math.min(FONT, size - 1)));
    if (namedAt != size) {
      names =
          paints.stream()
              .map(paint -> Fitted.text(paint.name(), pen.getFont(), HEADS - 12))
              .toList();
      namedAt = size;
    }
    pen.setTextAlign(TextAlignment.RIGHT);
    pen.setTextBaseline(VPos.CENTER);
    for (int row = 0; row < names.size(); row++) {
      pen.setFill(shown.holds(row) ? text() : soft());
      pen.fillText(names.get(row), HEADS - 8, TOP + (row + 0.5) * size);
    }
  }

  private void paintCell(
      GraphicsContext pen, Optional<Srgb> colour, int row, int column, double size) {
    double x = HEADS + column * size;
    double y = TOP + row * size;
    if (colour.isPresent()) {
      pen.setFill(Swatches.color(colour.get()));
      pen.fillRect(x, y, size - 1, size - 1);
    } else {
      pen.setStroke(line());
      pen.setLineWidth(1);
      pen.strokeLine(x + size * 0.35, y + size * 0.65, x + size * 0.65, y + size * 0.35);
    }
  }

  private void paintPick(GraphicsContext pen, int row, int column, double size) {
    pen.setStroke(accent());
    pen.setLineWidth(isFocused() ? 3 : 2);
    pen.strokeRect(HEADS + column * size - 1, TOP + row * size - 1, size + 1, size + 1);
    pen.setStroke(Color.WHITE);
    pen.setLineWidth(1);
    pen.strokeRect(HEADS + column * size + 1, TOP + row * size + 1, size - 3, size - 3);
  }
}
