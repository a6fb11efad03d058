package org.panwright.app.box;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyEvent;
import org.panwright.app.hand.Held;
import org.panwright.app.hand.Holding;
import org.panwright.app.hand.Spot;
import org.panwright.kit.Box;
import org.panwright.kit.Well;

/**
 * The box by keys: arrows go from well to well, Enter or Space picks up and puts down, Escape lets
 * go, Delete empties, F fills.
 *
 * <p>A paint picked up on the shelf brings the focus here; put down or let go, it returns.
 */
final class BoxKeys {
  private final BoxModel model;
  private final BoxDrawing drawing;
  private Optional<Node> cameFrom = Optional.empty();

  BoxKeys(BoxModel model, BoxDrawing drawing) {
    this.model = model;
    this.drawing = drawing;
    model.hand().holdingProperty().addListener((o, before, now) -> follow(before, now));
    drawing
        .sceneProperty()
        .flatMap(Scene::focusOwnerProperty)
        .addListener((o, before, now) -> letGoIfLeft(now));
  }

  /** Answers a key pressed on a well. */
  void act(WellView well, KeyEvent event) {
    if (event.isShortcutDown() || event.isAltDown()) {
      return;
    }
    switch (event.getCode()) {
      case LEFT -> step(well, WellSteps.Way.LEFT);
      case RIGHT -> step(well, WellSteps.Way.RIGHT);
      case UP -> step(well, WellSteps.Way.UP);
      case DOWN -> step(well, WellSteps.Way.DOWN);
      case HOME -> go(drawing.wells().get(0));
      case END -> go(drawing.wells().get(drawing.wells().size() - 1));
      case ENTER, SPACE -> pickUpOrPutDown(well);
      case ESCAPE -> {
        if (!isHolding()) {
          return;
        }
        model.hand().cancel();
      }
      case DELETE, BACK_SPACE -> empty(well);
      case F -> model.cycleFill(well.wellId());
      default -> {
        return;
      }
    }
    event.consume();
  }

  private void step(WellView from, WellSteps.Way way) {
    Box box = model.pictureProperty().get().orElseThrow().box();
    WellSteps.next(box, from.shown().well(), way)
        .map(Well::id)
        .flatMap(drawing::well)
        .ifPresent(this::go);
  }

  private void go(WellView well) {
    if (isHolding()) {
      focus(well);
      model.hand().hover(new Spot.AtWell(well.wellId()));
    } else {
      model.pick(well.wellId());
      focus(well);
    }
  }

  private void pickUpOrPutDown(WellView well) {
    if (!isHolding()) {
      model.pickUp(well.wellId(), Holding.Means.KEYS);
      return;
    }
    model.hand().hover(new Spot.AtWell(well.wellId()));
    model.hand().putDown();
  }

  private void empty(WellView well) {
    Optional<Held> held = model.hand().holding().map(Holding::held);
    if (held.isPresent() && held.get() instanceof Held.FromWell from) {
      model.empty(from.wellId());
    } else if (held.isEmpty()) {
      model.empty(well.wellId());
    }
  }

  private void follow(Optional<Holding> before, Optional<Holding> now) {
    boolean begins = before.isEmpty() && now.isPresent() && isByKeys(now);
    boolean ends = now.isEmpty() && isByKeys(before);
    if (begins) {
      begin(now.get());
    } else if (ends) {
      cameFrom.filter(node -> isInside(focusOwner())).ifPresent(Node::requestFocus);
      cameFrom = Optional.empty();
    }
  }

  private void begin(Holding holding) {
    Optional<Node> owner = focusOwner();
    Optional<WellView> stop =
        holding.held() instanceof Held.FromWell from
            ? drawing.well(from.wellId())
            : model.firstStop().map(Well::id).flatMap(drawing::well);
    cameFrom = isInside(owner) ? Optional.empty() : owner;
    stop.ifPresent(this::focus);
    if (holding.held() instanceof Held.FromShelf) {
      stop.ifPresent(well -> model.hand().hover(new Spot.AtWell(well.wellId())));
    }
  }

  private void focus(WellView well) {
    drawing.keepOneTabStop(Optional.of(well));
    well.requestFocus();
  }

  private void letGoIfLeft(Node focused) {
    if (isHolding() && focused != null && !isInside(Optional.of(focused))) {
      model.hand().cancel();
    }
  }

  private boolean isHolding() {
    return isByKeys(model.hand().holding());
  }

  private static boolean isByKeys(Optional<Holding> holding) {
    return holding.filter(h -> h.means() == Holding.Means.KEYS).isPresent();
  }

  private Optional<Node> focusOwner() {
    return Optional.ofNullable(drawing.getScene()).map(Scene::getFocusOwner);
  }

  private static boolean isInside(Optional<Node> node) {
    return node.filter(n -> n instanceof WellView).isPresent();
  }
}
