package org.panwright.app.fx;

import java.util.function.Function;
import javafx.util.StringConverter;

/** Shows the values of a choice by a label; they are chosen, never typed. */
public final class ByLabel<T> extends StringConverter<T> {
  private final Function<T, String> label;

  /**
   * @param label the words for a value
   */
  public ByLabel(Function<T, String> label) {
    this.label = label;
  }

  @Override
  public String toString(T value) {
    return value == null ? "" : label.apply(value);
  }

  @Override
  public T fromString(String text) {
    throw new UnsupportedOperationException("chosen, not typed: " + text);
  }
}
