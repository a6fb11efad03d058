package org.panwright.app.fx;

import java.util.function.Supplier;
import javafx.event.EventHandler;
import javafx.scene.Node;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;

/**
 * A tip that is made when the pointer first comes to its node.
 *
 * <p>A tip is a window with a scene of its own; made at once, the tips of a list's rows cost more
 * than the rows.
 */
public final class LateTip implements EventHandler<MouseEvent> {
  private final Node node;
  private final Supplier<String> words;
  private Tooltip tip;

  private LateTip(Node node, Supplier<String> words) {
    this.node = node;
    this.words = words;
  }

  /**
   * Gives a node its tip.
   *
   * @param words what it says now; empty for no tip
   */
  public static void on(Node node, Supplier<String> words) {
    node.addEventHandler(MouseEvent.MOUSE_ENTERED, new LateTip(node, words));
  }

  @Override
  public void handle(MouseEvent entered) {
    if (words.get().isEmpty()) {
      if (tip != null) {
        Tooltip.uninstall(node, tip);
      }
      return;
    }
    if (tip == null) {
      tip = new Tooltip();
      tip.setOnShowing(showing -> tip.setText(words.get()));
    }
    Tooltip.install(node, tip);
  }
}
