package org.panwright.app.outing;

import javafx.geometry.Pos;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.panwright.app.fx.CommittedField;
import org.panwright.app.fx.LateTip;
import org.panwright.app.fx.Sentence;
import org.panwright.kit.CheckItem;
import org.panwright.words.OutingWords;

/** One entry of the check list: tick, text, amount, note, and what can be done with it. */
final class CheckRow extends HBox {
  private final String id;
  private final CheckListModel model;
  private final CheckBox tick = new CheckBox();
  private final CommittedField text;
  private final CommittedField note;
  private final Label amount = Sentence.of("", "soft");
  private final MenuButton more = new MenuButton("⋯");
  private boolean following;

  CheckRow(String id, CheckListModel model) {
    this.id = id;
    this.model = model;
    text =
        new CommittedField(
            typed -> {
              if (typed.isBlank()) {
                return OutingWords.blank();
              }
              model.rename(id, typed);
              return "";
            });
    note =
        new CommittedField(
            typed -> {
              model.note(id, typed);
              return "";
            });
    getStyleClass().add("check-row");
    setAlignment(Pos.TOP_LEFT);
    tick.selectedProperty()
        .addListener(
            (property, before, now) -> {
              if (!following) {
                model.tick(id, now);
              }
            });
    text.getStyleClass().add("plain-field");
    note.getStyleClass().addAll("plain-field", "check-note");
    note.setPromptText(OutingWords.NOTE_PROMPT);
    amount.managedProperty().bind(amount.textProperty().isNotEmpty());
    VBox words = new VBox(text, amount);
    words.setMinWidth(120);
    words.setPrefWidth(300);
    HBox.setHgrow(words, Priority.ALWAYS);
    note.setPrefWidth(220);
    HBox.setHgrow(note, Priority.SOMETIMES);
    note.setMinWidth(90);
    fillMore();
    getChildren().setAll(tick, words, note, more);
    addEventFilter(KeyEvent.KEY_PRESSED, this::moveByKey);
  }

  String id() {
    return id;
  }

  void show(CheckItem item, String howMuch) {
    following = true;
    tick.setSelected(item.ticked());
    following = false;
    tick.setAccessibleText(item.text());
    text.show(item.text());
    text.setAccessibleText(item.text());
    note.show(item.note());
    note.setAccessibleText(OutingWords.noteOn(item.text()));
    more.setAccessibleText(OutingWords.more(item.text()));
    amount.setText(howMuch);
    text.setOpacity(item.ticked() ? 0.65 : 1);
  }

  private void fillMore() {
    more.getStyleClass().add("quiet");
    LateTip.on(more, () -> OutingWords.MOVE_KEYS);
    more.setAccessibleHelp(OutingWords.MOVE_KEYS);
    more.getItems()
        .setAll(
            item(OutingWords.UP, () -> model.move(id, -1)),
            item(OutingWords.DOWN, () -> model.move(id, 1)),
            item(OutingWords.REMOVE_ITEM, () -> model.remove(id)));
  }

  private void moveByKey(KeyEvent event) {
    if (event.isAltDown() && (event.getCode() == KeyCode.UP || event.getCode() == KeyCode.DOWN)) {
      model.move(id, event.getCode() == KeyCode.UP ? -1 : 1);
      event.consume();
    }
  }

  private static MenuItem item(String words, Runnable work) {
    MenuItem item = new MenuItem(words);
    item.setOnAction(event -> work.run());
    return item;
  }
}
