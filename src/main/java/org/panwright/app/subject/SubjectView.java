package org.panwright.app.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Spinner;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.FileKind;
import org.panwright.app.fx.BuiltLater;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.Parted;
import org.panwright.app.fx.Sentence;
import org.panwright.app.recipes.RecipesView;
import org.panwright.kit.Outing;
import org.panwright.words.RecipeViewWords;
import org.panwright.words.SubjectWords;

/** The photo of a place on the left, its colours and how to mix them on the right. */
public final class SubjectView extends SplitPane implements Parted {
  private static final PseudoClass PROBLEM = PseudoClass.getPseudoClass("problem");
  private static final FileKind PHOTOS =
      new FileKind(SubjectWords.OPEN_TITLE, SubjectWords.PHOTOS, ".jpg", List.of(".jpeg", ".png"));

  private final SubjectModel model;
  private final SubjectRecipes recipes;
  private final Dialogs dialogs;
  private final PhotoCanvas canvas;
  private final Label readout = new Label(SubjectWords.PHOTO_KEYS);
  private final VBox list = new VBox();
  private final ComboBox<Outing> outings = new ComboBox<>();
  private final SplitPane both = new SplitPane();
  private boolean filling;

  /**
   * @param later when the side of the colours is built
   */
  SubjectView(
      SubjectModel model,
      SubjectRecipes recipes,
      RecipesView ways,
      Dialogs dialogs,
      Executor later) {
    this.model = model;
    this.recipes = recipes;
    this.dialogs = dialogs;
    canvas = new PhotoCanvas(model::pick, this::tell, model::open);
    getStyleClass().add("subject-view");
    BuiltLater colours = new BuiltLater(later, () -> colourSide(ways));
    colours.setMinWidth(300);
    getItems().setAll(photoSide(), colours);
    setDividerPositions(0.6);
    recipes.shownProperty().addListener(o -> showRows());
    model.outingProperty().addListener(o -> showOutings());
    showRows();
    showOutings();
  }

  @Override
  public List<Node> parts() {
    return Stream.concat(Stream.of(getItems().get(0)), both.getItems().stream()).toList();
  }

  private Region photoSide() {
    Button open = new Button(SubjectWords.OPEN);
    open.getStyleClass().add("primary");
    open.setOnAction(e -> dialogs.chooseToOpen(PHOTOS, Optional.empty()).ifPresent(model::open));
    ToggleButton painted = new ToggleButton(SubjectWords.PAINTED);
    painted.setTooltip(new Tooltip(SubjectWords.PAINTED_HELP));
    painted.selectedProperty().bindBidirectional(model.bench().showPaintedProperty());
    painted.disableProperty().bind(model.bench().photoProperty().map(Optional::isEmpty));
    ProgressBar progress = new ProgressBar();
    progress.progressProperty().bind(model.bench().progressProperty());
    progress
        .visibleProperty()
        .bind(Bindings.greaterThanOrEqual(model.bench().progressProperty(), 0.0));
    FlowPane bar = new FlowPane(open, painted, progress);
    bar.getStyleClass().addAll("pane-head", "subject-bar");
    Label hint = Sentence.of(SubjectWords.NO_PHOTO, "empty-hint");
    hint.setMouseTransparent(true);
    hint.visibleProperty().bind(model.bench().photoProperty().map(Optional::isEmpty));
    StackPane ground = new StackPane(canvas, hint);
    ground.getStyleClass().add("swatch-ground");
    VBox.setVgrow(ground, Priority.ALWAYS);
    model.bench().photoProperty().addListener((o, before, now) -> canvas.showPhoto(now));
    model
        .bench()
        .paintedProperty()
        .addListener((o, before, now) -> canvas.showPainted(now, model.bench().photo()));
    canvas.showPhoto(model.bench().photo());
    readout.getStyleClass().add("readout");
    readout.visibleProperty().bind(model.bench().photoProperty().map(Optional::isPresent));
    readout.managedProperty().bind(readout.visibleProperty());
    VBox side = new VBox(bar, problem(), ground, readout);
    side.getStyleClass().add("pane");
    side.setMinWidth(360);
    return side;
  }

  /** Says what colour there is at a place of the photo. */
  private void tell(int x, int y) {
    String said = model.look(x, y);
    readout.setText(said);
    canvas.setAccessibleText(said);
  }

