package org.panwright.app.papers;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Spinner;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.FileKind;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.print.CardFormat;
import org.panwright.print.CardOptions;
import org.panwright.print.KeyCard;
import org.panwright.print.PaperFormat;
import org.panwright.print.Sheet;
import org.panwright.words.CardViewWords;
import org.panwright.words.FileProblemWords;

/** The sheets of the key card beside the choices about it. */
public final class CardView extends HBox {
  private static final FileKind PDF =
      new FileKind(CardViewWords.SAVE_TITLE, CardViewWords.KIND, ".pdf");

  /** Room left of and right of a sheet together, with the scroll bar. */
  private static final double SIDES = 72;

  /** Pixels for a millimetre, from which type of 4 points can be read. */
  private static final double MOST_SCALE = 5;

  private final CardModel model;
  private final Dialogs dialogs;
  private final VBox sheets = new VBox(24);
  private final ScrollPane desk = new ScrollPane(sheets);
  private final Label notes = sentence("");
  private final Label status = sentence("");
  private boolean fontsLoaded;

  public CardView(CardModel model, Dialogs dialogs) {
    this.model = model;
    this.dialogs = dialogs;
    getStyleClass().add("card-view");
    sheets.setAlignment(Pos.TOP_CENTER);
    sheets.getStyleClass().addAll("swatch-ground", "card-desk");
    desk.setFitToWidth(true);
    desk.setFitToHeight(true);
    HBox.setHgrow(desk, Priority.ALWAYS);
    getChildren().setAll(choices(), desk);
    model.cardProperty().addListener(changed -> show());
    desk.widthProperty().addListener(changed -> show());
    show();
  }

  private VBox choices() {
    Label title = new Label(CardViewWords.TITLE);
    title.getStyleClass().add("title");
    Label purpose = sentence(CardViewWords.PURPOSE);
    purpose.getStyleClass().add("soft");
    FormGrid form = new FormGrid();
    form.row(
        CardViewWords.SIZE,
        choice(
            CardFormat.values(),
            size -> CardViewWords.size(size.name()),
            CardOptions::format,
            CardOptions::withFormat));
    form.row(
        CardViewWords.PAPER,
        choice(
            PaperFormat.values(),
            size -> CardViewWords.size(size.name()),
            CardOptions::paper,
            CardOptions::withPaper));
    form.row(
        CardViewWords.FIELDS,
        choice(
            CardOptions.Fields.values(),
            fields -> CardViewWords.fields(fields == CardOptions.Fields.PREDICTED),
            CardOptions::fields,
            CardOptions::withFields));
    form.row(CardViewWords.COPIES, copies());
    CheckBox list = new CheckBox(CardViewWords.LIST);
    list.setSelected(model.optionsProperty().get().list());
    list.selectedProperty()
        .addListener((property, before, now) -> change(options -> options.withList(now)));
    Button save = new Button(CardViewWords.SAVE_PDF);
    save.getStyleClass().add("primary");
    save.setOnAction(event -> save());
    Button print = new Button(CardViewWords.PRINT);
    print.setOnAction(event -> print());
    save.disableProperty().bind(model.cardProperty().map(Optional::isEmpty));
    print.disableProperty().bind(model.cardProperty().map(Optional::isEmpty));
    Label estimates = sentence(CardViewWords.ESTIMATES);
    estimates.getStyleClass().add("soft");
    notes.getStyleClass().add("warn");
    VBox column =
        new VBox(
            14, title, purpose, form, list, new HBox(8, save, print), status, notes, estimates);
    column.getStyleClass().add("card-choices");
    column.setMinWidth(320);
    column.setMaxWidth(340);
    return column;
  }

  private <E> ChoiceBox<E> choice(
      E[] values,
      Function<E, String> words,
      Function<CardOptions, E> read,
      java.util.function.BiFunction<CardOptions, E, CardOptions> write) {
    ChoiceBox<E> box = new ChoiceBox<>();
    box.getItems().setAll(List.of(values));
    box.setConverter(new ByLabel<>(words));
    box.setValue(read.apply(model.optionsProperty().get()));
    box.valueProperty()
        .addListener((property, before, now) -> change(options -> write.apply(options, now)));
    return box;
  }

  private Spinner<Integer> copies() {
    Spinner<Integer> copies = new Spinner<>(1, 50, model.optionsProperty().get().copies());
    copies.setEditable(true);
    copies
        .valueProperty()
        .addListener((property, before, now) -> change(options -> options.withCopies(now)));
    return copies;
  }

  private void change(UnaryOperator<CardOptions> change) {
    status.setText("");
    model.optionsProperty().set(change.apply(model.optionsProperty().get()));
  }

  private void show() {
    Optional<KeyCard> card = model.cardProperty().get();
    if (card.isPresent() && !fontsLoaded) {
      SheetPicture.loadFonts();
      fontsLoaded = true;
    }
    notes.setText(
        card.map(c -> String.join("\n", c.notes()))
            .orElse(model.hasLineup() ? "" : CardViewWords.NO_LINEUP));
    sheets
        .getChildren()
        .setAll(
            card.stream().flatMap(c -> c.papers().sheets().stream()).map(this::picture).toList());
  }

  /** As wide as the desk, but no larger than small type needs to be read. */
  private Node picture(Sheet sheet) {
    double scale = (desk.getWidth() - SIDES) / sheet.widthMm();
    SheetPicture picture = new SheetPicture(sheet, Math.max(1, Math.min(MOST_SCALE, scale)));
    picture.getStyleClass().add("card-sheet");
    picture.setAccessibleText(
        CardViewWords.sheet(sheet.title(), sheet.widthMm(), sheet.heightMm()));
    return picture;
  }

  private void save() {
    dialogs
        .chooseToSave(PDF, Optional.empty(), model.fileName())
        .ifPresent(
            file ->
                model.savePdf(
                    file,
                    () -> status.setText(CardViewWords.saved(file.getFileName().toString())),
                    problem ->
                        dialogs.tell(
                            CardViewWords.CANNOT_SAVE, FileProblemWords.sentence(problem))));
  }

  private void print() {
    model
        .cardProperty()
        .get()
        .ifPresent(
            card -> {
              switch (PaperPrinter.print(card.papers(), getScene().getWindow())) {
                case SENT -> status.setText(CardViewWords.SENT);
                case LEFT -> status.setText("");
                case NO_PRINTER ->
                    dialogs.tell(CardViewWords.NO_PRINTER_TITLE, CardViewWords.NO_PRINTER);
                case NOT_TAKEN ->
                    dialogs.tell(CardViewWords.NOT_PRINTED_TITLE, CardViewWords.NOT_PRINTED);
              }
            });
  }

  private static Label sentence(String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }
}
