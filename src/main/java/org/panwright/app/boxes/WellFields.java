package org.panwright.app.boxes;

import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.kit.PanKind;
import org.panwright.kit.WellKind;
import org.panwright.words.BoxEditorWords;

/** Label, kind, place and size of the well picked; add and remove. */
final class WellFields extends VBox {
  private final BoxEditorModel model;
  private final TextField label = new TextField();
  private final ChoiceBox<WellKind> kind = new ChoiceBox<>();
  private final ChoiceBox<Optional<PanKind>> pan = new ChoiceBox<>();
  private final SizePair place;
  private final SizePair size;
  private boolean showing;

  WellFields(BoxEditorModel model) {
    super(10);
    this.model = model;
    place =
        new SizePair(
            BoxEditorWords.FROM_LEFT,
            BoxEditorWords.FROM_HINGE,
            (x, y) -> model.changePicked(well -> well.at(x, y)));
    size =
        new SizePair(
            BoxEditorWords.WIDTH,
            BoxEditorWords.HEIGHT,
            (w, h) -> model.changePicked(well -> well.sized(w, h)));
    kind.setConverter(new ByLabel<>(kind -> BoxEditorWords.kind(kind)));
    kind.getItems().setAll(WellKind.values());
    label
        .textProperty()
        .addListener(
            (property, before, now) -> typed(() -> model.changePicked(w -> w.labelled(now))));
    kind.valueProperty()
        .addListener((property, before, now) -> typed(() -> model.changePicked(w -> w.of(now))));
    pan.setConverter(
        new ByLabel<>(kind -> kind.map(PanKind::name).orElse(BoxEditorWords.USUAL_PAN)));
    pan.getItems().add(Optional.empty());
    model.pans().forEach(kind -> pan.getItems().add(Optional.of(kind)));
    pan.valueProperty()
        .addListener(
            (property, before, now) ->
                typed(() -> model.changePicked(w -> w.withPan(now.map(PanKind::id)))));
    FormGrid grid = new FormGrid();
    grid.row(BoxEditorWords.LABEL, label);
    grid.row(BoxEditorWords.KIND, kind);
    grid.row(BoxEditorWords.PAN, pan);
    grid.row(BoxEditorWords.PLACE, place);
    grid.row(BoxEditorWords.SIZE, size);
    Button add = new Button(BoxEditorWords.ADD_WELL);
    add.setOnAction(event -> model.addWell());
    Button remove = new Button(BoxEditorWords.REMOVE_WELL);
    remove.setOnAction(event -> model.removePicked());
    getChildren().setAll(grid, new HBox(8, add, remove));
    model.pickedProperty().addListener(changed -> show());
    model.draftProperty().addListener(changed -> show());
    grid.disableProperty().bind(model.pickedProperty().map(Optional::isEmpty));
    remove.disableProperty().bind(model.pickedProperty().map(Optional::isEmpty));
  }

  private void typed(Runnable change) {
    if (!showing) {
      change.run();
    }
  }

  private void show() {
    model
        .pickedWell()
        .ifPresent(
            well -> {
              showing = true;
              if (!label.getText().equals(well.label())) {
                label.setText(well.label());
              }
              kind.setValue(well.kind());
              pan.setValue(
                  well.panId()
                      .flatMap(
                          id -> model.pans().stream().filter(p -> p.id().equals(id)).findFirst()));
              place.show(well.xMm(), well.yMm());
              size.show(well.widthMm(), well.heightMm());
              showing = false;
            });
  }
}
