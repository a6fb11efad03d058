package org.panwright.app.fill;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.ObservableList;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.analysis.fill.FillPlan;
import org.panwright.analysis.fill.PlannedWell;
import org.panwright.analysis.fill.Sharing;
import org.panwright.app.fx.BuiltLater;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.Parted;
import org.panwright.app.fx.Sentence;
import org.panwright.kit.Box;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.words.FillViewWords;
import org.panwright.words.FillWords;
import org.panwright.words.FitWords;

/** The fill plan: which lineups above, the wells beneath, what follows on the right. */
final class PlanPart extends VBox implements Parted {
  private final FillModel model;
  private final FlowPane lineups = new FlowPane(14, 6);
  private final ChoiceBox<Sharing> sharing = new ChoiceBox<>();
  private final TextField day = new TextField();
  private final ReadOnlyStringWrapper dayProblem = new ReadOnlyStringWrapper("");
  private final Label summary = Sentence.of("");
  private final VBox beside = new VBox(6);
  private final TextTable<PlannedWell> wells;
  private final HBox choices;
  private final BuiltLater middle;
  private final BuiltLater right;
  private boolean hasRows;
  private boolean hasSide;
  private Optional<Kit> wellsOf = Optional.empty();

  /**
   * @param later when the table gets its place, and then what stands beside it
   */
  PlanPart(FillModel model, Executor later) {
    super(12);
    this.model = model;
    getStyleClass().add("fill-part");
    wells =
        new TextTable<PlannedWell>(FillViewWords.PLAN, FillViewWords.NO_WELLS)
            .words(FillViewWords.BOX, 112, w -> FillWords.box(w.boxId(), model.kit()))
            .words(FillViewWords.WELL, 50, w -> FillWords.label(model.kit(), w))
            .words(FillViewWords.PAINT, 140, w -> FillWords.paint(w.paintId(), model.kit()))
            .figures(
                FillViewWords.IN_IT, 72, PlannedWell::heldMl, w -> FillWords.mlOrNone(w.heldMl()))
            .figures(
                FillViewWords.WET, 80, PlannedWell::givenMl, w -> FillWords.mlOrNone(w.givenMl()))
            .words(
                FillViewWords.LAYERS,
                100,
                w -> w.givenMl() > 0 ? FillWords.layersBriefly(w.layers()) : "–")
            .figures(
                FillViewWords.DRY_AFTER,
                64,
                w -> w.layers().dryingDays(),
                w -> w.givenMl() > 0 ? FillWords.days(w.layers().dryingDays()) : "–")
            .words(FillViewWords.REMARK, 180, this::remark);
    wells.getPlaceholder().setVisible(false);
    wells.getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
    middle = new BuiltLater(later, this::middle);
    HBox.setHgrow(middle, Priority.ALWAYS);
    middle.setMinWidth(0);
    right = new BuiltLater(later, this::right);
    right.setMinWidth(235);
    right.setPrefWidth(270);
    choices = choices();
    HBox body = new HBox(16, middle, right);
    VBox.setVgrow(body, Priority.ALWAYS);
    getChildren().setAll(choices, body);
    later.execute(this::fillTable);
    day.setText(model.today().toString());
  }

  @Override
  public List<Node> parts() {
    return List.of(choices, middle, right);
  }

  /** The rows come once the table with its heads is there, which says until then nothing. */
  private void fillTable() {
    hasRows = true;
    showWells(model.kit(), model.planProperty().get());
    wells.getPlaceholder().setVisible(true);
  }

  private VBox middle() {
    VBox.setVgrow(wells, Priority.ALWAYS);
    return new VBox(10, summary, wells, bar());
  }

  private ScrollPane right() {
    ScrollPane right = new ScrollPane(beside);
    right.setFitToWidth(true);
    right.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    hasSide = true;
    showBeside(model.kit(), model.planProperty().get());
    return right;
  }

  /** Shows the kit as it is now. */
  void show() {
    Kit kit = model.kit();
    showLineups(kit);
    FillPlan plan = model.planProperty().get();
    summary.setText(String.join(" ", FillWords.summary(plan, kit)));
    sharing.setValue(model.sharingProperty().get());
    if (hasRows) {
      showWells(kit, plan);
    }
    if (hasSide) {
      showBeside(kit, plan);
    }
  }

  /** The table makes its cells anew only for a kit that may say something else in them. */
  private void showWells(Kit kit, FillPlan plan) {
    if (!wells.getItems().equals(plan.wells())) {
      wells.getItems().setAll(plan.wells());
    } else if (!Optional.of(kit).equals(wellsOf)) {
      wells.refresh();
    }
    wellsOf = Optional.of(kit);
  }

  private HBox choices() {
    sharing.setConverter(new ByLabel<>(FillWords::sharing));
    sharing.getItems().setAll(Sharing.values());
    sharing.setMinWidth(Region.USE_PREF_SIZE);
    sharing.setAccessibleText(FillViewWords.SHARE);
    sharing
        .valueProperty()
        .addListener(
            (property, before, now) -> {
              if (now != null) {
                model.sharingProperty().set(now);
              }
            });
    VBox ticks = new VBox(6, heading(FillViewWords.LINEUPS), lineups);
    HBox.setHgrow(ticks, Priority.ALWAYS);
    return new HBox(16, ticks, new VBox(6, heading(FillViewWords.SHARE), sharing));
  }

