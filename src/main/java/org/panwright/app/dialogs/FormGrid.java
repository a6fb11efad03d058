package org.panwright.app.dialogs;

import javafx.beans.value.ObservableValue;
import javafx.geometry.Insets;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Fields under each other, each with its label on the left and room for a sentence beneath. */
public final class FormGrid extends GridPane {
  private static final double LABEL_WIDTH = 92;

  private int rows;

  /** An empty form. */
  public FormGrid() {
    getStyleClass().add("form");
    ColumnConstraints labels = new ColumnConstraints();
    labels.setMinWidth(LABEL_WIDTH);
    labels.setHgrow(Priority.NEVER);
    ColumnConstraints fields = new ColumnConstraints();
    fields.setHgrow(Priority.ALWAYS);
    fields.setFillWidth(true);
    getColumnConstraints().setAll(labels, fields);
  }

  /** Adds a field. */
  public void row(String label, Node field) {
    name(field, label);
    addRow(rows++, label(label, field), field);
  }

  /** Adds a field with the sentence that says what is not right yet; empty for nothing. */
  public void row(String label, Node field, ObservableValue<String> problem) {
    name(field, label);
    Label sentence = new Label();
    sentence.getStyleClass().add("field-problem");
    sentence.setMinHeight(Region.USE_PREF_SIZE);
    sentence.textProperty().bind(problem);
    sentence.managedProperty().bind(problem.map(text -> !text.isEmpty()));
    field.accessibleHelpProperty().bind(problem);
    VBox fieldAndProblem = new VBox(3, field, sentence);
    Label name = label(label, field);
    GridPane.setValignment(name, VPos.TOP);
    name.setPadding(new Insets(6, 0, 0, 0));
    addRow(rows++, name, fieldAndProblem);
  }

  private static Label label(String text, Node field) {
    Label name = new Label(text);
    name.getStyleClass().add("soft");
    name.setLabelFor(field);
    name.setMinWidth(Region.USE_PREF_SIZE);
    return name;
  }

  private static void name(Node field, String label) {
    if (field.getAccessibleText() == null) {
      field.setAccessibleText(label);
    }
    if (field instanceof Region region) {
      region.setMaxWidth(Double.MAX_VALUE);
    }
  }
}
