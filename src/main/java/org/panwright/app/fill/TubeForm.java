package org.panwright.app.fill;

import java.time.LocalDate;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.Sentence;
import org.panwright.paint.Paint;
import org.panwright.paint.Shelf;
import org.panwright.words.FillViewWords;

/** The fields of a tube. */
final class TubeForm extends VBox {
  private final LocalDate today;
  private final ComboBox<Paint> paint = new ComboBox<>();
  private final ComboBox<Boolean> weighed = new ComboBox<>();
  private final TextField size = new TextField();
  private final TextField left = new TextField();
  private final TextField gross = new TextField();
  private final TextField empty = new TextField();
  private final TextField density = new TextField();
  private final TextField price = new TextField();
  private final TextField opened = new TextField();
  private final TextField note = new TextField();
  private final ReadOnlyObjectWrapper<TubeDraft> draft;

  TubeForm(Shelf shelf, TubeDraft start, LocalDate today) {
    super(12);
    this.today = today;
    draft = new ReadOnlyObjectWrapper<>(start);
    paint.setConverter(new ByLabel<>(Paint::name));
    paint.getItems().setAll(shelf.paints());
    shelf.find(start.paintId()).ifPresent(paint::setValue);
    weighed.setConverter(
        new ByLabel<>(it -> it ? FillViewWords.BY_WEIGHT : FillViewWords.BY_VOLUME));
    weighed.getItems().setAll(false, true);
    weighed.setValue(start.weighed());
    size.setText(start.size());
    left.setText(start.left());
    gross.setText(start.gross());
    empty.setText(start.empty());
    density.setText(start.density());
    price.setText(start.price());
    opened.setText(start.opened());
    opened.setPromptText(FillViewWords.DATE_PROMPT);
    note.setText(start.note());
    FormGrid grid = new FormGrid();
    grid.row(FillViewWords.PAINT, paint);
    grid.row(FillViewWords.SIZE_ML, size);
    grid.row(FillViewWords.HOW_LEFT, weighed);
    grid.row(FillViewWords.LEFT_ML, left);
    grid.row(FillViewWords.GROSS, gross);
    grid.row(FillViewWords.EMPTY, empty);
    grid.row(FillViewWords.DENSITY, density);
    grid.row(FillViewWords.PRICE_FULL, price);
    grid.row(FillViewWords.OPENED_ON, opened);
    grid.row(FillViewWords.NOTE, note);
    Label problem = Sentence.of("", "field-problem");
    problem.textProperty().bind(problems());
    getChildren().setAll(grid, problem);
    setPrefWidth(400);
    listen();
  }

  /** What has the keyboard at first. */
  Node firstField() {
    return paint.getValue() == null ? paint : size;
  }

  /** Whether it can be a tube. */
  ObservableValue<Boolean> ready() {
    return draft.map(d -> d.problem(today).isEmpty());
  }

  /** What is typed. */
  TubeDraft draft() {
    return draft.get();
  }

  ReadOnlyObjectProperty<TubeDraft> draftProperty() {
    return draft.getReadOnlyProperty();
  }

  private ObservableValue<String> problems() {
    return draft.map(d -> d.problem(today).orElse(""));
  }

  private void listen() {
    paint.valueProperty().addListener(changed -> read());
    weighed.valueProperty().addListener(changed -> read());
    for (TextField field :
        new TextField[] {size, left, gross, empty, density, price, opened, note}) {
      field.textProperty().addListener(changed -> read());
    }
    left.disableProperty().bind(weighed.valueProperty().map(Boolean::booleanValue));
    for (TextField field : new TextField[] {gross, empty, density}) {
      field.disableProperty().bind(weighed.valueProperty().map(it -> !it));
    }
  }

  private void read() {
    draft.set(
        new TubeDraft(
            paint.getValue() == null ? "" : paint.getValue().id(),
            size.getText(),
            weighed.getValue(),
            left.getText(),
            gross.getText(),
            empty.getText(),
            density.getText(),
            price.getText(),
            opened.getText(),
            note.getText()));
  }
}
