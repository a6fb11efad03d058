package org.panwright.app.swatches;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.FileKind;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.Sentence;
import org.panwright.paint.Paint;
import org.panwright.print.Papers;
import org.panwright.swatch.PaintFitReport;
import org.panwright.swatch.sheet.SheetFormat;
import org.panwright.swatch.sheet.SwappedRows;
import org.panwright.words.FileProblemWords;
import org.panwright.words.PaperViewWords;
import org.panwright.words.PictureWords;
import org.panwright.words.SwatchWords;
import org.panwright.words.SwatchesWords;

/** The picture of painted swatches beside what was read off it. */
public final class SwatchesView extends HBox {
  private static final FileKind PDF =
      new FileKind(SwatchesWords.SAVE_TITLE, PaperViewWords.PDF_KIND, ".pdf");
  private static final FileKind PICTURE =
      new FileKind(
          SwatchesWords.OPEN_TITLE,
          SwatchesWords.KIND,
          ".jpg",
          List.of(".jpeg", ".png", ".JPG", ".JPEG", ".PNG"));
  private static final double SIDE = 400;

  private final PictureModel pictures;
  private final SheetModel sheet;
  private final BlankSheet blank;
  private final Dialogs dialogs;
  private final PictureDesk desk;
  private final Label problem = Sentence.of("");
  private final VBox remarks = new VBox(6);
  private final VBox rows = new VBox(10);
  private final Label status = Sentence.of("");
  private final Label fitting = Sentence.of(SwatchesWords.FITTING);
  private final Button keep = new Button(SwatchesWords.KEEP);
  private boolean lineupOnly;

  public SwatchesView(PictureModel pictures, SheetModel sheet, BlankSheet blank, Dialogs dialogs) {
    this.pictures = pictures;
    this.sheet = sheet;
    this.blank = blank;
    this.dialogs = dialogs;
    desk = new PictureDesk(pictures, sheet::outlines);
    getStyleClass().add("swatches-view");
    Label empty = Sentence.of(SwatchesWords.EMPTY);
    empty.getStyleClass().add("empty-hint");
    empty.setMaxWidth(420);
    empty.visibleProperty().bind(pictures.pictureProperty().map(Optional::isEmpty));
    StackPane ground = new StackPane(desk, empty);
    ground.getStyleClass().add("swatch-ground");
    VBox.setVgrow(ground, Priority.ALWAYS);
    VBox left = new VBox(ground, cornersHint());
    HBox.setHgrow(left, Priority.ALWAYS);
    getChildren().setAll(left, side());
    sheet.rowsProperty().addListener(changed -> show());
    sheet.faultProperty().addListener(changed -> show());
    sheet.refusalProperty().addListener(changed -> show());
    sheet.learntProperty().addListener(changed -> show());
    pictures.problemProperty().addListener(changed -> show());
    show();
  }

  private Label cornersHint() {
    Label corners = Sentence.of(SwatchesWords.CORNERS);
    corners.getStyleClass().addAll("soft", "small", "swatches-hint");
    corners.visibleProperty().bind(pictures.pictureProperty().map(Optional::isPresent));
    corners.managedProperty().bind(corners.visibleProperty());
    return corners;
  }

  private VBox side() {
    Label title = new Label(SwatchesWords.NAME);
    title.getStyleClass().add("title");
    Label purpose = Sentence.of(SwatchesWords.PURPOSE);
    purpose.getStyleClass().add("soft");
    Label legend = Sentence.of(SwatchesWords.READ_AND_MODEL);
    legend.getStyleClass().addAll("soft", "small");
    legend.visibleProperty().bind(sheet.rowsProperty().map(list -> !list.isEmpty()));
    legend.managedProperty().bind(legend.visibleProperty());
    problem.getStyleClass().add("warn");
    problem.setId("picture-problem");
    fitting.getStyleClass().addAll("soft", "small");
    VBox content =
        new VBox(12, title, purpose, picturePart(), problem, remarks, legend, rows, blankPart());
    content.getStyleClass().add("swatches-side");
    ScrollPane scroll = new ScrollPane(content);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    keep.getStyleClass().add("primary");
    keep.setOnAction(event -> keep());
    HBox foot = new HBox(10, keep, status, fitting);
    foot.setAlignment(Pos.CENTER_LEFT);
    foot.getStyleClass().add("swatches-foot");
    VBox side = new VBox(scroll, foot);
    side.setMinWidth(SIDE);
    side.setPrefWidth(SIDE);
    side.setMaxWidth(SIDE);
    return side;
  }

  private VBox blankPart() {
    FormGrid form = new FormGrid();
    ChoiceBox<SheetFormat> paper = new ChoiceBox<>();
    paper.getItems().setAll(SheetFormat.values());
    paper.setConverter(new ByLabel<>(format -> SwatchesWords.paper(format)));
    paper.valueProperty().bindBidirectional(sheet.formatProperty());
    form.row(SwatchesWords.PAPER, paper);
    ChoiceBox<Boolean> which = new ChoiceBox<>();
    which.getItems().setAll(false, true);
    which.setConverter(
        new ByLabel<>(only -> only ? SwatchesWords.LINEUP : SwatchesWords.WHOLE_SHELF));
    which.setValue(lineupOnly);
    which.valueProperty().addListener((property, before, now) -> lineupOnly = now);
    form.row(SwatchesWords.PAINTS, which);
    Button save = new Button(SwatchesWords.SAVE_SHEET);
    save.setOnAction(event -> save());
    return new VBox(8, heading(SwatchesWords.BLANK), form, save);
  }

