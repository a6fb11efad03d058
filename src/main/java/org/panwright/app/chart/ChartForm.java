package org.panwright.app.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Spinner;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.swatches.PaintChoice;
import org.panwright.swatch.grid.GridShape;
import org.panwright.words.ChartReadingWords;

/** What the painter says a chart holds: its shape, its rows and columns and their paints. */
final class ChartForm extends VBox {
  private static final double GAP = 8;
  private static final double NUMBER_WIDTH = 24;

  private final ChartModel model;
  private final ChoiceBox<GridShape> shape = new ChoiceBox<>();
  private final Spinner<Integer> rows = new Spinner<>(1, ChartPlan.MOST, 1);
  private final Spinner<Integer> across = new Spinner<>(1, ChartPlan.MOST, 1);
  private final CheckBox same = new CheckBox(ChartReadingWords.SAME);
  private final Label rowHeading = new Label();
  private final Label columnHeading = new Label(ChartReadingWords.COLUMNS);
  private final VBox rowPaints = new VBox(4);
  private final VBox columnPaints = new VBox(4);
  private boolean filling;

  ChartForm(ChartModel model) {
    super(GAP);
    this.model = model;
    Label heading = new Label(ChartReadingWords.HOLDS);
    heading.getStyleClass().add("pane-title");
    shape.getItems().setAll(GridShape.values());
    shape.setConverter(new ByLabel<>(ChartReadingWords::shape));
    rows.setEditable(true);
    across.setEditable(true);
    FormGrid form = new FormGrid();
    form.row(ChartReadingWords.SHAPE, shape);
    form.row(ChartReadingWords.HOW_MANY, rows);
    form.row(ChartReadingWords.ACROSS, across);
    for (Node part : List.of(same, columnHeading, columnPaints)) {
      part.managedProperty().bind(part.visibleProperty());
    }
    for (Label label : List.of(rowHeading, columnHeading)) {
      label.getStyleClass().add("soft");
    }
    getChildren().setAll(heading, form, rowHeading, rowPaints, same, columnHeading, columnPaints);
    listen();
    model.planProperty().addListener(changed -> show());
    model.stateProperty().addListener(changed -> showPaints());
    show();
  }

  private void listen() {
    shape
        .valueProperty()
        .addListener((property, before, now) -> say(model.planProperty().get().withShape(now)));
    rows.valueProperty()
        .addListener(
            (property, before, now) ->
                say(model.planProperty().get().withCount(true, now, model.paints())));
    across
        .valueProperty()
        .addListener(
            (property, before, now) -> {
              ChartPlan plan = model.planProperty().get();
              say(
                  plan.hasPairs()
                      ? plan.withCount(false, now, model.paints())
                      : plan.withAcross(now));
            });
    same.setWrapText(true);
    same.setOnAction(event -> say(model.planProperty().get().withSameColumns(same.isSelected())));
  }

  private void say(ChartPlan changed) {
    if (!filling) {
      model.setPlan(changed);
    }
  }

  private void show() {
    ChartPlan plan = model.planProperty().get();
    filling = true;
    shape.setValue(plan.shape());
    rows.getValueFactory().setValue(Math.max(1, plan.rows().size()));
    boolean columnsApart = plan.hasPairs() && plan.otherColumns().isPresent();
    across
        .getValueFactory()
        .setValue(plan.hasPairs() ? Math.max(1, plan.columns().size()) : plan.across());
    across.setDisable(plan.hasPairs() && !columnsApart);
    same.setSelected(plan.otherColumns().isEmpty());
    filling = false;
    same.setVisible(plan.hasPairs());
    columnHeading.setVisible(columnsApart);
    columnPaints.setVisible(columnsApart);
    rowHeading.setText(
        !plan.hasPairs()
            ? ChartReadingWords.IN_ORDER
            : columnsApart ? ChartReadingWords.ROWS : ChartReadingWords.BOTH);
    showPaints();
  }

  private void showPaints() {
    ChartPlan plan = model.planProperty().get();
    list(rowPaints, plan.rows(), true);
    list(columnPaints, plan.otherColumns().orElse(List.of()), false);
  }

  /** As many choices as there are paints; those there are already keep the keyboard. */
  private void list(VBox box, List<String> ids, boolean row) {
    List<Node> lines = new ArrayList<>(box.getChildren());
    while (lines.size() > ids.size()) {
      lines.remove(lines.size() - 1);
    }
    while (lines.size() < ids.size()) {
      lines.add(line(lines.size(), row));
    }
    if (!lines.equals(box.getChildren())) {
      box.getChildren().setAll(lines);
    }
    for (int i = 0; i < ids.size(); i++) {
      PaintChoice choice = (PaintChoice) ((HBox) lines.get(i)).getChildren().get(1);
      choice.show(model.paints(), Optional.of(ids.get(i)));
    }
  }

  private HBox line(int place, boolean row) {
    Label number = new Label(String.valueOf(place + 1));
    number.getStyleClass().add("soft");
    number.setMinWidth(NUMBER_WIDTH);
    PaintChoice choice =
        new PaintChoice(
            Optional.empty(),
            id ->
                id.ifPresent(
                    paint -> say(model.planProperty().get().withPaint(row, place, paint))));
    choice.setAccessibleText(
        row ? ChartReadingWords.row(place + 1) : ChartReadingWords.column(place + 1));
    number.setLabelFor(choice);
    HBox.setHgrow(choice, Priority.ALWAYS);
    HBox line = new HBox(GAP, number, choice);
    line.setAlignment(Pos.CENTER_LEFT);
    return line;
  }
}
