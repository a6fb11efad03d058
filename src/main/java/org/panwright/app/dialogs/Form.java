package org.panwright.app.dialogs;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;

/**
 * Something to be filled in and then accepted or left.
 *
 * @param title what it is, as a heading
 * @param content the fields
 * @param accept what the accepting button does, in the words of the action
 * @param ready whether it can be accepted now
 * @param result what it then yields
 * @param firstField what has the keyboard at first
 * @param further something it can do besides and stay open
 */
public record Form<R>(
    String title,
    Node content,
    String accept,
    ObservableValue<Boolean> ready,
    Supplier<R> result,
    Node firstField,
    Optional<Further> further) {

  /**
   * Something a form does and stays open, as soon as it could be accepted.
   *
   * @param label what it does, on its button
   * @param work does it and makes the form ready for the next
   */
  public record Further(String label, Runnable work) {}

  /** A form that is accepted or left. */
  public Form(
      String title,
      Node content,
      String accept,
      ObservableValue<Boolean> ready,
      Supplier<R> result,
      Node firstField) {
    this(title, content, accept, ready, result, firstField, Optional.empty());
  }
}
