package org.panwright.app.compare;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.RowConstraints;
import org.panwright.app.Selection;
import org.panwright.app.box.BoxPicture;
import org.panwright.app.box.StillBox;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.FileKind;
import org.panwright.app.fx.ByLabel;
import org.panwright.kit.Kit;
import org.panwright.kit.Outing;
import org.panwright.mixing.Ratio;
import org.panwright.paint.Paint;
import org.panwright.words.ArrangeWords;
import org.panwright.words.CompareWords;
import org.panwright.words.FileProblemWords;
import org.panwright.words.PaperViewWords;

/** Two lineups side by side: boxes above, grids below, what is won and lost on the right. */
public final class CompareView extends BorderPane {
  private final CompareModel model;
  private final ToneBook tones;
  private final Dialogs dialogs;
  private final Runnable arrange;
  private final ComboBox<Side> first = new ComboBox<>();
  private final ComboBox<Side> second = new ComboBox<>();
  private final ComboBox<Paint> out = new ComboBox<>();
  private final ComboBox<Paint> in = new ComboBox<>();
  private final ComboBox<Optional<Outing>> outing = new ComboBox<>();
  private final StillBox firstBox = new StillBox(this::pickPaint);
  private final StillBox secondBox = new StillBox(this::pickPaint);
  private final AlignedGrid firstGrid = new AlignedGrid(this::pickMix);
  private final AlignedGrid secondGrid = new AlignedGrid(this::pickMix);
  private final Label firstName = heading();
  private final Label secondName = heading();
  private final Label status = new Label();
  private final Label nothing = new Label(CompareWords.NOTHING);
  private final ComparedSide side = new ComparedSide();
  private final GridPane both = new GridPane();
  private boolean following;

  /**
   * @param arrange asks how the lineup looked at is to be laid into its wells
   */
  public CompareView(CompareModel model, ToneBook tones, Dialogs dialogs, Runnable arrange) {
    this.model = model;
    this.tones = tones;
    this.dialogs = dialogs;
    this.arrange = arrange;
    getStyleClass().addAll("pane", "compare");
    setTop(bar());
    layBoth();
    setCenter(both);
    setRight(side);
    model.comparedProperty().addListener(changed -> show());
    model.firstProperty().addListener(changed -> follow());
    model.secondProperty().addListener(changed -> follow());
    model.session().selectionProperty().addListener(changed -> mark());
    model.session().historyProperty().addListener(changed -> follow());
    model.session().lineupProperty().addListener(changed -> follow());
    follow();
    show();
  }

  private FlowPane bar() {
    FlowPane bar = new FlowPane(8, 6);
    bar.getStyleClass().add("compare-bar");
    sides(first, CompareWords.FIRST, true);
    sides(second, CompareWords.SECOND, false);
    paints(out, CompareWords.OUT);
    paints(in, CompareWords.IN);
    outing.setConverter(new ByLabel<>(o -> o.map(Outing::name).orElse(CompareWords.NO_OUTING)));
    outing.setAccessibleText(CompareWords.OUTING);
    outing
        .valueProperty()
        .addListener(
            (o, before, now) -> {
              if (!following && now != null) {
                model.outingProperty().set(now);
              }
            });
    Button turn = new Button("⇄");
    turn.setTooltip(new Tooltip(CompareWords.TURN_ROUND));
    turn.setAccessibleText(CompareWords.TURN_ROUND);
    turn.setOnAction(event -> model.turnRound());
    Button exchange = new Button(CompareWords.SHOW_SWAP);
    exchange.setTooltip(new Tooltip(CompareWords.SWAP_MEANING));
    exchange.setOnAction(
        event -> {
          if (out.getValue() != null && in.getValue() != null) {
            model.exchange(out.getValue(), in.getValue());
          }
        });
    exchange.disableProperty().bind(out.valueProperty().isNull().or(in.valueProperty().isNull()));
    Button lay = new Button(ArrangeWords.LINE);
    lay.setOnAction(event -> arrange.run());
    lay.disableProperty().bind(model.session().lineupProperty().map(Optional::isEmpty));
    Button save = new Button(CompareWords.SAVE);
    save.setOnAction(event -> save());
    save.disableProperty().bind(model.comparedProperty().map(Optional::isEmpty));
    bar.getChildren()
        .addAll(
            group(soft(CompareWords.FIRST), first, turn, soft(CompareWords.SECOND), second),
            group(soft(CompareWords.SWAP), out, in, exchange),
            group(soft(CompareWords.OUTING), outing),
            group(lay, save, status));
    return bar;
  }

  private static HBox group(javafx.scene.Node... nodes) {
    HBox group = new HBox(6, nodes);
    group.setAlignment(Pos.CENTER_LEFT);
    return group;
  }

  private static Label soft(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("soft");
    return label;
  }

  private static Label heading() {
    Label label = new Label();
    label.getStyleClass().add("pane-title");
    return label;
  }

