package org.panwright.app.dialogs;

import javafx.beans.value.ObservableValue;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** Fields under each other, each with its label on the left and room for a sentence beneath. */
public final class FormGrid extends GridPane {
  private int rows;

  /** An empty form. */
  public FormGrid() {
    getStyleClass().add("form");
    ColumnConstraints labels = new ColumnConstraints();
    labels.setMinWidth(Region.USE_PREF_SIZE);
    ColumnConstraints fields = new ColumnConstraints();
    fields.setHgrow(Priority.ALWAYS);
    fields.setFillWidth(true);
    getColumnConstraints().setAll(labels, fields);
  }

  /** Adds a field. */
  public void row(String label, Node field) {
    Label name = new Label(label);
    name.getStyleClass().add("soft");
    name.setLabelFor(field);
    GridPane.setValignment(name, VPos.BASELINE);
    if (field.getAccessibleText() == null) {
      field.setAccessibleText(label);
    }
    if (field instanceof Region region) {
      region.setMaxWidth(Double.MAX_VALUE);
    }
    addRow(rows++, name, field);
  }

  /** Adds a field with the sentence that says what is not right yet; empty for nothing. */
  public void row(String label, Node field, ObservableValue<String> problem) {
    row(label, field);
    Label sentence = new Label();
    sentence.getStyleClass().add("field-problem");
    sentence.setMinHeight(Region.USE_PREF_SIZE);
    sentence.textProperty().bind(problem);
    sentence.managedProperty().bind(problem.map(text -> !text.isEmpty()));
    field.accessibleHelpProperty().bind(problem);
    add(sentence, 1, rows++);
  }
}
