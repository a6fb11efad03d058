package org.panwright.app.shelf;

import java.util.Objects;
import javafx.beans.binding.Bindings;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.panwright.app.Editors;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.hand.Held;
import org.panwright.app.hand.HeldOnDragboard;
import org.panwright.app.hand.Holding;
import org.panwright.app.hand.Spot;
import org.panwright.words.ShelfWords;

/**
 * The shelf: search, order, filters and the list of paints. Paints are dragged from it, and wells
 * are emptied onto it.
 */
public final class ShelfView extends VBox {
  private static final PseudoClass RECEIVING = PseudoClass.getPseudoClass("receiving");

  private final ShelfModel model;
  private final ShelfMenu menu;
  private final ContextMenu popup = new ContextMenu();
  private final ShelfList list;
  private final TextField search = new TextField();
  private final Label dropHere = new Label(ShelfWords.DROP_HERE);

  public ShelfView(ShelfModel model, Editors editors) {
    this.model = model;
    menu = new ShelfMenu(model, editors);
    list = new ShelfList(model);
    getStyleClass().addAll("pane", "shelf");
    getStylesheets().add(sheet());
    StackPane filters = new StackPane();
    ToggleButton narrow = new ToggleButton(ShelfWords.NARROW);
    narrow.setTooltip(new Tooltip(ShelfWords.NARROW_MEANS));
    filters.visibleProperty().bind(narrow.selectedProperty());
    filters.managedProperty().bind(narrow.selectedProperty());
    narrow
        .selectedProperty()
        .addListener(
            (o, was, asked) -> {
              if (filters.getChildren().isEmpty()) {
                filters.getChildren().add(new ShelfFilters(model));
              }
            });
    StackPane stack = new StackPane(list, dropHere);
    StackPane.setAlignment(dropHere, Pos.TOP_CENTER);
    VBox.setVgrow(stack, Priority.ALWAYS);
    getChildren().addAll(heading(), searchBar(), orderBar(narrow), filters, stack);
    prepareList(editors);
    prepareDrop();
  }

  private HBox heading() {
    Label title = new Label(ShelfWords.TITLE);
    title.getStyleClass().add("pane-title");
    Label count = new Label();
    count.getStyleClass().addAll("soft", "small");
    count
        .textProperty()
        .bind(
            Bindings.createStringBinding(
                () -> ShelfWords.count(model.rowsProperty().get().size(), model.shelfSize()),
                model.rowsProperty()));
    Hyperlink all = new Hyperlink(ShelfWords.SHOW_ALL);
    all.getStyleClass().add("small");
    all.setOnAction(event -> showAll());
    all.visibleProperty()
        .bind(
            Bindings.createBooleanBinding(
                () -> model.queryProperty().get().isNarrow(), model.queryProperty()));
    HBox heading = new HBox(title, spacer(), count, all);
    all.managedProperty().bind(all.visibleProperty());
    heading.getStyleClass().addAll("pane-head", "shelf-heading");
    return heading;
  }

  private HBox searchBar() {
    search.setPromptText(ShelfWords.SEARCH);
    search.setAccessibleText(ShelfWords.SEARCH_SPOKEN);
    HBox.setHgrow(search, Priority.ALWAYS);
    search.textProperty().addListener((o, before, now) -> look(now));
    model.queryProperty().addListener((o, before, now) -> reflect(now));
    search.addEventFilter(KeyEvent.KEY_PRESSED, this::leaveSearch);
    HBox bar = new HBox(search);
    bar.getStyleClass().add("pane-bar");
    return bar;
  }

  private HBox orderBar(ToggleButton narrow) {
    ComboBox<ShelfOrder> order = new ComboBox<>();
    order.getItems().setAll(ShelfOrder.values());
    order.setConverter(new ByLabel<>(ShelfView::orderName));
    order.setAccessibleText(ShelfWords.ORDER);
    order.setTooltip(new Tooltip(ShelfWords.ORDER));
    order.setValue(model.queryProperty().get().order());
    order
        .valueProperty()
        .addListener(
            (o, before, now) ->
                model.queryProperty().set(model.queryProperty().get().withOrder(now)));
    model.queryProperty().addListener((o, before, now) -> order.setValue(now.order()));
    HBox bar = new HBox(order, spacer(), narrow);
    bar.getStyleClass().add("pane-bar");
    return bar;
  }

