package org.panwright.app.page;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Rectangle;
import org.panwright.app.fx.Sentence;
import org.panwright.app.fx.Swatches;
import org.panwright.swatch.file.ReadRow;
import org.panwright.words.PaintPageWords;

/** One row of a file: its colour, its name and what it is, or why it cannot be used. */
final class ReadingCell extends ListCell<ReadRow> {
  private final ReadingsModel model;

  ReadingCell(ReadingsModel model) {
    this.model = model;
    // Sentences wrap to the width of the list instead of widening it.
    setPrefWidth(0);
  }

  @Override
  protected void updateItem(ReadRow row, boolean empty) {
    super.updateItem(row, empty);
    setText(null);
    setGraphic(empty ? null : row.reading().isPresent() ? usable(row) : wrong(row));
  }

  private HBox usable(ReadRow row) {
    Rectangle chip = new Rectangle(54, 26);
    chip.setFill(Swatches.color(row.reading().orElseThrow().lab()));
    ChoiceBox<CoatRole> role = PageDialogs.choice(List.of(CoatRole.values()), model.role(row));
    role.setAccessibleText(row.name());
    role.valueProperty().addListener((property, before, now) -> model.say(row, now));
    Region between = new Region();
    HBox.setHgrow(between, Priority.ALWAYS);
    StackPane ground = new StackPane(chip);
    ground.getStyleClass().addAll("swatch-ground", "coat-chips");
    HBox line = new HBox(12, ground, new Label(row.name()), between, role);
    line.setAlignment(Pos.CENTER_LEFT);
    return line;
  }

  private static HBox wrong(ReadRow row) {
    Label sentence = Sentence.of(PaintPageWords.fault(row), "field-problem");
    HBox.setHgrow(sentence, Priority.ALWAYS);
    return new HBox(sentence);
  }
}
