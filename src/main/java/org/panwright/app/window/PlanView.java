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
import org.panwright.app.fx.Parted;

/**
 * The view most work is done in: shelf on the left, box above mix grid in the middle, hue ring
 * above findings on the right. The dividers can be moved; on a wider window the middle takes the
 * room, and on a narrower one it keeps enough for the names in the wells while both sides give way.
 */
public final class PlanView extends StackPane implements Parted {
  /** Where the dividers stand at first: left, right, middle, right-hand column. */
  public static final List<Double> USUAL = List.of(0.24, 0.72, 0.48, 0.5);

  private final List<Node> panes;
  private final SplitPane columns;
  private final SplitPane middle;
  private final SplitPane right;
  private List<Double> places;
  private Optional<SideWidths> wanted = Optional.empty();
  private double laidOutWidth;

  /**
   * @param dividers four places of dividers, as {@link #dividers} gave them
   */
  public PlanView(
      Region shelf, Region box, Region grid, Region ring, Region findings, List<Double> dividers) {
    shelf.setMinWidth(SideWidths.LEAST.shelf());
    box.setMinSize(SideWidths.MIDDLE, 170);
    grid.setMinSize(SideWidths.MIDDLE, 220);
    ring.setMinSize(SideWidths.LEAST.right(), 220);
    findings.setMinSize(SideWidths.LEAST.right(), 150);
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
        wanted.map(w -> w.leftPlace(laidOutWidth)).orElse(places.get(0)),
        wanted.map(w -> w.rightPlace(laidOutWidth)).orElse(places.get(1)),
        middle.getDividerPositions()[0],
        right.getDividerPositions()[0]);
  }

  @Override
  public List<Node> parts() {
    return panes;
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
            wanted = wanted.map(w -> w.moved(w.within(laidOutWidth), found()));
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
    places = List.copyOf(dividers);
    wanted = Optional.empty();
    laidOutWidth = 0;
    requestLayout();
    middle.setDividerPositions(dividers.get(2));
    right.setDividerPositions(dividers.get(3));
  }

  /**
   * Gives the columns their widths anew when the window has another width: left to itself a split
   * does not give back what a narrower window took.
   */
  @Override
  protected void layoutChildren() {
    super.layoutChildren();
    double width = columns.getWidth();
    if (width > 0 && width != laidOutWidth) {
      laidOutWidth = width;
      SideWidths kept = wanted.orElseGet(() -> SideWidths.of(places.get(0), places.get(1), width));
      wanted = Optional.of(kept);
      SideWidths given = kept.within(width);
      columns.layout();
      columns.setDividerPositions(given.shelf() / width, 1 - given.right() / width);
    }
  }

  private SideWidths found() {
    double[] now = columns.getDividerPositions();
    return new SideWidths(now[0] * laidOutWidth, (1 - now[1]) * laidOutWidth);
  }
}
