package org.panwright.app.page;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Rectangle;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.FileKind;
import org.panwright.app.dialogs.Form;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.Swatches;
import org.panwright.colour.Lab;
import org.panwright.paint.CoatReading;
import org.panwright.swatch.ReadingFile;
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

  private final PageModel model;
  private final Dialogs dialogs;

  private record Typed(CoatRole role, Lab lab) {}

  PageDialogs(PageModel model, Dialogs dialogs) {
    this.model = model;
    this.dialogs = dialogs;
  }

  /** Asks for one swatch and keeps it. */
  void type() {
    ChoiceBox<CoatRole> role = choice(TYPED, CoatRole.FULL);
    TextField colour = new TextField();
    colour.setPromptText(PaintPageWords.COLOUR_HINT);
    colour.setId("typed-colour");
    ObservableValue<Optional<Lab>> lab = colour.textProperty().map(TypedColour::read);
    Rectangle preview = new Rectangle(120, 36);
    preview.fillProperty().bind(lab.map(c -> c.map(Swatches::color).orElse(null)));
    FormGrid form = new FormGrid();
    form.row(PaintPageWords.WHAT, role);
    form.row(
        PaintPageWords.COLOUR,
        colour,
        lab.map(
            c -> c.isPresent() || colour.getText().isBlank() ? "" : PaintPageWords.COLOUR_WRONG));
    VBox content = new VBox(12, form, preview);
    content.setPrefWidth(430);
    dialogs
        .fillIn(
            new Form<>(
                PaintPageWords.TYPE_TITLE,
                content,
                PaintPageWords.KEEP,
                lab.map(Optional::isPresent),
                () -> new Typed(role.getValue(), lab.getValue().orElseThrow()),
                colour))
        .ifPresent(typed -> model.keepTyped(typed.role(), new CoatReading.OfColour(typed.lab())));
  }

  /** Asks for a file, then what its rows are, and keeps them. */
  void load() {
    dialogs
        .chooseToOpen(READINGS, Optional.empty())
        .ifPresent(path -> model.open(path, file -> assign(path, file)));
  }

  private void assign(Path path, ReadingFile file) {
    List<ChoiceBox<CoatRole>> roles = new ArrayList<>();
    GridPane rows = new GridPane(12, 6);
    for (int i = 0; i < file.samples().size(); i++) {
      String name = file.samples().get(i).name();
      Rectangle chip = new Rectangle(54, 26);
      chip.setFill(Swatches.color(file.samples().get(i).reading().lab()));
      ChoiceBox<CoatRole> role = choice(List.of(CoatRole.values()), CoatRole.guess(name));
      role.setAccessibleText(name);
      roles.add(role);
      rows.addRow(i, chip, new Label(name), role);
    }
    ScrollPane scroll = new ScrollPane(rows);
    scroll.setFitToWidth(true);
    scroll.setPrefViewportHeight(Math.min(360, 34 * roles.size() + 8));
    Label columns = new Label(PaintPageWords.columns(file));
    columns.setWrapText(true);
    columns.setMinHeight(Region.USE_PREF_SIZE);
    VBox content = new VBox(12, columns, scroll);
    content.setPrefWidth(520);
    dialogs
        .fillIn(
            new Form<>(
                PaintPageWords.LOAD_TITLE,
                content,
                PaintPageWords.KEEP_READ,
                new SimpleBooleanProperty(true),
                () -> roles.stream().map(ChoiceBox::getValue).toList(),
                roles.get(0)))
        .ifPresent(chosen -> model.keepRead(file, chosen, path.getFileName().toString()));
  }

  private static ChoiceBox<CoatRole> choice(List<CoatRole> roles, CoatRole first) {
    ChoiceBox<CoatRole> box = new ChoiceBox<>();
    box.getItems().setAll(roles);
    box.setConverter(new ByLabel<>(role -> PaintPageWords.role(role.name())));
    box.setValue(first);
    return box;
  }
}
