package org.panwright.app.boxes;

import java.util.Collections;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Spinner;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.kit.WellKind;
import org.panwright.words.BoxEditorWords;

/** Lays a box out in rows and columns of pans, with dab places in the channel, when told to. */
final class RowsAndColumns {
  private static final double SPINNER_WIDTH = 68;

  private final Spinner<Integer> rows = spinner(BoxEditorWords.ROWS, 1, 8, 2);
  private final Spinner<Integer> columns = spinner(BoxEditorWords.COLUMNS, 1, 16, 6);
  private final Spinner<Integer> dabs = spinner(BoxEditorWords.DABS, 0, 12, 0);
  private final ChoiceBox<WellKind> kind = new ChoiceBox<>();
  private final Button layOut = new Button(BoxEditorWords.LAY_OUT);
  private final Button add = new Button(BoxEditorWords.ADD_ROWS);

  RowsAndColumns(BoxEditorModel model) {
    show(model.draft());
    kind.getItems().setAll(WellKind.HALF_PAN, WellKind.PAN);
    kind.setValue(WellKind.HALF_PAN);
    kind.setConverter(new ByLabel<>(shown -> BoxEditorWords.pans(shown)));
    layOut.setOnAction(
        pressed ->
            model.layOut(kind.getValue(), rows.getValue(), columns.getValue(), dabs.getValue()));
    layOut.setMinWidth(Region.USE_PREF_SIZE);
    add.setMinWidth(Region.USE_PREF_SIZE);
    add.setOnAction(pressed -> model.addRows(kind.getValue(), rows.getValue(), columns.getValue()));
  }

  /** Counts as drawn: rows are wells that begin at one height, dabs lie apart from them. */
  void show(BoxDraft draft) {
    Map<Double, Long> drawn =
        draft.wells().stream()
            .filter(well -> well.kind() != WellKind.DAB)
            .collect(Collectors.groupingBy(WellDraft::yMm, Collectors.counting()));
    if (!drawn.isEmpty()) {
      rows.getValueFactory().setValue(drawn.size());
      columns.getValueFactory().setValue((int) (long) Collections.max(drawn.values()));
    }
    long places = draft.wells().stream().filter(well -> well.kind() == WellKind.DAB).count();
    dabs.getValueFactory().setValue((int) places);
  }

  /** Adds the fields to a form. */
  void addTo(FormGrid form) {
    form.row(BoxEditorWords.ROWS_COLUMNS, beside(rows, new Label(BoxEditorWords.BY), columns));
    form.row(BoxEditorWords.PANS_AND_DABS, beside(kind, dabs));
    form.row("", beside(layOut, add));
  }

  private static HBox beside(javafx.scene.Node... nodes) {
    HBox row = new HBox(8, nodes);
    row.setAlignment(Pos.CENTER_LEFT);
    return row;
  }

  private static Spinner<Integer> spinner(String meaning, int least, int most, int first) {
    Spinner<Integer> spinner = new Spinner<>(least, most, first);
    spinner.setPrefWidth(SPINNER_WIDTH);
    spinner.setAccessibleText(meaning);
    return spinner;
  }
}
