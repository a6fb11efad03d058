package org.panwright.app.page;

import java.util.List;
import java.util.OptionalDouble;
import javafx.collections.FXCollections;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.ColumnChoices;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.Sentence;
import org.panwright.swatch.file.ReadRow;
import org.panwright.swatch.file.ReadingField;
import org.panwright.swatch.file.ReadingMapping;
import org.panwright.swatch.table.RawTable;
import org.panwright.words.PaintPageWords;

/** Which column of a file of readings holds what, and what each row is. */
final class ReadingsView extends VBox {
  private static final List<ReadingField> FIELDS =
      List.of(
          ReadingField.NAME,
          ReadingField.AMOUNT,
          ReadingField.FIRST,
          ReadingField.LAST,
          ReadingField.LIGHTNESS,
          ReadingField.X,
          ReadingField.A,
          ReadingField.Y,
          ReadingField.B,
          ReadingField.Z);

  private final ReadingsModel model;
  private final String file;
  private final Label columns = Sentence.of("");
  private final Label summary = Sentence.of("", "strong");
  private final ListView<ReadRow> rows = new ListView<>();
  private final HBox wavelengths = new HBox(10);
  private final ChoiceBox<ReadingMapping.Scale> scale;
  private final ChoiceBox<ReadingMapping.ReadingLight> light;

  ReadingsView(ReadingsModel model, String file) {
    super(10);
    this.model = model;
    this.file = file;
    scale = scale();
    light = light();
    setPrefSize(820, 600);
    rows.getStyleClass().add("framed");
    rows.setAccessibleText(PaintPageWords.ROWS);
    rows.setPlaceholder(Sentence.of(PaintPageWords.asItStands(model.table()), "soft"));
    rows.setCellFactory(list -> new ReadingCell(model));
    VBox.setVgrow(rows, Priority.ALWAYS);
    TextField first = nanometres("first-nm", PaintPageWords.FIRST_NM);
    TextField last = nanometres("last-nm", PaintPageWords.LAST_NM);
    first.setText(Integer.toString((int) mapping().firstNm()));
    last.setText(Integer.toString((int) mapping().lastNm()));
    first.textProperty().addListener(changed -> wavelengths(first, last));
    last.textProperty().addListener(changed -> wavelengths(first, last));
    wavelengths
        .getChildren()
        .setAll(label(PaintPageWords.FIRST_NM, first), label(PaintPageWords.LAST_NM, last));
    HBox units =
        new HBox(
            18,
            label(PaintPageWords.SCALE, scale),
            label(PaintPageWords.LIGHT, light),
            wavelengths);
    getChildren()
        .setAll(
            columns,
            Sentence.of(PaintPageWords.places(model.table()), "part-heading"),
            choices(),
            units,
            Sentence.of(PaintPageWords.samples(model.table()), "part-heading"),
            rows,
            summary);
    model.planProperty().addListener(changed -> show());
    show();
  }

  private ReadingMapping mapping() {
    return model.mappingProperty().get();
  }

  private ColumnChoices<ReadingField> choices() {
    RawTable table = model.table();
    return new ColumnChoices<>(
        FIELDS,
        PaintPageWords::field,
        place -> PaintPageWords.place(place, table),
        table.columns().size(),
        field -> mapping().place(field),
        (field, place) -> model.mappingProperty().set(mapping().with(field, place)));
  }

  private ChoiceBox<ReadingMapping.Scale> scale() {
    ChoiceBox<ReadingMapping.Scale> choice =
        new ChoiceBox<>(FXCollections.observableArrayList(ReadingMapping.Scale.values()));
    choice.setConverter(new ByLabel<>(PaintPageWords::scale));
    choice.setValue(mapping().scale());
    choice
        .valueProperty()
        .addListener((property, before, now) -> model.mappingProperty().set(mapping().with(now)));
    return choice;
  }

  private ChoiceBox<ReadingMapping.ReadingLight> light() {
    ChoiceBox<ReadingMapping.ReadingLight> choice =
        new ChoiceBox<>(FXCollections.observableArrayList(ReadingMapping.ReadingLight.values()));
    choice.setConverter(new ByLabel<>(PaintPageWords::light));
    choice.setValue(mapping().light());
    choice
        .valueProperty()
        .addListener((property, before, now) -> model.mappingProperty().set(mapping().with(now)));
    return choice;
  }

  private static TextField nanometres(String id, String name) {
    TextField field = new TextField();
    field.setId(id);
    field.setPrefColumnCount(4);
    field.setAccessibleText(name);
    return field;
  }

  private static HBox label(String text, javafx.scene.Node field) {
    Label name = new Label(text);
    name.getStyleClass().add("soft");
    name.setLabelFor(field);
    name.setMinWidth(Region.USE_PREF_SIZE);
    HBox pair = new HBox(6, name, field);
    pair.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
    return pair;
  }

  private void wavelengths(TextField first, TextField last) {
    OptionalDouble from = number(first.getText());
    OptionalDouble to = number(last.getText());
    if (from.isPresent() && to.isPresent()) {
      model.mappingProperty().set(mapping().withWavelengths(from.getAsDouble(), to.getAsDouble()));
    }
  }

  private static OptionalDouble number(String text) {
    try {
      return OptionalDouble.of(Double.parseDouble(text.strip().replace(',', '.')));
    } catch (NumberFormatException typing) {
      return OptionalDouble.empty();
    }
  }

  private void show() {
    String amounts = PaintPageWords.amounts(mapping(), model.hasLoads());
    columns.setText(
        (PaintPageWords.columns(file, model.planProperty().get(), mapping()) + " " + amounts)
            .strip());
    summary.setText(PaintPageWords.rows(model.planProperty().get(), model.table()));
    rows.getItems().setAll(model.planProperty().get().rows());
    wavelengths.setDisable(!model.needsWavelengths());
    boolean spectral = mapping().isSpectral();
    light.setDisable(spectral);
    scale.setDisable(!spectral && mapping().isLab());
  }
}