  private VBox picturePart() {
    Button open = new Button(SwatchesWords.OPEN);
    open.getStyleClass().add("primary");
    open.setOnAction(
        event -> dialogs.chooseToOpen(PICTURE, Optional.empty()).ifPresent(this::open));
    ProgressBar bar = new ProgressBar();
    bar.progressProperty().bind(pictures.progressProperty());
    Button stop = new Button(SwatchesWords.STOP);
    stop.setOnAction(event -> pictures.stop());
    HBox reading = new HBox(8, new Label(SwatchesWords.READING), bar, stop);
    reading.setAlignment(Pos.CENTER_LEFT);
    reading
        .visibleProperty()
        .bind(pictures.progressProperty().map(p -> p.doubleValue() != PictureModel.IDLE));
    reading.managedProperty().bind(reading.visibleProperty());
    FormGrid form = new FormGrid();
    ChoiceBox<Boolean> state = new ChoiceBox<>();
    state.getItems().setAll(false, true);
    state.setConverter(new ByLabel<>(SwatchesWords::state));
    state.setValue(false);
    state
        .valueProperty()
        .addListener(
            (property, before, now) ->
                sheet.choicesProperty().set(sheet.choicesProperty().get().withWet(now)));
    form.row(SwatchesWords.STATE, state);
    form.row(SwatchesWords.WHITE, stirred(SheetChoices::whiteId, SheetChoices::withWhite));
    form.row(SwatchesWords.BLACK, stirred(SheetChoices::blackId, SheetChoices::withBlack));
    return new VBox(8, heading(SwatchesWords.PAINTED), open, reading, form);
  }

  private ComboBox<Optional<Paint>> stirred(
      Function<SheetChoices, Optional<String>> read,
      BiFunction<SheetChoices, Optional<String>, SheetChoices> write) {
    ComboBox<Optional<Paint>> box = new ComboBox<>();
    box.setConverter(new ByLabel<>(paint -> paint.map(Paint::name).orElse(SwatchesWords.ANY)));
    List<Optional<Paint>> all = new ArrayList<>();
    all.add(Optional.empty());
    sheet.paints().forEach(paint -> all.add(Optional.of(paint)));
    box.getItems().setAll(all);
    box.setVisibleRowCount(16);
    Optional<String> now = read.apply(sheet.choicesProperty().get());
    box.setValue(
        all.stream().filter(p -> p.map(Paint::id).equals(now)).findFirst().orElse(all.get(0)));
    box.valueProperty()
        .addListener(
            (property, before, chosen) ->
                sheet
                    .choicesProperty()
                    .set(write.apply(sheet.choicesProperty().get(), chosen.map(Paint::id))));
    return box;
  }

  /** Reads a picture. */
  public void open(Path file) {
    status.setText("");
    pictures.open(file);
  }

  private void show() {
    desk.repaint();
    String why =
        !pictures.problemProperty().get().isEmpty()
            ? pictures.problemProperty().get()
            : sheet
                .faultProperty()
                .get()
                .map(PictureWords::sentence)
                .or(
                    () ->
                        sheet
                            .refusalProperty()
                            .get()
                            .map(
                                refusal ->
                                    SwatchWords.sentence(SwatchesWords.PICTURE_FILE, refusal)))
                .orElse("");
    problem.setText(why);
    problem.setVisible(!why.isEmpty());
    problem.setManaged(!why.isEmpty());
    remarks.getChildren().clear();
    Optional<SwappedRows> swapped = sheet.swapped();
    for (String remark : sheet.remarks(swapped)) {
      Label label = Sentence.of(remark);
      label.getStyleClass().add("warn");
      remarks.getChildren().add(label);
    }
    swapped.ifPresent(
        s -> {
          Button exchange = new Button(SwatchesWords.EXCHANGE);
          exchange.setOnAction(event -> sheet.exchange(s.first(), s.second()));
          remarks.getChildren().add(exchange);
        });
    remarks.setManaged(!remarks.getChildren().isEmpty());
    rows.getChildren()
        .setAll(
            sheet.rowsProperty().get().stream()
                .map(row -> new RowCard(row, sheet, learnt(row)))
                .toList());
    boolean waits = !sheet.isSettled();
    fitting.setVisible(waits);
    fitting.setManaged(waits);
    keep.setDisable(!sheet.canKeep());
  }

  private Optional<String> learnt(SheetRow row) {
    Optional<PaintFitReport> report = sheet.learntProperty().get();
    return report.flatMap(
        r ->
            row.paintId()
                .flatMap(id -> Optional.ofNullable(r.optics().get(id)))
                .map(
                    optics ->
                        SwatchesWords.expected(
                            optics.expectedError(),
                            (int)
                                r.coats().stream()
                                    .filter(c -> row.paintId().get().equals(c.paintId()))
                                    .count())));
  }

  private void keep() {
    int paints =
        (int) sheet.rowsProperty().get().stream().filter(row -> row.paintId().isPresent()).count();
    sheet.keep();
    status.setText(SwatchesWords.kept(paints));
  }

  private void save() {
    Papers papers = blank.papers(lineupOnly, sheet.formatProperty().get());
    dialogs
        .chooseToSave(PDF, Optional.empty(), papers.title().replace(':', ' '))
        .ifPresent(
            file ->
                blank.save(
                    papers,
                    file,
                    () -> status.setText(SwatchesWords.saved(file.getFileName().toString())),
                    fault ->
                        dialogs.tell(SwatchesWords.CANNOT_SAVE, FileProblemWords.sentence(fault))));
  }

  private static Label heading(String words) {
    Label heading = new Label(words);
    heading.getStyleClass().add("pane-title");
    return heading;
  }
}