  private void prepareList(Editors editors) {
    list.setPlaceholder(nothing(editors));
    list.setOnContextMenuRequested(this::openMenu);
    list.addEventHandler(KeyEvent.KEY_TYPED, this::typeAhead);
  }

  private VBox nothing(Editors editors) {
    Label why = new Label();
    why.getStyleClass().add("soft");
    why.textProperty()
        .bind(
            Bindings.createStringBinding(
                () -> model.shelfSize() == 0 ? ShelfWords.NOTHING_THERE : ShelfWords.NOTHING_FOUND,
                model.rowsProperty()));
    Button add = new Button(ShelfWords.ADD);
    add.setOnAction(event -> editors.addPaint());
    VBox nothing = new VBox(why, add);
    nothing.getStyleClass().add("nothing");
    return nothing;
  }

  private void prepareDrop() {
    dropHere.getStyleClass().add("drop-here");
    dropHere.setMouseTransparent(true);
    dropHere.setVisible(false);
    model
        .hand()
        .holdingProperty()
        .addListener(
            (o, before, now) -> {
              dropHere.setVisible(now.filter(ShelfView::isDraggedFromWell).isPresent());
              boolean over = now.flatMap(Holding::spot).equals(java.util.Optional.of(SHELF));
              pseudoClassStateChanged(RECEIVING, over);
            });
    setOnDragOver(
        event -> {
          if (isFromWell(event)) {
            event.acceptTransferModes(TransferMode.COPY_OR_MOVE);
            model.hand().hover(SHELF);
            event.consume();
          }
        });
    setOnDragExited(event -> model.hand().leave());
    setOnDragDropped(
        event -> {
          model.hand().hover(SHELF);
          event.setDropCompleted(model.hand().putDown());
          event.consume();
        });
  }

  private static final Spot SHELF = new Spot.AtShelf();

  private static boolean isFromWell(DragEvent event) {
    return HeldOnDragboard.read(event.getDragboard())
        .filter(held -> held instanceof Held.FromWell)
        .isPresent();
  }

  private static boolean isDraggedFromWell(Holding holding) {
    return holding.means() == Holding.Means.POINTER && holding.held() instanceof Held.FromWell;
  }

  private void openMenu(ContextMenuEvent event) {
    popup.getItems().setAll(menu.items(list.picked()));
    popup.show(list, event.getScreenX(), event.getScreenY());
    event.consume();
  }

  /** Letters typed on the list go into the search field. */
  private void typeAhead(KeyEvent event) {
    String typed = event.getCharacter();
    boolean isLetter =
        !typed.isBlank() && !Character.isISOControl(typed.charAt(0)) && !event.isShortcutDown();
    if (isLetter && !event.isAltDown()) {
      search.requestFocus();
      search.appendText(typed);
      search.end();
      event.consume();
    }
  }

  private void leaveSearch(KeyEvent event) {
    if (event.getCode() == KeyCode.DOWN || event.getCode() == KeyCode.ENTER) {
      list.enter();
      event.consume();
    } else if (event.getCode() == KeyCode.ESCAPE && !search.getText().isEmpty()) {
      search.clear();
      event.consume();
    }
  }

  private void look(String text) {
    model.queryProperty().set(model.queryProperty().get().withText(text));
  }

  private void reflect(ShelfQuery query) {
    if (!query.text().equals(search.getText())) {
      search.setText(query.text());
    }
  }

  private void showAll() {
    model.queryProperty().set(ShelfQuery.ALL.withOrder(model.queryProperty().get().order()));
  }

  private static Region spacer() {
    Region spacer = new Region();
    HBox.setHgrow(spacer, Priority.ALWAYS);
    return spacer;
  }

  private static String sheet() {
    String path = "/org/panwright/app/theme/bench.css";
    return Objects.requireNonNull(ShelfView.class.getResource(path), path).toExternalForm();
  }

  private static String orderName(ShelfOrder order) {
    return switch (order) {
      case HUE -> ShelfWords.BY_HUE;
      case NAME -> ShelfWords.BY_NAME;
      case STRENGTH -> ShelfWords.BY_STRENGTH;
      case LIGHTNESS -> ShelfWords.BY_LIGHTNESS;
    };
  }
}
