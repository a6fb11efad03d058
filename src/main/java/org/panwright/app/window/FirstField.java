package org.panwright.app.window;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;

/**
 * Finds where the keyboard goes in a part of the window; a pane that scrolls is such a place only
 * if nothing in it is.
 */
final class FirstField {
  private FirstField() {}

  /** The first node within {@code part} that takes the keyboard now. */
  static Optional<Node> of(Node part) {
    if (!part.isVisible() || part.isDisabled()) {
      return Optional.empty();
    }
    if (part instanceof ScrollPane scroll && scroll.getContent() != null) {
      Optional<Node> within = of(scroll.getContent());
      return within.isEmpty() ? Optional.of(scroll) : within;
    }
    if (part.isFocusTraversable()) {
      return Optional.of(part);
    }
    return part instanceof Parent parent
        ? parent.getChildrenUnmodifiable().stream().flatMap(child -> of(child).stream()).findFirst()
        : Optional.empty();
  }

  /** Whether a node is {@code part} or lies within it. */
  static boolean isWithin(Node node, Node part) {
    for (Node at = node; at != null; at = at.getParent()) {
      if (at.equals(part)) {
        return true;
      }
    }
    return false;
  }
}
