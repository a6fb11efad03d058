package org.panwright.app.window;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.SplitPane;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/**
 * The view most work is done in: shelf on the left, box above mix grid in the middle, hue ring
 * above findings on the right. The dividers can be moved; on a wider window the middle takes the
 * room, and on a narrower one it keeps enough for the names in the wells.
 */
public final class PlanView extends StackPane {
  /** Where the dividers stand at first: left, right, middle, right-hand column. */
  public static final List<Double> USUAL = List.of(0.24, 0.72, 0.48, 0.5);

  private final List<Region> panes;
  private final SplitPane columns;
  private final SplitPane middle;
  private final SplitPane right;

  /**
   * @param dividers four places of dividers, as {@link #dividers} gave them
   */
  public PlanView(
      Region shelf, Region box, Region grid, Region ring, Region findings, List<Double> dividers) {
    shelf.setMinWidth(230);
    box.setMinSize(480, 170);
    grid.setMinSize(480, 220);
    ring.setMinSize(240, 220);
    findings.setMinSize(240, 150);
    panes = List.of(shelf, box, grid, ring, findings);
    middle = new SplitPane(box, grid);
    right = new SplitPane(ring, findings);
    columns = new SplitPane(shelf, middle, right);
    middle.setOrientation(Orientation.VERTICAL);
    right.setOrientation(Orientation.VERTICAL);
    SplitPane.setResizableWithParent(shelf, false);
    SplitPane.setResizableWithParent(right, false);
    getChildren().add(columns);
    place(dividers.size() == USUAL.size() ? dividers : USUAL);
  }

  /** Where the dividers stand, each as a share of its split. */
  public List<Double> dividers() {
    return List.of(
        columns.getDividerPositions()[0],
        columns.getDividerPositions()[1],
        middle.getDividerPositions()[0],
        right.getDividerPositions()[0]);
  }

  /** Gives the keyboard to the next pane, or with {@code by} −1 to the one before. */
  public void stepPane(int by) {
    Node focused = getScene().getFocusOwner();
    int now = 0;
    for (int i = 0; i < panes.size(); i++) {
      if (focused != null && FirstField.isWithin(focused, panes.get(i))) {
        now = i;
      }
    }
    for (int tried = 1; tried <= panes.size(); tried++) {
      Region pane = panes.get(Math.floorMod(now + by * tried, panes.size()));
      Optional<Node> field = FirstField.of(pane);
      if (field.isPresent()) {
        field.get().requestFocus();
        return;
      }
    }
  }

  /** Gives the keyboard to the findings, or to the mix or colour in their place. */
  public void enterFindings() {
    FirstField.of(panes.get(panes.size() - 1)).ifPresent(Node::requestFocus);
  }

  /**
   * Tells the places of the dividers whenever somebody has moved one.
   *
   * <p>Only the end of a drag counts: layouts of other sizes on the way to the first frame move
   * dividers too, and remembering those would let them creep from start to start.
   */
  public void onMoved(Consumer<List<Double>> moved) {
    addEventFilter(
        MouseEvent.MOUSE_RELEASED,
        released -> {
          if (isDivider(released.getTarget())) {
            moved.accept(dividers());
          }
        });
  }

  private static boolean isDivider(Object target) {
    for (Node node = target instanceof Node hit ? hit : null;
        node != null;
        node = node.getParent()) {
      if (node.getStyleClass().contains("split-pane-divider")) {
        return true;
      }
    }
    return false;
  }

  /** Moves the dividers. */
  public void place(List<Double> dividers) {
    columns.setDividerPositions(dividers.get(0), dividers.get(1));
    middle.setDividerPositions(dividers.get(2));
    right.setDividerPositions(dividers.get(3));
  }
}