  private FlowPane bar() {
    day.setPrefColumnCount(9);
    day.setAccessibleText(FillViewWords.FILLED_ON);
    day.textProperty()
        .addListener(
            changed ->
                dayProblem.set(TypedDay.problem(day.getText(), false, model.today()).orElse("")));
    Label name = new Label(FillViewWords.FILLED_ON);
    name.getStyleClass().add("soft");
    name.setLabelFor(day);
    Button fill = new Button(FillViewWords.FILL_PICKED);
    fill.setTooltip(new Tooltip(FillViewWords.FILL_HINT));
    fill.setAccessibleHelp(FillViewWords.FILL_HINT);
    fill.setOnAction(
        event ->
            TypedDay.read(day.getText())
                .ifPresent(
                    when ->
                        model.fill(
                            List.copyOf(wells.getSelectionModel().getSelectedItems()), when)));
    fill.disableProperty()
        .bind(
            Bindings.createBooleanBinding(
                () -> !dayProblem.get().isEmpty() || model.planProperty().get().toFill().isEmpty(),
                dayProblem,
                model.planProperty()));
    Button clean = new Button(FillViewWords.CLEAN);
    clean.setOnAction(
        event -> model.clean(List.copyOf(wells.getSelectionModel().getSelectedItems())));
    clean.disableProperty().bind(wells.getSelectionModel().selectedItemProperty().isNull());
    ObservableList<PlannedWell> picked = wells.getSelectionModel().getSelectedItems();
    Button exchange = new Button(FillViewWords.EXCHANGE);
    exchange.setTooltip(new Tooltip(FillViewWords.EXCHANGE_HINT));
    exchange.setAccessibleHelp(FillViewWords.EXCHANGE_HINT);
    exchange.setOnAction(event -> model.exchange(List.copyOf(picked)));
    exchange
        .disableProperty()
        .bind(Bindings.createBooleanBinding(() -> !FillModel.isAnyBeside(picked), picked));
    Label problem = new Label();
    problem.getStyleClass().add("field-problem");
    problem.textProperty().bind(dayProblem);
    HBox filling = new HBox(8, fill, name, day);
    filling.setAlignment(Pos.CENTER_LEFT);
    FlowPane bar = new FlowPane(8, 6, filling, exchange, clean, problem);
    bar.setAlignment(Pos.CENTER_LEFT);
    return bar;
  }

  private void showLineups(Kit kit) {
    List<CheckBox> boxes = new ArrayList<>();
    for (Lineup lineup : kit.lineups()) {
      CheckBox box = new CheckBox(FillViewWords.lineupOf(lineup.name(), kit.boxOf(lineup).name()));
      box.setSelected(model.isTicked(lineup.id()));
      box.setOnAction(event -> model.tick(lineup.id(), box.isSelected()));
      boxes.add(box);
    }
    int focused = lineups.getChildren().stream().map(n -> n.isFocused()).toList().indexOf(true);
    lineups.getChildren().setAll(boxes);
    if (focused >= 0 && focused < boxes.size()) {
      boxes.get(focused).requestFocus();
    }
  }

  private void showBeside(Kit kit, FillPlan plan) {
    beside.getChildren().clear();
    add(
        FillViewWords.TO_BUY,
        plan.runningShort().stream().map(d -> FillWords.shortage(d, kit)).toList(),
        FillWords.NOTHING_SHORT);
    for (FillModel.Refills refills : model.furtherProperty().get().refills()) {
      kit.lineup(refills.lineupId())
          .ifPresent(
              lineup -> {
                Box box = kit.boxOf(lineup);
                add(
                    FillViewWords.REFILL + ": " + lineup.name(),
                    refills.wells().stream().map(r -> FillWords.line(r, box, kit)).toList(),
                    FillViewWords.NO_REFILL);
                addTaken(kit, lineup);
                refills.last().ifPresent(last -> addWear(lineup, last));
                refills.next().ifPresent(next -> addWear(lineup, next));
              });
    }
    beside.getChildren().add(heading(FillViewWords.FIT));
    model
        .fits()
        .forEach(
            (box, fit) ->
                FitWords.sentences(fit, box, kit.stock())
                    .forEach(line -> beside.getChildren().add(soft(box.name() + ". " + line))));
    beside
        .getChildren()
        .addAll(heading(FillViewWords.IN_THE_PAN), soft(FillWords.HOW), soft(FillWords.USUAL));
  }

  private void addTaken(Kit kit, Lineup lineup) {
    kit.outings().stream()
        .filter(outing -> outing.paintTaken())
        .filter(outing -> outing.lineupId().equals(Optional.of(lineup.id())))
        .max(Comparator.comparing(outing -> outing.date().orElse(LocalDate.MAX)))
        .ifPresent(outing -> beside.getChildren().add(soft(FillViewWords.taken(outing.name()))));
  }

  private void addWear(Lineup lineup, FillModel.Taking taking) {
    Button wear = new Button(FillViewWords.wear(taking.outing().name()));
    wear.setWrapText(true);
    wear.setMnemonicParsing(false);
    wear.setOnAction(event -> model.wear(lineup.id(), taking));
    beside.getChildren().add(wear);
  }

  private void add(String heading, List<String> lines, String nothing) {
    beside.getChildren().add(heading(heading));
    if (lines.isEmpty()) {
      beside.getChildren().add(soft(nothing));
    }
    lines.forEach(line -> beside.getChildren().add(Sentence.of(line)));
  }

  private String remark(PlannedWell well) {
    List<String> remarks = new ArrayList<>();
    well.otherPaintId().ifPresent(id -> remarks.add(FillWords.takeOut(id, model.kit())));
    FillWords.pan(well).ifPresent(remarks::add);
    if (well.isShort()) {
      remarks.add(FillWords.shortMl(well));
    }
    return String.join("; ", remarks);
  }

  private static Label heading(String text) {
    Label label = Sentence.of(text);
    label.getStyleClass().add("part-heading");
    return label;
  }

  private static Label soft(String text) {
    Label label = Sentence.of(text);
    label.getStyleClass().add("soft");
    return label;
  }
}
