package org.panwright.app.papers;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.FileKind;
import org.panwright.app.fx.BuiltLater;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.Parted;
import org.panwright.app.fx.Sentence;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Outing;
import org.panwright.print.CardOptions;
import org.panwright.print.ChartOptions;
import org.panwright.print.ComparisonOptions;
import org.panwright.print.FillPlanOptions;
import org.panwright.print.LabelOptions;
import org.panwright.print.Made;
import org.panwright.print.PaperKind;
import org.panwright.print.PaperOrder;
import org.panwright.print.Papers;
import org.panwright.words.FileProblemWords;
import org.panwright.words.PaperViewWords;
import org.panwright.words.PaperWords;

/** From left to right: which papers there are, what can be chosen about one, its sheets. */
public final class PapersView extends HBox implements Parted {
  private static final FileKind PDF =
      new FileKind(PaperViewWords.SAVE_TITLE, PaperViewWords.PDF_KIND, ".pdf");

  private final PapersModel model;
  private final Dialogs dialogs;
  private final SheetDesk desk = new SheetDesk();
  private final ChoiceBox<Optional<String>> occasions = new ChoiceBox<>();
  private final VBox fields = new VBox();
  private final Map<PaperKind, Node> built = new EnumMap<>(PaperKind.class);
  private final Label title = sentence("title");
  private final Label purpose = sentence("soft");
  private final Label notes = sentence("warn");
  private final Label status = sentence("paper-status");
  private final Label statusOfAll = sentence("paper-status");

  /**
   * @param later when the choices about a paper are put in, and its sheets
   */
  public PapersView(PapersModel model, Dialogs dialogs, Executor later) {
    this.model = model;
    this.dialogs = dialogs;
    getStyleClass().add("papers-view");
    ScrollPane middle = new ScrollPane(order());
    middle.setFitToWidth(true);
    middle.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    middle.getStyleClass().add("paper-order-pane");
    BuiltLater sheets = new BuiltLater(later, () -> desk);
    HBox.setHgrow(sheets, Priority.ALWAYS);
    getChildren().setAll(kinds(), middle, sheets);
    model.madeProperty().addListener(changed -> show());
    model.kindProperty().addListener(changed -> showOrder());
    later.execute(this::showOrder);
    show();
  }

  @Override
  public List<Node> parts() {
    return List.copyOf(getChildren());
  }

  private VBox kinds() {
    Label heading = sentence("title");
    heading.setText(PaperViewWords.TITLE);
    Label occasion = sentence("soft");
    occasion.setText(PaperViewWords.FOR);
    occasion.setLabelFor(occasions);
    occasions.setConverter(new ByLabel<>(this::occasion));
    occasions.setMaxWidth(Double.MAX_VALUE);
    occasions.setAccessibleText(PaperViewWords.FOR);
    occasions
        .valueProperty()
        .addListener(
            (property, before, now) -> {
              if (now != null) {
                model.outingProperty().set(now);
              }
            });
    CheckBox grey = new CheckBox(PaperViewWords.GREY);
    grey.selectedProperty().bindBidirectional(model.greyProperty());
    Button all = new Button(PaperViewWords.SAVE_ALL);
    all.setWrapText(true);
    all.setMaxWidth(Double.MAX_VALUE);
    all.setOnAction(event -> saveAll());
    all.disableProperty().bind(model.madeProperty().map(Optional::isEmpty));
    Label hint = sentence("soft");
    hint.setText(PaperViewWords.TICKED);
    VBox column =
        new VBox(
            12,
            heading,
            new VBox(4, occasion, occasions),
            new PaperList(model),
            grey,
            all,
            hint,
            statusOfAll);
    column.getStyleClass().add("paper-kinds");
    column.setMinWidth(216);
    column.setPrefWidth(216);
    return column;
  }

