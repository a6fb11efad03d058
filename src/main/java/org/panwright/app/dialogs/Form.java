package org.panwright.app.dialogs;

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
 */
public record Form<R>(
    String title,
    Node content,
    String accept,
    ObservableValue<Boolean> ready,
    Supplier<R> result,
    Node firstField) {}
