package org.panwright.app.outing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.app.fx.InPlace;
import org.panwright.kit.CheckItem;
import org.panwright.words.OutingWords;
import org.panwright.words.PackingWords;

/** The check list of the outing looked at. Rows stay while their entry does, so focus stays too. */
final class CheckListPane extends VBox {
  private final OutingModel outings;
  private final Executor later;
  private final CheckListModel model;
  private final VBox rows = new VBox();
  private final HBox adding;
  private final Map<String, CheckRow> byId = new LinkedHashMap<>();
  private final Label packed = new Label();
  private final Button usual = new Button(OutingWords.USUAL_LIST);
  private Optional<String> shownOuting = Optional.empty();

  /**
   * @param later when rows are built
   */
  CheckListPane(OutingModel outings, Executor later) {
    this.outings = outings;
    this.later = later;
    model = new CheckListModel(outings);
    adding = adding(model);
    getStyleClass().addAll("part", "check-list");
    Label title = new Label(PackingWords.CHECK_LIST);
    title.getStyleClass().add("pane-title");
    packed.getStyleClass().add("soft");
    Region room = new Region();
    HBox.setHgrow(room, Priority.ALWAYS);
    usual.getStyleClass().add("quiet");
    usual.setOnAction(event -> model.usual());
    HBox head = new HBox(10, title, packed, room, usual);
    head.setAlignment(Pos.BASELINE_LEFT);
    getChildren().setAll(head, rows, adding);
    outings.chosenProperty().addListener(changed -> show());
    outings.packedProperty().addListener(changed -> show());
    show();
  }

  private static HBox adding(CheckListModel model) {
    TextField text = new TextField();
    text.setPromptText(OutingWords.ADD_PROMPT);
    text.setAccessibleText(OutingWords.ADD_PROMPT);
    HBox.setHgrow(text, Priority.ALWAYS);
    Button add = new Button(OutingWords.ADD_ITEM);
    Runnable put =
        () -> {
          model.add(text.getText());
          text.clear();
        };
    add.setOnAction(event -> put.run());
    text.setOnAction(event -> put.run());
    add.disableProperty().bind(text.textProperty().map(String::isBlank));
    HBox adding = new HBox(8, text, add);
    adding.getStyleClass().add("check-add");
    return adding;
  }

  private void show() {
    Optional<String> outing = outings.chosenProperty().get().map(o -> o.id());
    if (!outing.equals(shownOuting)) {
      byId.clear();
      shownOuting = outing;
    }
    List<CheckItem> items = model.items();
    byId.keySet().retainAll(items.stream().map(CheckItem::id).toList());
    for (CheckItem item : items) {
      if (byId.containsKey(item.id())) {
        byId.get(item.id()).show(item, amount(item));
      } else {
        later.execute(() -> build(item.id()));
      }
    }
    arrange(items);
    packed.setText(items.isEmpty() ? "" : OutingWords.packed(items));
    usual.setDisable(model.isUsual());
  }

  /** Builds the row of an entry, if it is still in the list and has none. */
  private void build(String id) {
    List<CheckItem> items = model.items();
    items.stream()
        .filter(item -> item.id().equals(id) && !byId.containsKey(id))
        .findFirst()
        .ifPresent(
            item -> {
              CheckRow row = new CheckRow(id, model);
              row.show(item, amount(item));
              byId.put(id, row);
              arrange(items);
            });
  }

  /** The rows there are, in the order of their entries; what lies below waits for the last one. */
  private void arrange(List<CheckItem> items) {
    List<CheckRow> wanted =
        items.stream().map(CheckItem::id).filter(byId::containsKey).map(byId::get).toList();
    if (!rows.getChildren().equals(wanted)) {
      Node focused = getScene() == null ? null : getScene().getFocusOwner();
      InPlace.arrange(rows.getChildren(), wanted);
      if (focused != null && focused.getScene() != null) {
        focused.requestFocus();
      }
    }
    adding.setVisible(wanted.size() == items.size());
  }

  private String amount(CheckItem item) {
    return outings
        .packedProperty()
        .get()
        .map(done -> PackingWords.amount(item, done.needs(), done.kit()))
        .orElse("");
  }
}
