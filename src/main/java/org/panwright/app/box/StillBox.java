package org.panwright.app.box;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.geometry.Orientation;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import org.panwright.app.chip.ChipInk;

/**
 * A box with its paints to look at and pick from by mouse or by arrow keys and Enter; nothing can
 * be moved in it.
 */
public final class StillBox extends Region {
  private static final double PAN_RADIUS = 1.5;
  private static final double LEAST_HEIGHT = 120;

  private final ChipInk ink = new ChipInk(Orientation.VERTICAL, PAN_RADIUS);
  private final TextWidths widths = new TextWidths(Font.getDefault());
  private final Region tray = new Region();
  private final BoxParts parts = new BoxParts();
  private final List<WellView> wells = new ArrayList<>();
  private final Consumer<String> picked;
  private Optional<BoxPicture> shown = Optional.empty();

  /**
   * @param picked told the paint of a well that was pressed
   */
  public StillBox(Consumer<String> picked) {
    this.picked = picked;
    getStyleClass().add("box-drawing");
    getStylesheets().add(BoxView.sheet());
    tray.getStyleClass().add("tray");
  }

  /** Shows a box, or nothing. Wells that are there already stay, and the keyboard with them. */
  public void show(Optional<BoxPicture> picture) {
    shown = picture;
    List<WellPicture> pictures = picture.map(BoxPicture::wells).orElse(List.of());
    if (pictures.stream().map(p -> p.well().id()).toList().equals(ids())) {
      for (int i = 0; i < pictures.size(); i++) {
        wells.get(i).show(pictures.get(i));
      }
    } else {
      build(pictures);
    }
    picture.ifPresent(box -> parts.show(box.box(), false));
    requestLayout();
  }

  private List<String> ids() {
    return wells.stream().map(WellView::wellId).toList();
  }

  private void build(List<WellPicture> pictures) {
    wells.clear();
    getChildren().clear();
    for (WellPicture picture : pictures) {
      WellView well = new WellView(picture, ink, widths);
      well.setOnMousePressed(event -> pick(well));
      well.setOnKeyPressed(event -> act(well, event));
      wells.add(well);
    }
    if (!wells.isEmpty()) {
      getChildren().addAll(tray, parts);
      getChildren().addAll(wells);
      wells.get(0).setFocusTraversable(true);
    }
  }

  private void pick(WellView well) {
    go(well);
    well.shown().content().ifPresent(c -> picked.accept(c.paint().id()));
  }

  private void act(WellView well, KeyEvent event) {
    switch (event.getCode()) {
      case LEFT -> step(well, WellSteps.Way.LEFT);
      case RIGHT -> step(well, WellSteps.Way.RIGHT);
      case UP -> step(well, WellSteps.Way.UP);
      case DOWN -> step(well, WellSteps.Way.DOWN);
      case ENTER, SPACE -> pick(well);
      default -> {
        return;
      }
    }
    event.consume();
  }

  private void step(WellView from, WellSteps.Way way) {
    shown
        .flatMap(picture -> WellSteps.next(picture.box(), from.shown().well(), way))
        .ifPresent(
            next ->
                wells.stream()
                    .filter(well -> well.wellId().equals(next.id()))
                    .findFirst()
                    .ifPresent(this::go));
  }

  /** One well at a time is a stop of the tab key: the one with the keyboard, or had it last. */
  private void go(WellView to) {
    wells.forEach(well -> well.setFocusTraversable(well.equals(to)));
    to.requestFocus();
  }

  /** Marks the wells that hold one of these paints. */
  public void mark(Set<String> paintIds) {
    for (WellView well : wells) {
      well.mark(
          false, well.shown().content().filter(c -> paintIds.contains(c.paint().id())).isPresent());
    }
  }

  @Override
  protected void layoutChildren() {
    if (shown.isEmpty()) {
      return;
    }
    BoxScale scale = BoxScale.fit(shown.get().box(), getWidth(), getHeight());
    put(tray, scale.tray(shown.get().box()));
    parts.resizeRelocate(0, 0, getWidth(), getHeight());
    parts.place(shown.get().box(), scale);
    for (WellView well : wells) {
      BoxScale.Place place = scale.of(well.shown().well());
      put(well, place);
      well.setPlate(well.plateFor(place.width(), place.height()));
    }
  }

  private void put(Region region, BoxScale.Place place) {
    double left = snapPositionX(place.x());
    double top = snapPositionY(place.y());
    region.resizeRelocate(
        left,
        top,
        snapPositionX(place.x() + place.width()) - left,
        snapPositionY(place.y() + place.height()) - top);
  }

  @Override
  protected double computePrefHeight(double width) {
    return LEAST_HEIGHT;
  }

  @Override
  protected double computeMinHeight(double width) {
    return LEAST_HEIGHT;
  }

  @Override
  protected double computeMinWidth(double height) {
    return LEAST_HEIGHT;
  }
}
