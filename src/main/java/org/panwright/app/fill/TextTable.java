package org.panwright.app.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import org.panwright.app.fx.LateTip;

/** A table of plain words and figures that keeps what is picked when its rows are made anew. */
final class TextTable<R> extends TableView<R> {
  private static final double SCROLL_BAR = 16;

  /** Shorter words are seen whole. */
  private static final int LONG = 16;

  private final List<Double> widths = new ArrayList<>();
  private boolean isNarrow;

  /**
   * @param name for readers of the screen
   * @param nothing said when there are no rows
   */
  TextTable(String name, String nothing) {
    getStyleClass().addAll("framed", "text-table");
    setAccessibleText(name);
    Label placeholder = new Label(nothing);
    placeholder.getStyleClass().add("soft");
    placeholder.setWrapText(true);
    setPlaceholder(placeholder);
    setColumnResizePolicy(CONSTRAINED_RESIZE_POLICY_SUBSEQUENT_COLUMNS);
    widthProperty().addListener(changed -> fit());
  }

  /** Columns share a wide table; in a narrow one they keep their widths and are scrolled. */
  private void fit() {
    double wanted = 0;
    for (double width : widths) {
      wanted += width;
    }
    boolean narrow = getWidth() > 0 && getWidth() < wanted + SCROLL_BAR;
    if (narrow != isNarrow) {
      isNarrow = narrow;
      setColumnResizePolicy(
          narrow ? UNCONSTRAINED_RESIZE_POLICY : CONSTRAINED_RESIZE_POLICY_SUBSEQUENT_COLUMNS);
      for (int i = 0; i < widths.size(); i++) {
        getColumns().get(i).setPrefWidth(widths.get(i));
      }
    }
  }

  /** Adds a column of words. */
  TextTable<R> words(String heading, double width, Function<R, String> text) {
    TableColumn<R, String> column = new TableColumn<>(heading);
    column.setCellValueFactory(row -> new ReadOnlyStringWrapper(text.apply(row.getValue())));
    column.setCellFactory(of -> new WordsCell<>());
    column.setPrefWidth(width);
    widths.add(width);
    getColumns().add(column);
    return this;
  }

  /** Adds a column of figures, set to the right and sorted by their size. */
  TextTable<R> figures(
      String heading, double width, ToDoubleFunction<R> size, Function<R, String> text) {
    TableColumn<R, R> column = new TableColumn<>(heading);
    column.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(row.getValue()));
    column.setComparator((a, b) -> Double.compare(size.applyAsDouble(a), size.applyAsDouble(b)));
    column.setCellFactory(
        of ->
            new TableCell<>() {
              @Override
              protected void updateItem(R item, boolean empty) {
                super.updateItem(item, empty);
                setText(empty || item == null ? "" : text.apply(item));
              }
            });
    column.getStyleClass().add("figures");
    column.setPrefWidth(width);
    widths.add(width);
    getColumns().add(column);
    return this;
  }

  /** Words that may be too long for their cell stand whole in its tip. */
  private static final class WordsCell<R> extends TableCell<R, String> {
    WordsCell() {
      LateTip.on(this, () -> getText() == null || getText().length() < LONG ? "" : getText());
    }

    @Override
    protected void updateItem(String item, boolean empty) {
      super.updateItem(item, empty);
      setText(empty ? "" : item);
    }
  }
}
