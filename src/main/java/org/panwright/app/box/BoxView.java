package org.panwright.app.box;

import java.util.Objects;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.Dragboard;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.panwright.app.Editors;
import org.panwright.app.chip.DragPicture;
import org.panwright.app.hand.Held;
import org.panwright.app.hand.HeldOnDragboard;
import org.panwright.app.hand.Holding;
import org.panwright.app.hand.Spot;
import org.panwright.words.BoxWords;

/**
 * The box drawn to scale with its lineup; paints are dropped into its wells, moved between them and
 * dragged out. Below it a line says in words what is going on.
 */
public final class BoxView extends VBox {
  private final BoxModel model;
  private final BoxDrawing drawing;
  private final BoxKeys keys;
  private final WellMenu menu;
  private final ContextMenu popup = new ContextMenu();

  public BoxView(BoxModel model, Editors editors) {
    this.model = model;
    menu = new WellMenu(model, editors);
    drawing = new BoxDrawing(model, this::prepare);
    keys = new BoxKeys(model, drawing);
    getStyleClass().addAll("pane", "box");
    getStylesheets().add(sheet());
    StackPane room = new StackPane(drawing, nothing(editors));
    room.getStyleClass().add("box-room");
    VBox.setVgrow(room, Priority.ALWAYS);
    getChildren().addAll(heading(), room, status());
  }

  /** The box alone, for a picture of it. */
  public static Region figure(BoxModel model) {
    BoxDrawing drawing = new BoxDrawing(model, well -> {});
    drawing.getStylesheets().add(sheet());
    return drawing;
  }

  private VBox nothing(Editors editors) {
    Label why = new Label(BoxWords.NO_LINEUP);
    why.getStyleClass().add("soft");
    Button add = new Button(BoxWords.ADD_LINEUP);
    add.setOnAction(event -> editors.addLineup());
    VBox nothing = new VBox(why, add);
    nothing.getStyleClass().add("nothing");
    nothing.visibleProperty().bind(model.pictureProperty().map(Optional::isEmpty));
    return nothing;
  }

  private HBox heading() {
    Label title = new Label(BoxWords.TITLE);
    title.getStyleClass().add("pane-title");
    title.setMinWidth(Region.USE_PREF_SIZE);
    Label caption = new Label();
    caption.getStyleClass().addAll("soft", "small");
    caption
        .textProperty()
        .bind(
            Bindings.createStringBinding(
                () ->
                    model
                        .pictureProperty()
                        .get()
                        .map(picture -> BoxWords.caption(picture.box(), picture.filled()))
                        .orElse(""),
                model.pictureProperty()));
    HBox heading = new HBox(title, caption);
    heading.getStyleClass().addAll("pane-head", "box-heading");
    return heading;
  }

  private Label status() {
    Label status = new Label();
    status.getStyleClass().addAll("small", "hand-status");
    status.textProperty().bind(model.hand().statusProperty());
    status.setMaxWidth(Double.MAX_VALUE);
    status.setMinHeight(Region.USE_PREF_SIZE);
    status.visibleProperty().bind(model.pictureProperty().map(Optional::isPresent));
    return status;
  }

  private void prepare(WellView well) {
    well.setOnMousePressed(
        event -> {
          well.requestFocus();
          model.pick(well.wellId());
        });
    well.setOnKeyPressed(event -> keys.act(well, event));
    well.setOnContextMenuRequested(event -> openMenu(well, event));
    well.setOnDragDetected(event -> drag(well, event));
    well.setOnDragDone(event -> model.hand().cancel());
    well.setOnDragOver(
        event -> {
          if (HeldOnDragboard.read(event.getDragboard()).isPresent()) {
            event.acceptTransferModes(TransferMode.COPY_OR_MOVE);
            model.hand().hover(new Spot.AtWell(well.wellId()));
            event.consume();
          }
        });
    well.setOnDragExited(event -> model.hand().leave());
    well.setOnDragDropped(
        event -> {
          model.hand().hover(new Spot.AtWell(well.wellId()));
          event.setDropCompleted(model.hand().putDown());
          event.consume();
        });
  }

  private void drag(WellView well, MouseEvent event) {
    Optional<WellPicture.Content> content = well.shown().content();
    if (content.isEmpty() || event.getButton() != MouseButton.PRIMARY) {
      return;
    }
    Dragboard board = well.startDragAndDrop(TransferMode.COPY_OR_MOVE);
    board.setContent(HeldOnDragboard.content(new Held.FromWell(well.wellId())));
    board.setDragView(DragPicture.of(content.get().tones()));
    model.pickUp(well.wellId(), Holding.Means.POINTER);
    event.consume();
  }

  private void openMenu(WellView well, ContextMenuEvent event) {
    model.pick(well.wellId());
    model
        .pictureProperty()
        .get()
        .ifPresent(picture -> popup.getItems().setAll(menu.items(well.shown(), picture)));
    popup.show(well, event.getScreenX(), event.getScreenY());
    event.consume();
  }

  static String sheet() {
    String path = "/org/panwright/app/theme/bench.css";
    return Objects.requireNonNull(BoxView.class.getResource(path), path).toExternalForm();
  }
}
