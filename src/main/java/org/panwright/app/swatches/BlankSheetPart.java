package org.panwright.app.swatches;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.FileKind;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.print.Papers;
import org.panwright.swatch.sheet.SheetFormat;
import org.panwright.words.FileProblemWords;
import org.panwright.words.PaperViewWords;
import org.panwright.words.SwatchesWords;

/** The sheet to print and paint on: for which paper, with which paints. */
final class BlankSheetPart extends VBox {
  private static final FileKind PDF =
      new FileKind(SwatchesWords.SAVE_TITLE, PaperViewWords.PDF_KIND, ".pdf");
  private static final double GAP = 8;

  private final SheetModel model;
  private final BlankSheet blank;
  private final Dialogs dialogs;
  private final Consumer<String> told;
  private boolean lineupOnly;

  /**
   * @param told what was done, in a sentence
   */
  BlankSheetPart(SheetModel model, BlankSheet blank, Dialogs dialogs, Consumer<String> told) {
    super(GAP);
    this.model = model;
    this.blank = blank;
    this.dialogs = dialogs;
    this.told = told;
    Label heading = new Label(SwatchesWords.BLANK);
    heading.getStyleClass().add("pane-title");
    ChoiceBox<SheetFormat> paper = new ChoiceBox<>();
    paper.getItems().setAll(SheetFormat.values());
    paper.setConverter(new ByLabel<>(SwatchesWords::paper));
    paper.valueProperty().bindBidirectional(model.formatProperty());
    ChoiceBox<Boolean> which = new ChoiceBox<>();
    which.getItems().setAll(false, true);
    which.setConverter(
        new ByLabel<>(only -> only ? SwatchesWords.LINEUP : SwatchesWords.WHOLE_SHELF));
    which.setValue(lineupOnly);
    which.valueProperty().addListener((property, before, now) -> lineupOnly = now);
    FormGrid form = new FormGrid();
    form.row(SwatchesWords.PAPER, paper);
    form.row(SwatchesWords.PAINTS, which);
    Button save = new Button(SwatchesWords.SAVE_SHEET);
    save.setOnAction(event -> save());
    getChildren().setAll(heading, form, save);
  }

  private void save() {
    int wished = blank.wished(lineupOnly);
    Papers papers = blank.papers(lineupOnly, model.formatProperty().get());
    dialogs
        .chooseToSave(PDF, Optional.empty(), papers.title().replace(':', ' '))
        .ifPresent(
            file ->
                blank.save(
                    papers,
                    file,
                    () -> told.accept(SwatchesWords.saved(file.getFileName().toString(), wished)),
                    fault ->
                        dialogs.tell(SwatchesWords.CANNOT_SAVE, FileProblemWords.sentence(fault))));
  }
}
