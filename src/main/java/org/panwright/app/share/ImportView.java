package org.panwright.app.share;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.ColumnChoices;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.Sentence;
import org.panwright.kit.table.Duplicates;
import org.panwright.kit.table.TakenRow;
import org.panwright.paint.Paint;
import org.panwright.words.ShareWords;

/** Which column holds what, and what each row of the table would do. */
final class ImportView extends VBox {
  private final ImportModel model;
  private final Label summary = Sentence.of("", "strong");
  private final TableView<TakenRow> rows = new TableView<>();

  ImportView(ImportModel model, String file) {
    super(10);
    this.model = model;
    setPrefSize(820, 540);
    FormGrid known = new FormGrid();
    known.row(ShareWords.KNOWN_PAINTS, duplicates());
    String read =
        ShareWords.readAs(
            file,
            model.table().rows().size(),
            model.table().encoding().displayName(),
            model.table().separator());
    getChildren()
        .setAll(
            Sentence.of(read, "soft"),
            Sentence.of(ShareWords.COLUMNS, "part-heading"),
            mapping(),
            known,
            Sentence.of(ShareWords.ROWS, "part-heading"),
            rows(),
            summary);
    model.planProperty().addListener(changed -> show());
    show();
  }

  private ColumnChoices<org.panwright.kit.table.TableColumn> mapping() {
    List<String> heads = model.table().columns();
    return new ColumnChoices<>(
        model.columns(),
        ShareWords::column,
        place -> ShareWords.place(place, heads.get(place)),
        heads.size(),
        column -> model.mappingProperty().get().place(column),
        (column, place) ->
            model.mappingProperty().set(model.mappingProperty().get().with(column, place)));
  }

  private ChoiceBox<Duplicates> duplicates() {
    ChoiceBox<Duplicates> choice = new ChoiceBox<>();
    choice.getItems().setAll(Duplicates.KEEP_MINE, Duplicates.TAKE_OVER);
    if (!model.fillsLineup()) {
      choice.getItems().add(Duplicates.ADD_AGAIN);
    }
    choice.setConverter(new ByLabel<>(ShareWords::duplicates));
    choice.valueProperty().bindBidirectional(model.duplicatesProperty());
    return choice;
  }

  private TableView<TakenRow> rows() {
    rows.getStyleClass().add("framed");
    rows.setAccessibleText(ShareWords.ROWS);
    rows.getColumns()
        .setAll(
            List.of(
                column(ShareWords.LINE, 60, row -> Integer.toString(row.line())),
                column(ShareWords.PAINT, 190, row -> first(row, Paint::name)),
                column(ShareWords.PIGMENTS, 130, row -> first(row, Paint::codes)),
                column(ShareWords.OUTCOME, 410, ShareWords::outcome)));
    rows.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
    VBox.setVgrow(rows, javafx.scene.layout.Priority.ALWAYS);
    return rows;
  }

  private static TableColumn<TakenRow, String> column(
      String head, double width, Function<TakenRow, String> words) {
    TableColumn<TakenRow, String> column = new TableColumn<>(head);
    column.setPrefWidth(width);
    column.setSortable(false);
    column.setCellValueFactory(
        cell -> new ReadOnlyStringWrapper(words.apply(cell.getValue())).getReadOnlyProperty());
    column.setCellFactory(
        made ->
            new javafx.scene.control.TableCell<>() {
              @Override
              protected void updateItem(String words, boolean empty) {
                super.updateItem(words, empty);
                setText(empty ? null : words);
                setTooltip(empty || words.length() < 40 ? null : new Tooltip(words));
              }
            });
    return column;
  }

  private static String first(TakenRow row, Function<Paint, String> words) {
    return row.paints().stream().findFirst().map(words).orElse("");
  }

  private void show() {
    summary.setText(ShareWords.summary(model.planProperty().get()));
    // What needs the painter's eye comes first.
    rows.getItems()
        .setAll(
            model.planProperty().get().rows().stream()
                .sorted(Comparator.comparing(row -> row.outcome() != TakenRow.Outcome.AT_FAULT))
                .toList());
  }
}
