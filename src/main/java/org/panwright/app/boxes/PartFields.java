package org.panwright.app.boxes;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.TypedNumber;
import org.panwright.kit.FixtureKind;
import org.panwright.words.BoxEditorWords;

/** Kind, place and size of the mixing area, strip, magnet or clip picked; add and remove. */
final class PartFields extends VBox {
  private final BoxEditorModel model;
  private final ChoiceBox<FixtureKind> kind = new ChoiceBox<>();
  private final CheckBox inLid = new CheckBox(BoxEditorWords.IN_LID);
  private final TextField thick = new TextField();
  private final SizePair place;
  private final SizePair size;
  private boolean showing;

  PartFields(BoxEditorModel model) {
    super(10);
    this.model = model;
    place =
        new SizePair(
            BoxEditorWords.FROM_LEFT,
            BoxEditorWords.FROM_HINGE,
            (x, y) -> model.changePart(part -> part.at(x, y)));
    size =
        new SizePair(
            BoxEditorWords.WIDTH,
            BoxEditorWords.HEIGHT,
            (w, h) -> model.changePart(part -> part.sized(w, h)));
    kind.setConverter(new ByLabel<>(it -> BoxEditorWords.part(it)));
    kind.getItems().setAll(FixtureKind.values());
    kind.setValue(FixtureKind.MIXING_AREA);
    kind.valueProperty()
        .addListener((property, before, now) -> typed(() -> model.changePart(p -> p.of(now))));
    inLid
        .selectedProperty()
        .addListener((property, before, now) -> typed(() -> model.changePart(p -> p.inLid(now))));
    thick.setPrefColumnCount(5);
    thick
        .textProperty()
        .addListener(
            (property, before, now) ->
                typed(
                    () ->
                        model.changePart(p -> p.thick(TypedNumber.read(now).orElse(Double.NaN)))));
    FormGrid grid = new FormGrid();
    HBox kindAndPlace = new HBox(10, kind, inLid);
    kindAndPlace.setAlignment(Pos.CENTER_LEFT);
    grid.row(BoxEditorWords.KIND_OF_PART, kindAndPlace);
    grid.row(BoxEditorWords.PLACE, place);
    grid.row(BoxEditorWords.SIZE, size);
    grid.row(BoxEditorWords.THICK, thick);
    Button add = new Button(BoxEditorWords.ADD_PART);
    add.setOnAction(event -> model.addPart(kind.getValue()));
    Button remove = new Button(BoxEditorWords.REMOVE_PART);
    remove.setOnAction(event -> model.removePicked());
    getChildren().setAll(grid, new HBox(8, add, remove));
    for (var field : new javafx.scene.Node[] {inLid, place, size, thick, remove}) {
      field.disableProperty().bind(model.pickedPartProperty().map(Optional::isEmpty));
    }
    model.pickedPartProperty().addListener(changed -> show());
    model.draftProperty().addListener(changed -> show());
  }

  private void typed(Runnable change) {
    if (!showing) {
      change.run();
    }
  }

  private void show() {
    model
        .pickedPart()
        .ifPresent(
            part -> {
              showing = true;
              kind.setValue(part.kind());
              inLid.setSelected(part.inLid());
              place.show(part.xMm(), part.yMm());
              size.show(part.widthMm(), part.heightMm());
              double now = TypedNumber.read(thick.getText()).orElse(Double.NaN);
              if (Double.compare(now, part.thicknessMm()) != 0
                  && !Double.isNaN(part.thicknessMm())) {
                thick.setText(TypedNumber.write(part.thicknessMm(), 2));
              }
              showing = false;
            });
  }
}
