package org.panwright.app.outing;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.panwright.analysis.outing.PaintUse;
import org.panwright.app.fx.Sentence;
import org.panwright.kit.Kit;
import org.panwright.paint.Paint;
import org.panwright.words.OutingWords;
import org.panwright.words.PackingWords;

/** The amounts an outing takes, how long each paint lasts, and what has to be minded. */
final class NeedsPane extends VBox {
  private final OutingModel model;

  NeedsPane(OutingModel model) {
    this.model = model;
    getStyleClass().add("needs");
    model.packedProperty().addListener(changed -> show());
    show();
  }

  private void show() {
    model.packedProperty().get().ifPresentOrElse(this::show, getChildren()::clear);
  }

  private void show(Packed packed) {
    GridPane amounts = table();
    for (PackingWords.Line line : PackingWords.lines(packed.needs())) {
      amounts.addRow(amounts.getRowCount(), soft(line.name()), strong(line.amount()));
    }
    getChildren()
        .setAll(heading(PackingWords.NEEDS), amounts, Sentence.of(PackingWords.BASIS, "soft"));
    List<PaintUse> uses = packed.needs().paints();
    if (!uses.isEmpty()) {
      GridPane paints = table();
      for (PaintUse use : uses) {
        Label lasting = Sentence.of(PackingWords.lasting(use), use.runsOut() ? "warn" : "text");
        paints.addRow(paints.getRowCount(), soft(name(packed.kit(), use.paintId())), lasting);
      }
      getChildren().addAll(heading(OutingWords.LASTS), paints);
    }
    getChildren().add(heading(PackingWords.CAUTIONS));
    PackingWords.cautions(packed.needs(), packed.kit())
        .forEach(caution -> getChildren().add(Sentence.of(caution, "text")));
  }

  private static GridPane table() {
    GridPane table = new GridPane();
    table.getStyleClass().add("needs-table");
    ColumnConstraints names = new ColumnConstraints();
    names.setMinWidth(140);
    ColumnConstraints amounts = new ColumnConstraints();
    amounts.setHgrow(Priority.ALWAYS);
    table.getColumnConstraints().setAll(names, amounts);
    return table;
  }

  private static String name(Kit kit, String paintId) {
    return kit.shelf().find(paintId).map(Paint::name).orElse(paintId);
  }

  private static Label heading(String words) {
    Label label = new Label(words);
    label.getStyleClass().add("pane-title");
    return label;
  }

  private static Label soft(String words) {
    return Sentence.of(words, "soft");
  }

  private static Label strong(String words) {
    return Sentence.of(words, "strong");
  }
}
