package org.panwright.app.paint;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.panwright.app.chip.Tones;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.PassedKeys;
import org.panwright.app.fx.Sentence;
import org.panwright.paint.Granulation;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Ownership;
import org.panwright.paint.Staining;
import org.panwright.paint.Transparency;
import org.panwright.words.PaintEditorWords;
import org.panwright.words.PaintWords;

/** The fields of a paint on the left; how it handles and looks on the right. */
final class PaintEditorView extends HBox {
  private final TextField name = new TextField();

  /**
   * @param tones how the paint the fields make is predicted to look
   * @param looks how the pigments of the library look alone
   */
  PaintEditorView(
      PaintEditorModel model, ObservableValue<Optional<Tones>> tones, PigmentPicker.Looks looks) {
    super(26);
    Label added = Sentence.of("", "soft");
    added.textProperty().bind(model.addedProperty());
    added.managedProperty().bind(model.addedProperty().isNotEmpty());
    VBox left =
        new VBox(10, added, tube(model), part(PaintEditorWords.PIGMENTS), new PigmentRows(model));
    PigmentPicker picker =
        new PigmentPicker(
            new PigmentSearch(model.library()), looks, pigment -> model.add(pigment.name()));
    left.getChildren().addAll(part(PaintEditorWords.SEARCH), picker);
    VBox.setVgrow(picker, Priority.ALWAYS);
    left.setPrefWidth(440);
    VBox handles = new VBox(10, part(PaintEditorWords.HANDLING), handling(model.handling()));
    // Without a pigment nothing is known of it, and the fields would claim something.
    handles.visibleProperty().bind(Bindings.isNotEmpty(model.pigments()));
    VBox right =
        new VBox(
            10,
            part(PaintEditorWords.LOOKS),
            new PaintPreview(tones),
            handles,
            part(PaintEditorWords.NOTE),
            note(model));
    if (model.isMeasured()) {
      right.getChildren().add(2, measured(model));
    }
    right.setPrefWidth(350);
    HBox.setHgrow(left, Priority.ALWAYS);
    getChildren().setAll(left, right);
    setPrefHeight(520);
  }

  /** What has the keyboard at first. */
  Node firstField() {
    return name;
  }

  private FormGrid tube(PaintEditorModel model) {
    FormGrid grid = new FormGrid();
    name.setId("paint-name");
    name.promptTextProperty()
        .bind(
            model
                .impliedNameProperty()
                .map(text -> text.isEmpty() ? PaintEditorWords.NAME_PROMPT : text));
    name.textProperty().bindBidirectional(model.nameProperty());
    grid.row(PaintEditorWords.NAME, name, model.nameProblemProperty());
    TextField maker = new TextField();
    maker.setPromptText(PaintEditorWords.MAKER_PROMPT);
    maker.textProperty().bindBidirectional(model.makerProperty());
    grid.row(PaintEditorWords.MAKER, maker);
    grid.row(
        PaintEditorWords.OWNERSHIP,
        choice(Ownership.values(), PaintWords::label, model.ownershipProperty()));
    return grid;
  }

  private static Node handling(HandlingFields fields) {
    CheckBox asUsual = new CheckBox(PaintEditorWords.AS_USUAL);
    asUsual.selectedProperty().bindBidirectional(fields.asUsualProperty());
    FormGrid grid = new FormGrid();
    Function<Transparency, String> transparency = PaintWords::label;
    Function<Staining, String> staining = PaintWords::label;
    Function<Granulation, String> granulation = PaintWords::label;
    Function<Lightfastness, String> lightfastness = PaintWords::label;
    grid.row(
        PaintEditorWords.TRANSPARENCY,
        choice(Transparency.values(), transparency, fields.transparencyProperty()));
    grid.row(
        PaintEditorWords.STAINING, choice(Staining.values(), staining, fields.stainingProperty()));
    grid.row(
        PaintEditorWords.GRANULATION,
        choice(Granulation.values(), granulation, fields.granulationProperty()));
    grid.row(
        PaintEditorWords.LIGHTFASTNESS,
        choice(Lightfastness.values(), lightfastness, fields.lightfastnessProperty()));
    for (Node field : grid.getChildren()) {
      if (field instanceof ChoiceBox<?>) {
        field.disableProperty().bind(asUsual.selectedProperty());
      }
    }
    return new VBox(8, asUsual, grid);
  }

  private static Node note(PaintEditorModel model) {
    TextArea note = new TextArea();
    note.setWrapText(true);
    note.setPrefRowCount(2);
    note.setMinHeight(48);
    note.setAccessibleText(PaintEditorWords.NOTE);
    note.textProperty().bindBidirectional(model.noteProperty());
    PassedKeys.through(note);
    return note;
  }

  private static Node measured(PaintEditorModel model) {
    CheckBox keep = new CheckBox(PaintEditorWords.KEEP_MEASURED);
    keep.setWrapText(true);
    keep.selectedProperty().bindBidirectional(model.keepMeasuredProperty());
    return keep;
  }

  private static Label part(String heading) {
    Label label = new Label(heading);
    label.getStyleClass().add("part-heading");
    return label;
  }

  private static <E> ChoiceBox<E> choice(
      E[] values, Function<E, String> words, ObjectProperty<E> chosen) {
    ChoiceBox<E> box = new ChoiceBox<>();
    box.getItems().setAll(List.of(values));
    box.setConverter(new ByLabel<>(words));
    box.valueProperty().bindBidirectional(chosen);
    return box;
  }
}
