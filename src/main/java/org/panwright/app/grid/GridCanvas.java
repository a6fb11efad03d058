package org.panwright.app.grid;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.app.fx.Fitted;
import org.panwright.app.fx.Swatches;
import org.panwright.colour.Srgb;

/** Paints the mix grid: heads, cells, the picked cell, cells the screen cannot show. */
final class GridCanvas extends CanvasRegion {
  private static final double HEAD_FONT = 11;
  private static final double SMALLEST_HEAD = 9;
  private static final double GAP = 1;
  private static final double GROUND = 4;
  private static final double FOCUS_RING = 2;
  private static final double HEAD_MARGIN = 14;

  /** The share of the width the names may take from the swatches. */
  private static final double MOST_FOR_NAMES = 0.36;

  private static final GridGeometry NOTHING = GridGeometry.fitting(0, 1, 1, 0, 0);

  private final GridModel model;
  private GridGeometry geometry = NOTHING;

  /** Width of the column that holds the wells' labels, left of the names. */
  private double wells;

  /**
   * @param hovered told the cell under the pointer
   * @param open goes to the picked mix shown large
   */
  GridCanvas(GridModel model, Consumer<Optional<int[]>> hovered, Runnable open) {
    this.model = model;
    getStyleClass().add("grid-canvas");
    setFocusTraversable(true);
    model.pictureProperty().addListener(o -> repaint());
    model.selectionProperty().addListener(o -> repaint());
    focusedProperty().addListener(o -> repaint());
    setOnMouseMoved(e -> hovered.accept(geometry.cellAt(canvasX(e.getX()), canvasY(e.getY()))));
    setOnMouseExited(e -> hovered.accept(Optional.empty()));
    setOnMousePressed(
        e -> {
          requestFocus();
          geometry
              .cellAt(canvasX(e.getX()), canvasY(e.getY()))
              .ifPresent(at -> model.pick(at[0], at[1]));
        });
    setOnKeyPressed(
        e -> {
          switch (e.getCode()) {
            case UP -> model.step(-1, 0);
            case DOWN -> model.step(1, 0);
            case LEFT -> model.step(0, -1);
            case RIGHT -> model.step(0, 1);
            case ENTER -> {
              if (model.picked().isEmpty()) {
                return;
              }
              open.run();
            }
            default -> {
              return;
            }
          }
          e.consume();
        });
  }

  @Override
  protected void paint(GraphicsContext pen, double width, double height) {
    GridPicture picture = model.picture();
    if (picture.size() == 0) {
      geometry = NOTHING;
      return;
    }
    Font font = Font.font(HEAD_FONT);
    wells = widest(picture, GridPicture.Head::well, font) + HEAD_MARGIN;
    double names = widest(picture, GridPicture.Head::name, font) + HEAD_MARGIN;
    double left = wells + Math.min(names, Math.max(60, width * MOST_FOR_NAMES - wells));
    double codes = widest(picture, GridPicture.Head::codes, font) + HEAD_MARGIN;
    double heads = Math.min(tallestHeads(height), Math.max(44, codes));
    // Heads too small to be read are not painted, and leave their room to the swatches.
    boolean rowsNamed = (height - heads) / picture.size() >= SMALLEST_HEAD;
    boolean columnsNamed = (width - left) / picture.size() >= SMALLEST_HEAD;
    geometry =
        GridGeometry.fitting(
            picture.size(),
            width - GROUND,
            height - GROUND,
            rowsNamed ? left : GROUND,
            columnsNamed ? heads : GROUND);
    paintGround(pen);
    for (int row = 0; row < picture.size(); row++) {
      if (rowsNamed) {
        paintRowHead(pen, picture.heads().get(row), row);
      }
      if (columnsNamed) {
        paintColumnHead(pen, picture.heads().get(row), row);
      }
      for (int column = 0; column < picture.size(); column++) {
        paintCell(pen, picture, row, column);
      }
    }
    model.picked().ifPresent(at -> paintPick(pen, at[0], at[1]));
  }

