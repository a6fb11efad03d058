package org.panwright.app.boxes;

import java.util.List;
import java.util.OptionalDouble;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.Sentence;
import org.panwright.app.fx.TypedNumber;
import org.panwright.kit.Box;
import org.panwright.words.BoxEditorWords;

/** The drawing with its hint on the left; sizes and the well picked on the right. */
final class BoxEditorView extends HBox {
  private static final double TOLD_HEIGHT = 76;

  private final BoxEditorModel model;
  private final TextField name = new TextField();

  /**
   * @param plans ready-made boxes to start from
   */
  BoxEditorView(BoxEditorModel model, List<Box> plans) {
    super(24);
    this.model = model;
    BoxSketch sketch = new BoxSketch(model);
    VBox.setVgrow(sketch, Priority.ALWAYS);
    Button undo = new Button(BoxEditorWords.UNDO);
    undo.setOnAction(event -> model.undo());
    undo.disableProperty().bind(model.undoableProperty().not());
    Button redo = new Button(BoxEditorWords.REDO);
    redo.setOnAction(event -> model.redo());
    redo.disableProperty().bind(model.redoableProperty().not());
    Label fit = Sentence.of("", "soft");
    fit.textProperty().bind(model.fitProperty());
    fit.managedProperty().bind(model.fitProperty().map(text -> !text.isEmpty()));
    VBox told =
        new VBox(4, fit, problem(model.problemProperty()), problem(model.leavingProperty()));
    // As high with one line as with four, so that the drawing stays where it is under the mouse.
    told.setMinHeight(TOLD_HEIGHT);
    VBox left =
        new VBox(
            10, sketch, new HBox(8, undo, redo), Sentence.of(BoxEditorWords.HINT, "soft"), told);
    left.setPrefWidth(570);
    HBox.setHgrow(left, Priority.ALWAYS);
    VBox right =
        new VBox(
            14,
            boxFields(plans),
            heading(BoxEditorWords.WELL),
            new WellFields(model),
            heading(BoxEditorWords.PART),
            new PartFields(model));
    ScrollPane fields = new ScrollPane(right);
    fields.setFitToWidth(true);
    fields.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    fields.setMinWidth(340);
    getChildren().setAll(left, fields);
    setPrefHeight(600);
  }

  /** What has the keyboard at first. */
  Node firstField() {
    return name;
  }

  private FormGrid boxFields(List<Box> plans) {
    FormGrid grid = new FormGrid();
    name.setText(model.draft().name());
    name.textProperty()
        .addListener((property, before, now) -> model.change(draft -> draft.named(now)));
    model
        .draftProperty()
        .addListener(
            (property, before, now) -> {
              if (!name.getText().equals(now.name())) {
                name.setText(now.name());
              }
            });
    grid.row(BoxEditorWords.NAME, name);
    RowsAndColumns rowsAndColumns = new RowsAndColumns(model);
    grid.row(BoxEditorWords.START_FROM, plans(plans, rowsAndColumns));
    rowsAndColumns.addTo(grid);
    SizePair inside =
        new SizePair(
            BoxEditorWords.WIDTH,
            BoxEditorWords.HEIGHT,
            (width, height) -> model.change(draft -> draft.sized(width, height)));
    SizePair lid =
        new SizePair(
            BoxEditorWords.WIDTH,
            BoxEditorWords.HEIGHT,
            (width, height) -> model.change(draft -> draft.withLid(width, height)));
    grid.row(BoxEditorWords.INSIDE, inside);
    grid.row(BoxEditorWords.LID, lid);
    grid.row(BoxEditorWords.DEPTH, depth());
    model.draftProperty().addListener(changed -> show(inside, lid));
    show(inside, lid);
    return grid;
  }

  private TextField depth() {
    TextField depth = new TextField();
    depth.setPromptText(BoxEditorWords.DEPTH_PROMPT);
    model.draft().depthMm().ifPresent(mm -> depth.setText(TypedNumber.write(mm, 2)));
    depth
        .textProperty()
        .addListener(
            (property, before, now) ->
                model.change(
                    draft ->
                        draft.withDepth(
                            now.isBlank()
                                ? OptionalDouble.empty()
                                : OptionalDouble.of(TypedNumber.read(now).orElse(Double.NaN)))));
    model
        .draftProperty()
        .addListener(
            (property, before, now) -> {
              double shown = TypedNumber.read(depth.getText()).orElse(Double.NaN);
              double mm = now.depthMm().orElse(Double.NaN);
              if (Double.compare(shown, mm) != 0 && !Double.isNaN(mm)) {
                depth.setText(TypedNumber.write(mm, 2));
              } else if (now.depthMm().isEmpty() && !depth.getText().isBlank()) {
                depth.clear();
              }
            });
    return depth;
  }

  private static Label heading(String text) {
    Label heading = new Label(text);
    heading.getStyleClass().add("part-heading");
    return heading;
  }

  private void show(SizePair inside, SizePair lid) {
    BoxDraft draft = model.draft();
    inside.show(draft.widthMm(), draft.heightMm());
    lid.show(draft.lidWidthMm(), draft.lidHeightMm());
  }

  private ComboBox<Box> plans(List<Box> plans, RowsAndColumns rowsAndColumns) {
    ComboBox<Box> choice = new ComboBox<>();
    choice.setPromptText(BoxEditorWords.START_PROMPT);
    choice.setConverter(new ByLabel<>(Box::name));
    choice.getItems().setAll(plans);
    choice
        .valueProperty()
        .addListener(
            (property, before, now) -> {
              if (now != null) {
                model.startFrom(now);
                rowsAndColumns.show(model.draft());
              }
            });
    return choice;
  }

  private static Label problem(ObservableValue<String> text) {
    Label label = Sentence.of("", "field-problem");
    label.textProperty().bind(text);
    label.managedProperty().bind(text.map(now -> !now.isEmpty()));
    return label;
  }
}
