package org.panwright.app.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import org.panwright.app.fx.Parted;

/** Takes the keyboard round the parts of the window, of which some may take none. */
final class PartSteps {
  /** Left free round a field scrolled to, px. */
  private static final double MARGIN = 12;

  private PartSteps() {}

  /** The parts of a view: those it names, a part that has parts itself in their place. */
  static List<Node> of(Node view) {
    List<Node> parts = new ArrayList<>();
    if (view instanceof Parted parted) {
      parted.parts().forEach(part -> parts.addAll(of(part)));
    } else {
      parts.add(view);
    }
    return parts;
  }

  /**
   * The field the keyboard goes to.
   *
   * @param focused where the keyboard is, outside all parts taken for before the first
   * @param by 1 for the next part, −1 for the one before
   * @return empty if no other part takes the keyboard
   */
  static Optional<Node> step(List<Node> parts, Optional<Node> focused, int by) {
    int now = by > 0 ? -1 : 0;
    for (int i = 0; i < parts.size(); i++) {
      Node part = parts.get(i);
      if (focused.isPresent() && FirstField.isWithin(focused.get(), part)) {
        now = i;
      }
    }
    for (int tried = 1; tried <= parts.size(); tried++) {
      int at = Math.floorMod(now + by * tried, parts.size());
      Optional<Node> field = at == now ? Optional.empty() : FirstField.of(parts.get(at));
      if (field.isPresent()) {
        return field;
      }
    }
    return Optional.empty();
  }

  /** Gives the keyboard to a field and scrolls it into sight. */
  static void enter(Node field) {
    field.requestFocus();
    for (Node at = field.getParent(); at != null; at = at.getParent()) {
      if (at instanceof ScrollPane scroll) {
        reveal(field, scroll);
      }
    }
  }

  private static void reveal(Node field, ScrollPane scroll) {
    Bounds whole = scroll.getContent().getLayoutBounds();
    Bounds place = scroll.getContent().sceneToLocal(field.localToScene(field.getLayoutBounds()));
    double seen = scroll.getViewportBounds().getHeight();
    double room = whole.getHeight() - seen;
    if (room <= 0) {
      return;
    }
    double top = scroll.getVvalue() * room;
    double wanted =
        Math.min(place.getMinY() - MARGIN, Math.max(top, place.getMaxY() + MARGIN - seen));
    scroll.setVvalue(Math.max(0, Math.min(wanted, room)) / room);
  }
}