  /** The ground of the swatches, with a ring round it while the keyboard is here. */
  private void paintGround(GraphicsContext pen) {
    double x = geometry.left() - GROUND;
    double y = geometry.top() - GROUND;
    double w = geometry.size() * geometry.cellWidth() + 2 * GROUND - GAP;
    double h = geometry.size() * geometry.cellHeight() + 2 * GROUND - GAP;
    pen.setFill(surround());
    pen.fillRect(x, y, w, h);
    if (isFocused()) {
      pen.setStroke(focus());
      pen.setLineWidth(FOCUS_RING);
      pen.strokeRect(x + FOCUS_RING / 2, y + FOCUS_RING / 2, w - FOCUS_RING, h - FOCUS_RING);
    }
  }

  private void paintCell(GraphicsContext pen, GridPicture picture, int row, int column) {
    GridPicture.Cell cell = picture.cell(row, column);
    double x = geometry.x(column);
    double y = geometry.y(row);
    double w = geometry.cellWidth() - GAP;
    double h = geometry.cellHeight() - GAP;
    pen.setFill(Swatches.color(cell.colour().shown()));
    pen.fillRect(x, y, w, h);
    if (!cell.colour().exact() && Math.min(w, h) >= 10) {
      pen.setFill(over(cell.colour().shown()));
      pen.fillPolygon(
          new double[] {x + w, x + w, x + w - 5}, new double[] {y + h, y + h - 5, y + h}, 3);
    }
    if (row == column && Math.min(w, h) >= 10) {
      pen.setStroke(over(cell.colour().shown()));
      pen.setLineWidth(1);
      pen.strokeLine(x + 3, y + 3, x + 7, y + 7);
    }
  }

  private void paintRowHead(GraphicsContext pen, GridPicture.Head head, int row) {
    if (geometry.cellHeight() < SMALLEST_HEAD) {
      return;
    }
    double middle = geometry.y(row) + (geometry.cellHeight() - GAP) / 2;
    pen.setFont(Font.font(Math.min(HEAD_FONT, geometry.cellHeight() - 1)));
    pen.setTextBaseline(VPos.CENTER);
    pen.setTextAlign(TextAlignment.LEFT);
    pen.setFill(head.fresh() ? accent() : soft());
    pen.fillText(head.well(), 2, middle);
    pen.setFill(head.fresh() ? accent() : text());
    pen.fillText(
        Fitted.text(head.name(), pen.getFont(), geometry.left() - wells - HEAD_MARGIN),
        wells,
        middle);
  }

  private void paintColumnHead(GraphicsContext pen, GridPicture.Head head, int column) {
    if (geometry.cellWidth() < SMALLEST_HEAD) {
      return;
    }
    pen.save();
    pen.translate(geometry.x(column) + (geometry.cellWidth() - GAP) / 2, geometry.top() - 8);
    pen.rotate(-90);
    pen.setFont(Font.font(Math.min(HEAD_FONT, geometry.cellWidth() - 1)));
    pen.setTextBaseline(VPos.CENTER);
    pen.setTextAlign(TextAlignment.LEFT);
    pen.setFill(head.fresh() ? accent() : text());
    pen.fillText(Fitted.text(head.codes(), pen.getFont(), geometry.top() - 12), 0, 0);
    pen.restore();
  }

  private void paintPick(GraphicsContext pen, int row, int column) {
    double x = geometry.x(column) - GAP;
    double y = geometry.y(row) - GAP;
    double w = geometry.cellWidth() + GAP;
    double h = geometry.cellHeight() + GAP;
    pen.setLineWidth(isFocused() ? 4 : 2);
    pen.setStroke(isFocused() ? focus() : accent());
    pen.strokeRect(x, y, w, h);
    pen.setLineWidth(1);
    pen.setStroke(Color.WHITE);
    pen.strokeRect(x + 2.5, y + 2.5, w - 5, h - 5);
  }

  private static double tallestHeads(double height) {
    return Math.min(96, Math.max(64, height * 0.22));
  }

  private static double widest(
      GridPicture picture, Function<GridPicture.Head, String> text, Font font) {
    return picture.heads().stream()
        .mapToDouble(head -> Fitted.width(text.apply(head), font))
        .max()
        .orElse(0);
  }

  /** Black or white, whichever shows on a swatch. */
  private static Color over(Srgb swatch) {
    double luminance = swatch.toXyzD65().y();
    return luminance > 0.18 ? Color.gray(0, 0.7) : Color.gray(1, 0.8);
  }
}
