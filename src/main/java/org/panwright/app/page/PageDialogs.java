package org.panwright.app.page;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Rectangle;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.FileKind;
import org.panwright.app.dialogs.Form;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.Swatches;
import org.panwright.app.fx.TypedNumber;
import org.panwright.colour.Lab;
import org.panwright.paint.CoatReading;
import org.panwright.paint.PaintedCoat;
import org.panwright.swatch.file.ReadingFile;
import org.panwright.words.PaintPageWords;

/** The questions of the page: a swatch typed by hand, and what the rows of a file are. */
final class PageDialogs {
  private static final FileKind READINGS =
      new FileKind(
          PaintPageWords.LOAD_FILE,
          PaintPageWords.FILE_KIND,
          ".txt",
          List.of(".cgats", ".csv", ".cgt", ".TXT", ".CSV"));
  private static final List<CoatRole> TYPED =
      List.of(
          CoatRole.FULL,
          CoatRole.WASH,
          CoatRole.TINT,
          CoatRole.TONE,
          CoatRole.ON_BLACK,
          CoatRole.COAT);

  private static final double TYPED_WIDTH = 500;

  /** With room for what is wrong with either field. */
  private static final double TYPED_HEIGHT = 240;

  private final PageModel model;
  private final Dialogs dialogs;

  private record Typed(CoatRole role, Lab lab, OptionalDouble load) {}

  PageDialogs(PageModel model, Dialogs dialogs) {
    this.model = model;
    this.dialogs = dialogs;
  }

  /** Asks for one swatch and keeps it. */
  void type() {
    ChoiceBox<CoatRole> role = choice(TYPED, CoatRole.next(TYPED, model.coats()));
    TextField colour = new TextField();
    colour.setPromptText(PaintPageWords.COLOUR_HINT);
    colour.setId("typed-colour");
    ObservableValue<Optional<Lab>> lab = colour.textProperty().map(TypedColour::read);
    TextField load = new TextField();
    load.setPromptText(PaintPageWords.LOAD_HINT);
    load.setId("typed-load");
    ObservableValue<Boolean> loadFits = load.textProperty().map(PageDialogs::isLoad);
    Rectangle preview = new Rectangle(120, 36);
    preview.fillProperty().bind(lab.map(c -> c.map(Swatches::color).orElse(null)));
    FormGrid form = new FormGrid();
    form.row(PaintPageWords.WHAT, role);
    form.row(
        PaintPageWords.COLOUR,
        colour,
        lab.map(
            c -> c.isPresent() || colour.getText().isBlank() ? "" : PaintPageWords.COLOUR_WRONG));
    form.row(
        PaintPageWords.LOAD_FIELD,
        load,
        loadFits.map(fits -> fits ? "" : PaintPageWords.LOAD_WRONG));
    VBox content = new VBox(12, form, preview);
    content.setPrefSize(TYPED_WIDTH, TYPED_HEIGHT);
    dialogs
        .fillIn(
            new Form<>(
                PaintPageWords.TYPE_TITLE,
                content,
                PaintPageWords.KEEP,
                Bindings.createBooleanBinding(
                    () -> lab.getValue().isPresent() && loadFits.getValue(), lab, loadFits),
                () ->
                    new Typed(
                        role.getValue(),
                        lab.getValue().orElseThrow(),
                        TypedNumber.read(load.getText())),
                colour))
        .ifPresent(
            typed ->
                model.keepTyped(typed.role(), new CoatReading.OfColour(typed.lab()), typed.load()));
  }

  /** Whether a text is a load, or nothing. */
  private static boolean isLoad(String text) {
    OptionalDouble load = TypedNumber.read(text);
    return text.isBlank()
        || (load.isPresent()
            && load.getAsDouble() > 0
            && load.getAsDouble() <= PaintedCoat.MOST_LOAD);
  }

  /** Asks for a file, then what its rows are, and keeps them. */
  void load() {
    dialogs
        .chooseToOpen(READINGS, Optional.empty())
        .ifPresent(path -> model.open(path, file -> assign(path, file)));
  }

  private void assign(Path path, ReadingFile file) {
    ReadingsModel readings = new ReadingsModel(file);
    String name = path.getFileName().toString();
    ReadingsView view = new ReadingsView(readings, name);
    dialogs
        .fillIn(
            new Form<>(
                PaintPageWords.LOAD_TITLE,
                view,
                PaintPageWords.KEEP_READ,
                readings.planProperty().map(plan -> !plan.usable().isEmpty()),
                readings::chosen,
                view))
        .ifPresent(rows -> model.keepRead(rows, name));
  }

  static ChoiceBox<CoatRole> choice(List<CoatRole> roles, CoatRole first) {
    ChoiceBox<CoatRole> box = new ChoiceBox<>();
    box.getItems().setAll(roles);
    box.setConverter(new ByLabel<>(role -> PaintPageWords.role(role.name())));
    box.setValue(first);
    return box;
  }
}
