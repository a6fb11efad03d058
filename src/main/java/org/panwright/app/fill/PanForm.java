package org.panwright.app.fill;

import java.util.List;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.Sentence;
import org.panwright.words.FillViewWords;
import org.panwright.words.FitWords;

/** The fields of a kind of pan. */
final class PanForm extends VBox {
  private final TextField name = new TextField();
  private final List<TextField> outer = sizes(FillViewWords.OUTSIDE);
  private final List<TextField> inner = sizes(FillViewWords.INSIDE);
  private final TextField taper = new TextField();
  private final TextField brim = new TextField();
  private final ReadOnlyObjectWrapper<PanDraft> draft;

  PanForm(PanDraft start) {
    super(12);
    draft = new ReadOnlyObjectWrapper<>(start);
    name.setText(start.name());
    for (int i = 0; i < outer.size(); i++) {
      outer.get(i).setText(start.outer().get(i));
      inner.get(i).setText(start.inner().get(i));
    }
    taper.setText(start.taper());
    brim.setText(start.brim());
    FormGrid grid = new FormGrid();
    grid.row(FillViewWords.NAME, name);
    grid.row(FillViewWords.OUTSIDE, new HBox(8, outer.toArray(Node[]::new)));
    grid.row(FillViewWords.INSIDE, new HBox(8, inner.toArray(Node[]::new)));
    grid.row(FillViewWords.TAPER, taper);
    grid.row(FillViewWords.BRIM, brim);
    Label measured = Sentence.of("", "soft");
    measured
        .textProperty()
        .bind(
            draft.map(
                d ->
                    d.problem().isEmpty()
                        ? FillViewWords.measures(d.toPan("measured").measuredMl())
                        : ""));
    Label problem = Sentence.of("", "field-problem");
    problem.textProperty().bind(draft.map(d -> d.problem().orElse("")));
    Label usual = Sentence.of("", "soft");
    usual.setText(FitWords.USUAL);
    getChildren().setAll(grid, measured, problem, usual);
    setPrefWidth(430);
    name.textProperty().addListener(changed -> read());
    taper.textProperty().addListener(changed -> read());
    brim.textProperty().addListener(changed -> read());
    outer.forEach(field -> field.textProperty().addListener(changed -> read()));
    inner.forEach(field -> field.textProperty().addListener(changed -> read()));
  }

  /** What has the keyboard at first. */
  Node firstField() {
    return name;
  }

  /** Whether it can be a pan. */
  ObservableValue<Boolean> ready() {
    return draft.map(d -> d.problem().isEmpty());
  }

  /** What is typed. */
  PanDraft draft() {
    return draft.get();
  }

  private void read() {
    draft.set(
        new PanDraft(name.getText(), texts(outer), texts(inner), taper.getText(), brim.getText()));
  }

  private static List<String> texts(List<TextField> fields) {
    return fields.stream().map(TextField::getText).toList();
  }

  private static List<TextField> sizes(String what) {
    return List.of(
        size(what, FillViewWords.LENGTH),
        size(what, FillViewWords.WIDTH),
        size(what, FillViewWords.HEIGHT));
  }

  private static TextField size(String what, String side) {
    TextField field = new TextField();
    field.setPrefColumnCount(5);
    field.setAccessibleText(what + ", " + side);
    field.setPromptText(side);
    return field;
  }
}