  private VBox order() {
    Button save = new Button(PaperViewWords.SAVE_PDF);
    save.getStyleClass().add("primary");
    save.setOnAction(event -> save());
    Button print = new Button(PaperViewWords.PRINT);
    print.setOnAction(event -> print());
    for (Button button : List.of(save, print)) {
      button
          .disableProperty()
          .bind(model.madeProperty().map(made -> made.flatMap(Made::papers).isEmpty()));
    }
    VBox column = new VBox(14, title, purpose, new HBox(8, save, print), status, notes, fields);
    column.getStyleClass().add("paper-order");
    column.setMinWidth(290);
    column.setPrefWidth(300);
    return column;
  }

  private void showOrder() {
    PaperKind kind = model.kindProperty().get();
    title.setText(PaperWords.name(kind.name()));
    purpose.setText(PaperViewWords.purpose(kind.name()));
    status.setText("");
    fields.getChildren().setAll(built.computeIfAbsent(kind, this::fieldsOf));
  }

  private Node fieldsOf(PaperKind kind) {
    PaperOrder order = model.order(kind);
    if (order instanceof CardOptions card) {
      return new CardFields(card, model);
    } else if (order instanceof ChartOptions chart) {
      return new ChartFields(chart, model);
    } else if (order instanceof LabelOptions labels) {
      return new LabelFields(labels, model);
    }
    if (order instanceof FillPlanOptions plan) {
      OrderFields<FillPlanOptions> fields = new OrderFields<>(FillPlanOptions.class, plan, model);
      fields.tick(
          PaperViewWords.EVERY_BOX, FillPlanOptions::everyBox, FillPlanOptions::withEveryBox);
      return fields;
    }
    if (order instanceof ComparisonOptions comparison) {
      return new ComparisonFields(comparison, model);
    }
    return new OrderFields<>(PaperOrder.class, order, model);
  }

  private void show() {
    List<Optional<String>> choices = new ArrayList<>(List.of(Optional.empty()));
    model.outings().forEach(outing -> choices.add(Optional.of(outing.id())));
    occasions.getItems().setAll(choices);
    occasions.setValue(
        choices.contains(model.outingProperty().get())
            ? model.outingProperty().get()
            : Optional.empty());
    Optional<Made> made = model.madeProperty().get();
    notes.setText(made.map(m -> String.join("\n", m.notes())).orElse(PaperViewWords.NO_LINEUP));
    desk.show(made.flatMap(Made::papers).map(Papers::sheets).orElse(List.of()));
  }

  private String occasion(Optional<String> outingId) {
    return outingId
        .flatMap(id -> model.outings().stream().filter(o -> o.id().equals(id)).findFirst())
        .map(Outing::name)
        .orElse(PaperViewWords.THIS_LINEUP);
  }

  private void save() {
    dialogs
        .chooseToSave(PDF, Optional.empty(), model.fileName(false))
        .ifPresent(
            file ->
                model.save(
                    file,
                    () -> status.setText(PaperViewWords.saved(file.getFileName().toString())),
                    this::tell));
  }

  private void saveAll() {
    dialogs
        .chooseToSave(PDF, Optional.empty(), model.fileName(true))
        .ifPresent(
            file ->
                model.saveAll(
                    file,
                    () -> statusOfAll.setText(PaperViewWords.saved(file.getFileName().toString())),
                    () -> statusOfAll.setText(PaperViewWords.NOTHING_TICKED),
                    this::tell));
  }

  private void tell(FileProblem problem) {
    dialogs.tell(PaperViewWords.CANNOT_SAVE, FileProblemWords.sentence(problem));
  }

  private void print() {
    model
        .madeProperty()
        .get()
        .flatMap(Made::papers)
        .ifPresent(
            papers -> PaperPrinter.send(papers, getScene().getWindow(), dialogs, status::setText));
  }

  private static Label sentence(String style) {
    Label label = Sentence.of("", style);
    label.managedProperty().bind(label.textProperty().isNotEmpty());
    return label;
  }
}