  private Label problem() {
    Label problem = Sentence.of("", "field-problem");
    problem.textProperty().bind(model.bench().problemProperty().map(p -> p.orElse("")));
    problem.visibleProperty().bind(problem.textProperty().isNotEmpty());
    problem.managedProperty().bind(problem.visibleProperty());
    return problem;
  }

  private Region colourSide(RecipesView ways) {
    Label title = new Label(SubjectWords.COLOURS);
    title.getStyleClass().add("pane-title");
    outings.setConverter(new ByLabel<>(Outing::name));
    outings.setAccessibleText(SubjectWords.OUTING);
    outings.setMaxWidth(220);
    outings.setOnAction(
        e -> {
          if (!filling && outings.getValue() != null) {
            model.choose(outings.getValue().id());
          }
        });
    HBox head = new HBox(title, outings);
    head.setAlignment(Pos.CENTER_LEFT);
    head.getStyleClass().add("pane-head");
    list.getStyleClass().add("findings-list");
    ScrollPane scroll = new ScrollPane(list);
    scroll.setFitToWidth(true);
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    VBox colours = new VBox(head, taking(), typing(), scroll);
    colours.getStyleClass().add("pane");
    colours.setMinWidth(300);
    Button keep = new Button(SubjectWords.KEEP);
    keep.disableProperty().bind(model.pickedProperty().map(Optional::isEmpty));
    keep.setOnAction(e -> model.keepPicked());
    HBox keeping = new HBox(keep);
    keeping.getStyleClass().add("pane-head");
    VBox.setVgrow(ways, Priority.ALWAYS);
    VBox picked = new VBox(ways, keeping);
    picked.setMinWidth(260);
    both.getItems().setAll(colours);
    ways.visibleProperty()
        .addListener(
            (o, was, visible) -> {
              both.getItems().remove(picked);
              if (visible) {
                both.getItems().add(picked);
              }
            });
    if (ways.isVisible()) {
      both.getItems().add(picked);
    }
    return both;
  }

  private Node taking() {
    Spinner<Integer> many =
        new Spinner<>(SubjectModel.FEWEST, SubjectModel.MOST, model.wantedProperty().get());
    many.setPrefWidth(70);
    many.setAccessibleText(SubjectWords.HOW_MANY);
    many.setTooltip(new Tooltip(SubjectWords.HOW_MANY));
    model.wantedProperty().bind(many.valueProperty());
    Button take = new Button(SubjectWords.TAKE);
    take.disableProperty().bind(model.bench().photoProperty().map(Optional::isEmpty));
    take.setOnAction(e -> model.takeColours());
    HBox taking = new HBox(many, take);
    taking.getStyleClass().add("pane-bar");
    return taking;
  }

  private Node typing() {
    TextField text = new TextField();
    text.setId("subject-colour");
    text.setPromptText(RecipeViewWords.TYPE_PROMPT);
    text.setAccessibleText(RecipeViewWords.TYPE);
    HBox.setHgrow(text, Priority.ALWAYS);
    Label problem = new Label(RecipeViewWords.NO_COLOUR);
    problem.getStyleClass().add("field-problem");
    problem.setVisible(false);
    problem.managedProperty().bind(problem.visibleProperty());
    Runnable add =
        () -> {
          boolean added = model.type(text.getText());
          text.pseudoClassStateChanged(PROBLEM, !added);
          problem.setVisible(!added);
          if (added) {
            text.clear();
          }
        };
    text.setOnAction(e -> add.run());
    Button button = new Button(SubjectWords.ADD);
    button.setOnAction(e -> add.run());
    HBox line = new HBox(text, button);
    line.getStyleClass().add("pane-bar");
    VBox typing = new VBox(line, problem);
    return typing;
  }

  private void showRows() {
    SubjectRecipes.Shown shown = recipes.shownProperty().get();
    List<Node> rows = new ArrayList<>();
    shown.rows().forEach(row -> rows.add(new SubjectCard(model, row, shown.kit())));
    if (rows.isEmpty()) {
      rows.add(Sentence.of(SubjectWords.NO_COLOURS, "soft"));
    }
    list.getChildren().setAll(rows);
  }

  private void showOutings() {
    filling = true;
    outings.getItems().setAll(model.outings());
    outings.setValue(model.outingProperty().get().orElse(null));
    outings.setVisible(!model.outings().isEmpty());
    filling = false;
  }
}
