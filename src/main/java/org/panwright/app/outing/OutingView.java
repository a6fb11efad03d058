package org.panwright.app.outing;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.panwright.app.fx.BuiltLater;
import org.panwright.app.fx.Parted;
import org.panwright.app.fx.Sentence;
import org.panwright.kit.Outing;
import org.panwright.words.OutingWords;

/** The outings on the left, the plan of one beside them, and what to pack for it on the right. */
public final class OutingView extends HBox implements Parted {
  /** Check list and amounts lie beside each other from a width of twice this. */
  private static final double COLUMN = 500;

  private final OutingModel model;
  private final Executor later;
  private final ListView<Outing> list = new ListView<>();
  private boolean following;

  /**
   * @param later when what is beside the list is built
   */
  public OutingView(OutingModel model, Executor later) {
    this.model = model;
    this.later = later;
    getStyleClass().add("outing-view");
    ScrollPane form = scrolling(new BuiltLater(later, () -> new OutingForm(model, later)));
    form.setMinWidth(330);
    form.setPrefWidth(350);
    form.visibleProperty().bind(model.chosenProperty().map(Optional::isPresent));
    getChildren().setAll(outings(), form, packing());
    model.outingsProperty().addListener(changed -> show());
    model.chosenProperty().addListener(changed -> show());
    show();
  }

  @Override
  public List<Node> parts() {
    return List.copyOf(getChildren());
  }

  private VBox outings() {
    Label title = new Label(OutingWords.OUTINGS);
    title.getStyleClass().add("pane-title");
    list.setAccessibleText(OutingWords.OUTINGS);
    list.setCellFactory(view -> new OutingCell());
    list.setPlaceholder(Sentence.of(OutingWords.NONE, "soft"));
    list.getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (property, before, now) -> {
              if (!following && now != null) {
                model.choose(now.id());
              }
            });
    VBox.setVgrow(list, Priority.ALWAYS);
    Button add = new Button(OutingWords.NEW);
    add.setOnAction(event -> model.add());
    Button copy = new Button(OutingWords.COPY);
    copy.setOnAction(event -> model.copy());
    Button remove = new Button(OutingWords.REMOVE);
    remove.setOnAction(event -> model.remove());
    copy.disableProperty().bind(model.chosenProperty().map(Optional::isEmpty));
    remove.disableProperty().bind(model.chosenProperty().map(Optional::isEmpty));
    VBox column = new VBox(8, title, list, add, new HBox(8, copy, remove));
    column.getStyleClass().add("outing-list");
    column.setMinWidth(190);
    column.setPrefWidth(220);
    return column;
  }

  private ScrollPane packing() {
    BuiltLater checks = new BuiltLater(later, () -> new CheckListPane(model, later));
    // Asked for once more when its turn comes, so that it stands behind the rows of the check list.
    Executor atLast = work -> later.execute(() -> later.execute(work));
    BuiltLater needs = new BuiltLater(atLast, () -> new NeedsPane(model));
    FlowPane both = new FlowPane(28, 22, checks, needs);
    both.getStyleClass().add("packing");
    ScrollPane scroll = scrolling(both);
    scroll
        .viewportBoundsProperty()
        .addListener(
            (property, before, now) -> {
              double room =
                  now.getWidth() - both.getInsets().getLeft() - both.getInsets().getRight();
              double each = room >= 2 * COLUMN + 28 ? (room - 28) / 2 - 1 : room;
              checks.setPrefWidth(each);
              needs.setPrefWidth(each);
            });
    both.visibleProperty().bind(model.chosenProperty().map(Optional::isPresent));
    HBox.setHgrow(scroll, Priority.ALWAYS);
    return scroll;
  }

  private static ScrollPane scrolling(javafx.scene.Node content) {
    ScrollPane scroll = new ScrollPane(content);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    return scroll;
  }

  private void show() {
    following = true;
    List<Outing> outings = model.outingsProperty().get();
    if (!list.getItems().equals(outings)) {
      list.getItems().setAll(outings);
    }
    model
        .chosenProperty()
        .get()
        .ifPresentOrElse(
            list.getSelectionModel()::select, list.getSelectionModel()::clearSelection);
    following = false;
  }

  private static final class OutingCell extends ListCell<Outing> {
    private final Label name = new Label();
    private final Label day = new Label();
    private final VBox both = new VBox(1, name, day);

    OutingCell() {
      day.getStyleClass().addAll("soft", "small");
      name.setMaxWidth(180);
      day.setMaxWidth(180);
    }

    @Override
    protected void updateItem(Outing outing, boolean empty) {
      super.updateItem(outing, empty);
      setGraphic(empty ? null : both);
      if (!empty) {
        name.setText(outing.name());
        day.setText(OutingWords.day(outing.date()));
      }
    }
  }
}