  private void sides(ComboBox<Side> box, String what, boolean isFirst) {
    box.setConverter(new ByLabel<>(Side::label));
    box.setAccessibleText(what);
    box.setPrefWidth(220);
    box.valueProperty()
        .addListener(
            (o, before, now) -> {
              if (!following && now != null) {
                (isFirst ? model.firstProperty() : model.secondProperty()).set(Optional.of(now));
              }
            });
  }

  private static void paints(ComboBox<Paint> box, String what) {
    box.setConverter(new ByLabel<>(Paint::name));
    box.setPromptText(what);
    box.setAccessibleText(what);
    box.setPrefWidth(150);
  }

  private void layBoth() {
    ColumnConstraints half = new ColumnConstraints();
    half.setPercentWidth(50);
    both.getColumnConstraints().setAll(half, half);
    RowConstraints head = new RowConstraints();
    RowConstraints boxes = new RowConstraints();
    boxes.setPercentHeight(42);
    RowConstraints grids = new RowConstraints();
    grids.setVgrow(Priority.ALWAYS);
    both.getRowConstraints().setAll(head, boxes, grids);
    both.addRow(0, firstName, secondName);
    both.addRow(1, firstBox, secondBox);
    both.addRow(2, firstGrid, secondGrid);
    both.getStyleClass().add("compare-both");
    nothing.getStyleClass().add("empty-hint");
    nothing.setWrapText(true);
  }

  private void follow() {
    following = true;
    List<Side> choices = model.choices();
    fill(first, choices, model.firstProperty().get());
    fill(second, choices, model.secondProperty().get());
    refill(out, model.paintsOfFirst());
    refill(in, model.paintsBesideFirst());
    outing.getItems().setAll(List.of(Optional.empty()));
    model.session().kit().outings().forEach(o -> outing.getItems().add(Optional.of(o)));
    outing.setValue(model.outingProperty().get());
    following = false;
  }

  private static void fill(ComboBox<Side> box, List<Side> choices, Optional<Side> chosen) {
    box.getItems().setAll(choices);
    chosen.filter(side -> !choices.contains(side)).ifPresent(box.getItems()::add);
    box.setValue(chosen.orElse(null));
  }

  private static void refill(ComboBox<Paint> box, List<Paint> paints) {
    Paint was = box.getValue();
    box.getItems().setAll(paints);
    box.setValue(paints.contains(was) ? was : null);
  }

  private void show() {
    Optional<Compared> compared = model.comparedProperty().get();
    setCenter(compared.isPresent() ? both : nothing);
    side.show(compared);
    if (compared.isEmpty()) {
      return;
    }
    Compared shown = compared.get();
    Kit kit = shown.ofFirst().kit();
    firstName.setText(shown.first().label());
    secondName.setText(shown.second().label());
    firstBox.show(Optional.of(BoxPicture.of(kit, shown.first().lineup(), tones)));
    secondBox.show(Optional.of(BoxPicture.of(kit, shown.second().lineup(), tones)));
    List<Paint> paints =
        shown.paints().stream().flatMap(id -> kit.shelf().find(id).stream()).toList();
    firstGrid.show(shown.ofFirst(), paints);
    secondGrid.show(shown.ofSecond(), paints);
    firstGrid.setAccessibleText(CompareWords.gridFigure(shown.first().label()));
    secondGrid.setAccessibleText(CompareWords.gridFigure(shown.second().label()));
    mark();
  }

  private void pickPaint(String paintId) {
    model.session().selectionProperty().set(new Selection.OfPaint(paintId));
  }

  private void pickMix(String rowId, String columnId) {
    model.session().selectionProperty().set(new Selection.OfMix(rowId, columnId, Ratio.EVEN));
  }

  /** What is picked is marked on both sides. */
  private void mark() {
    Selection selection = model.session().selectionProperty().get();
    Set<String> paints = Set.of();
    if (selection instanceof Selection.OfPaint paint) {
      paints = Set.of(paint.paintId());
    } else if (selection instanceof Selection.OfMix mix) {
      paints =
          mix.rowPaintId().equals(mix.columnPaintId())
              ? Set.of(mix.rowPaintId())
              : Set.of(mix.rowPaintId(), mix.columnPaintId());
    }
    firstBox.mark(paints);
    secondBox.mark(paints);
    firstGrid.mark(selection);
    secondGrid.mark(selection);
  }

  private void save() {
    FileKind pdf = new FileKind(CompareWords.SAVE, PaperViewWords.PDF_KIND, ".pdf");
    dialogs
        .chooseToSave(pdf, Optional.empty(), CompareWords.TITLE)
        .ifPresent(
            file ->
                model.savePdf(
                    file,
                    () -> status.setText(CompareWords.saved(file.getFileName().toString())),
                    problem ->
                        dialogs.tell(
                            PaperViewWords.CANNOT_SAVE, FileProblemWords.sentence(problem))));
  }
}
