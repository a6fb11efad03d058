package org.panwright.app.compare;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.panwright.analysis.Judgement;
import org.panwright.app.Selection;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.app.fx.Fitted;
import org.panwright.app.fx.Swatches;
import org.panwright.mixing.MixGrid;
import org.panwright.mixing.Ratio;
import org.panwright.paint.Paint;
import org.panwright.paint.Wash;

/**
 * The mix grid of one side, its rows and columns those of both sides together; where the side lacks
 * a paint its cells stay empty, so that equal places mean equal mixes.
 */
final class AlignedGrid extends CanvasRegion {
  private static final int ROW_LEADS = Ratio.GRID.indexOf(new Ratio(3, 1));
  private static final double HEADS = 120;
  private static final double TOP = 6;
  private static final double FONT = 11;
  private static final double LARGEST = 34;

  private List<Paint> paints = List.of();
  private Map<String, Integer> rows = Map.of();
  private Judgement judgement;
  private Selection picked = Selection.NOTHING;

  AlignedGrid(BiConsumer<String, String> pick) {
    setMinSize(HEADS + 60, 90);
    setOnMousePressed(
        event -> {
          int column = (int) Math.floor((canvasX(event.getX()) - HEADS) / cell());
          int row = (int) Math.floor((canvasY(event.getY()) - TOP) / cell());
          if (row >= 0 && column >= 0 && row < paints.size() && column < paints.size()) {
            pick.accept(paints.get(row).id(), paints.get(column).id());
          }
        });
  }

  /** Shows a side with rows and columns for these paints. */
  void show(Judgement shown, List<Paint> both) {
    judgement = shown;
    paints = List.copyOf(both);
    rows = new HashMap<>();
    for (int row = 0; row < shown.grid().size(); row++) {
      rows.put(shown.table().ids().get(shown.grid().paint(row)), row);
    }
    repaint();
  }

  /** Marks what is picked anywhere in the window. */
  void mark(Selection selection) {
    picked = selection;
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
    if (judgement == null || paints.isEmpty()) {
      return;
    }
    double size = cell();
    double extent = size * paints.size();
    pen.setFill(surround());
    pen.fillRect(HEADS - 3, TOP - 3, extent + 5, extent + 5);
    pen.setFont(Font.font(Math.min(FONT, Math.max(6, size - 1))));
    for (int row = 0; row < paints.size(); row++) {
      Paint paint = paints.get(row);
      boolean here = rows.containsKey(paint.id());
      if (size >= 8) {
        pen.setFill(here ? text() : soft().deriveColor(0, 1, 1, 0.5));
        pen.setTextAlign(TextAlignment.RIGHT);
        pen.setTextBaseline(VPos.CENTER);
        pen.fillText(
            Fitted.text(paint.name(), pen.getFont(), HEADS - 12),
            HEADS - 8,
            TOP + (row + 0.5) * size);
      }
      for (int column = 0; column < paints.size(); column++) {
        paintCell(pen, row, column, size);
      }
    }
    paintPick(pen, size);
  }

  private void paintCell(GraphicsContext pen, int row, int column, double size) {
    Integer one = rows.get(paints.get(row).id());
    Integer two = rows.get(paints.get(column).id());
    double x = HEADS + column * size;
    double y = TOP + row * size;
    if (one == null || two == null) {
      pen.setStroke(line());
      pen.setLineWidth(1);
      pen.strokeLine(x + size * 0.35, y + size * 0.65, x + size * 0.65, y + size * 0.35);
      return;
    }
    MixGrid grid = judgement.grid();
    pen.setFill(
        Swatches.color(grid.lab(one, two, one.equals(two) ? Ratio.EVEN : ROW_LEADS, Wash.CREAM)));
    pen.fillRect(x, y, size - 1, size - 1);
  }

  private void paintPick(GraphicsContext pen, double size) {
    String rowId = "";
    String columnId = "";
    if (picked instanceof Selection.OfMix mix) {
      rowId = mix.rowPaintId();
      columnId = mix.columnPaintId();
    } else if (picked instanceof Selection.OfPaint paint) {
      rowId = paint.paintId();
      columnId = paint.paintId();
    }
    int row = indexOf(rowId);
    int column = indexOf(columnId);
    if (row >= 0 && column >= 0) {
      pen.setStroke(accent());
      pen.setLineWidth(2);
      pen.strokeRect(HEADS + column * size - 1, TOP + row * size - 1, size + 1, size + 1);
      pen.setStroke(Color.WHITE);
      pen.setLineWidth(1);
      pen.strokeRect(HEADS + column * size + 1, TOP + row * size + 1, size - 3, size - 3);
    }
  }

  private int indexOf(String paintId) {
    return paints.stream().map(Paint::id).toList().indexOf(paintId);
  }
}
