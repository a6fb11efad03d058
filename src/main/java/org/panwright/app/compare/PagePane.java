package org.panwright.app.compare;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.FileKind;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.papers.PaperPrinter;
import org.panwright.app.papers.SheetDesk;
import org.panwright.print.PaperFormat;
import org.panwright.print.Papers;
import org.panwright.words.CompareWords;
import org.panwright.words.FileProblemWords;
import org.panwright.words.PaperViewWords;
import org.panwright.words.PaperWords;

/** The comparison as it will be printed, to be saved or sent to a printer. */
final class PagePane extends BorderPane {
  private static final FileKind PDF =
      new FileKind(PaperViewWords.SAVE_TITLE, PaperViewWords.PDF_KIND, ".pdf");

  private final ComparedPage page;
  private final Dialogs dialogs;
  private final Label status = new Label();

  PagePane(ComparedPage page, Dialogs dialogs) {
    this.page = page;
    this.dialogs = dialogs;
    SheetDesk desk = new SheetDesk();
    Runnable show =
        () -> desk.show(page.papersProperty().get().map(Papers::sheets).orElse(List.of()));
    page.papersProperty().addListener(changed -> show.run());
    show.run();
    ChoiceBox<PaperFormat> formats = new ChoiceBox<>();
    formats.getItems().setAll(PaperFormat.values());
    formats.setConverter(new ByLabel<>(format -> PaperWords.format(format.name())));
    formats.setAccessibleText(PaperViewWords.PAPER);
    formats.valueProperty().bindBidirectional(page.paperProperty());
    Button save = new Button(PaperViewWords.SAVE_PDF);
    save.getStyleClass().add("primary");
    save.setOnAction(event -> save());
    Button print = new Button(PaperViewWords.PRINT);
    print.setOnAction(event -> print());
    for (Button button : List.of(save, print)) {
      button.disableProperty().bind(page.papersProperty().map(Optional::isEmpty));
    }
    HBox bar = new HBox(8, save, print, formats, status);
    bar.getStyleClass().add("compare-page-bar");
    setTop(bar);
    setCenter(desk);
  }

  private void save() {
    dialogs
        .chooseToSave(PDF, Optional.empty(), CompareWords.TITLE)
        .ifPresent(
            file ->
                page.save(
                    file,
                    () -> status.setText(PaperViewWords.saved(file.getFileName().toString())),
                    problem ->
                        dialogs.tell(
                            PaperViewWords.CANNOT_SAVE, FileProblemWords.sentence(problem))));
  }

  private void print() {
    page.papersProperty()
        .get()
        .ifPresent(
            papers -> PaperPrinter.send(papers, getScene().getWindow(), dialogs, status::setText));
  }
}
