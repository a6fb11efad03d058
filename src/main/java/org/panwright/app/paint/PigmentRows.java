package org.panwright.app.paint;

import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.panwright.paint.Pigment;
import org.panwright.words.PaintEditorWords;

/** The pigments of the paint being edited, a row each: code, name, parts, share, take out. */
final class PigmentRows extends VBox {
  private final PaintEditorModel model;

  PigmentRows(PaintEditorModel model) {
    super(5);
    this.model = model;
    model.pigments().addListener(this::follow);
    rebuild();
  }

  /** A part typed in is a change of the same rows, which then keep their focus. */
  private void follow(ListChangeListener.Change<? extends PigmentPart> change) {
    boolean rowsChanged = false;
    while (change.next()) {
      rowsChanged |= change.wasAdded() || change.wasRemoved();
    }
    if (rowsChanged) {
      rebuild();
    }
  }

  private void rebuild() {
    getChildren().clear();
    model.pigments().forEach(part -> getChildren().add(row(part)));
    Label problem = new Label();
    problem.getStyleClass().add(model.pigments().isEmpty() ? "soft" : "field-problem");
    problem.setWrapText(true);
    problem.textProperty().bind(model.pigmentsProblemProperty());
    problem.managedProperty().bind(problem.textProperty().isNotEmpty());
    getChildren().add(problem);
  }

  private HBox row(PigmentPart part) {
    Label code = new Label(part.pigment().code());
    code.setMinWidth(58);
    code.getStyleClass().add("strong");
    Label name =
        new Label(model.library().find(part.pigment()).map(Pigment::commonName).orElse(""));
    name.getStyleClass().add("soft");
    name.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(name, Priority.ALWAYS);
    TextField parts = new TextField();
    parts.setPrefColumnCount(4);
    parts.setMinWidth(64);
    parts.setAlignment(Pos.CENTER_RIGHT);
    parts.setAccessibleText(PaintEditorWords.partsOf(part.pigment().toString()));
    parts.textProperty().bindBidirectional(part.partsProperty());
    Label unit = new Label();
    unit.textProperty().bind(part.partsProperty().map(PaintEditorWords::unit));
    unit.getStyleClass().add("soft");
    unit.setMinWidth(USE_PREF_SIZE);
    Label share = new Label();
    share.setMinWidth(44);
    share.setAlignment(Pos.CENTER_RIGHT);
    share.textProperty().bind(Bindings.createStringBinding(() -> share(part), model.pigments()));
    Button remove = new Button("✕");
    remove.getStyleClass().add("quiet");
    remove.setTooltip(new javafx.scene.control.Tooltip(PaintEditorWords.REMOVE_PIGMENT));
    remove.setAccessibleText(PaintEditorWords.REMOVE_PIGMENT + " " + part.pigment());
    remove.setOnAction(event -> model.remove(part));
    HBox row = new HBox(8, code, name, parts, unit, share, remove);
    row.setAlignment(Pos.CENTER_LEFT);
    return row;
  }

  private String share(PigmentPart part) {
    var share = model.share(part);
    return share.isPresent() ? PaintEditorWords.share(share.getAsDouble()) : "";
  }
}
