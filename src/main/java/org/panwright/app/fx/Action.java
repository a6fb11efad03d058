package org.panwright.app.fx;

import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.event.ActionEvent;
import javafx.scene.control.Button;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCombination;

/**
 * Something the painter can have done, from a menu, by a key or by a button alike.
 *
 * @param label its words now, with {@code _} before the letter that picks it in a menu
 * @param plain whether the label is free text in which {@code _} means itself
 * @param keys the keys that do it, if any
 * @param possible whether it can be done now
 * @param chosen whether it is the one in force, of several that exclude each other
 * @param work does it, on the JavaFX thread
 */
public record Action(
    ObservableValue<String> label,
    boolean plain,
    Optional<KeyCombination> keys,
    ObservableValue<Boolean> possible,
    Optional<ObservableValue<Boolean>> chosen,
    Runnable work) {

  /** An action of fixed words that can always be done. */
  public static Action of(String label, Runnable work) {
    return new Action(
        Constant.of(label), false, Optional.empty(), Constant.of(true), Optional.empty(), work);
  }

  /** The action done by these keys as well, written as {@code Shortcut+S}. */
  public Action on(String keyNames) {
    return new Action(
        label, plain, Optional.of(KeyCombination.valueOf(keyNames)), possible, chosen, work);
  }

  /** The action when it can be done only now and then. */
  public Action when(ObservableValue<Boolean> nowPossible) {
    return new Action(label, plain, keys, nowPossible, chosen, work);
  }

  /** The action under changing free words. */
  public Action named(ObservableValue<String> words) {
    return new Action(words, true, keys, possible, chosen, work);
  }

  /** The action as one of several that exclude each other, marked in menus while in force. */
  public Action chosenWhen(ObservableValue<Boolean> inForce) {
    return new Action(label, plain, keys, possible, Optional.of(inForce), work);
  }

  /** A menu item that does it. */
  public MenuItem menuItem() {
    MenuItem item = chosen.map(Action::marked).orElseGet(MenuItem::new);
    item.setMnemonicParsing(!plain);
    item.textProperty().bind(label);
    keys.ifPresent(item::setAccelerator);
    item.disableProperty().bind(impossible());
    item.addEventHandler(ActionEvent.ACTION, event -> work.run());
    return item;
  }

  /** Choosing what is in force already would take the mark away; it is put back. */
  private static MenuItem marked(ObservableValue<Boolean> chosen) {
    RadioMenuItem item = new RadioMenuItem();
    item.setSelected(chosen.getValue());
    chosen.addListener((value, before, now) -> item.setSelected(now));
    item.setOnAction(event -> item.setSelected(chosen.getValue()));
    return item;
  }

  /** A button that does it, with {@code text} on it and the whole label as its tip. */
  public Button button(String text) {
    Button button = new Button(text);
    button.setMnemonicParsing(false);
    button.disableProperty().bind(impossible());
    button.setOnAction(event -> work.run());
    Tooltip tip = new Tooltip();
    tip.textProperty().bind(label.map(this::spoken));
    button.setTooltip(tip);
    button.accessibleTextProperty().bind(label.map(this::spoken));
    return button;
  }

  private String spoken(String words) {
    String bare = plain ? words : words.replace("_", "");
    return keys.map(k -> bare + "  (" + k.getDisplayText() + ")").orElse(bare);
  }

  private javafx.beans.binding.BooleanBinding impossible() {
    return Bindings.createBooleanBinding(() -> !possible.getValue(), possible);
  }
}
