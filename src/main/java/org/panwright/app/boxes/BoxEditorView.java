package org.panwright.app.boxes;

import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.kit.Box;
import org.panwright.words.BoxEditorWords;

/** The drawing with its hint on the left; sizes and the well picked on the right. */
final class BoxEditorView extends HBox {
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
    VBox left =
        new VBox(
            10,
            sketch,
            sentence(BoxEditorWords.HINT, "soft"),
            problem(model.problemProperty()),
            problem(model.leavingProperty()));
    left.setPrefWidth(570);
    HBox.setHgrow(left, Priority.ALWAYS);
    Label wellHeading = new Label(BoxEditorWords.WELL);
    wellHeading.getStyleClass().add("part-heading");
    VBox right = new VBox(14, boxFields(plans), wellHeading, new WellFields(model));
    right.setMinWidth(300);
    getChildren().setAll(left, right);
    setPrefHeight(560);
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
    grid.row(BoxEditorWords.NAME, name);
    grid.row(BoxEditorWords.START_FROM, plans(plans));
    new RowsAndColumns(model).addTo(grid);
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
    model.draftProperty().addListener(changed -> show(inside, lid));
    show(inside, lid);
    return grid;
  }

  private void show(SizePair inside, SizePair lid) {
    BoxDraft draft = model.draft();
    inside.show(draft.widthMm(), draft.heightMm());
    lid.show(draft.lidWidthMm(), draft.lidHeightMm());
  }

  private ComboBox<Box> plans(List<Box> plans) {
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
              }
            });
    return choice;
  }

  private static Label problem(ObservableValue<String> text) {
    Label label = sentence("", "field-problem");
    label.textProperty().bind(text);
    label.managedProperty().bind(text.map(now -> !now.isEmpty()));
    return label;
  }

  private static Label sentence(String text, String style) {
    Label label = new Label(text);
    label.getStyleClass().add(style);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }
}
