package org.panwright.app.box;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import org.panwright.app.chip.ChipInk;
import org.panwright.app.fx.InPlace;
import org.panwright.app.hand.Holding;
import org.panwright.app.hand.Outcome;
import org.panwright.words.BoxWords;

/** The box to scale: the lid's strip, the hinge, the tray and its wells. */
final class BoxDrawing extends Region {
  private static final double PREFERRED_PX_PER_MM = 3.4;
  private static final double SMALLEST_PX_PER_MM = 1.5;
  private static final double PAN_RADIUS = 1.5;

  /** Length of a knuckle of the hinge; on a small box less. */
  private static final double KNUCKLE_MM = 8;

  private final BoxModel model;
  private final Consumer<WellView> prepare;
  private final ChipInk ink = new ChipInk(Orientation.VERTICAL, PAN_RADIUS);
  private final TextWidths widths = new TextWidths(Font.getDefault());
  private final Label lid = new Label(BoxWords.LID);
  private final Region tray = new Region();
  private final BoxParts parts = new BoxParts();
  private final Region leftKnuckle = new Region();
  private final Region rightKnuckle = new Region();
  private final Label hint = new Label();
  private final List<WellView> wells = new ArrayList<>();
  private Optional<BoxPicture> shown = Optional.empty();

  /**
   * @param prepare gives each new well its mouse and key handlers
   */
  BoxDrawing(BoxModel model, Consumer<WellView> prepare) {
    this.model = model;
    this.prepare = prepare;
    getStyleClass().add("box-drawing");
    lid.getStyleClass().addAll("lid", "soft", "small");
    tray.getStyleClass().add("tray");
    leftKnuckle.getStyleClass().add("knuckle");
    rightKnuckle.getStyleClass().add("knuckle");
    hint.getStyleClass().add("well-hint");
    hint.setMouseTransparent(true);
    hint.setVisible(false);
    model.pictureProperty().addListener((o, before, now) -> show(now));
    model.pickedProperty().addListener((o, before, now) -> markPicked());
    model.relatedProperty().addListener((o, before, now) -> markPicked());
    model.hand().holdingProperty().addListener((o, before, now) -> carry(now));
    show(model.pictureProperty().get());
  }

  /** The wells in the box's order. */
  List<WellView> wells() {
    return List.copyOf(wells);
  }

  /** The view of a well. */
  Optional<WellView> well(String wellId) {
    return wells.stream().filter(w -> w.wellId().equals(wellId)).findFirst();
  }

  private void show(Optional<BoxPicture> picture) {
    boolean isSameBox =
        picture.map(BoxPicture::box).equals(shown.map(BoxPicture::box)) && picture.isPresent();
    shown = picture;
    List<WellPicture> contents = picture.map(BoxPicture::wells).orElse(List.of());
    for (int i = 0; i < Math.min(contents.size(), wells.size()); i++) {
      wells.get(i).show(contents.get(i));
    }
    if (!isSameBox) {
      rebuild(contents);
    }
    markPicked();
    requestLayout();
  }

  /** Wells there are already serve for another box too. */
  private void rebuild(List<WellPicture> contents) {
    while (wells.size() > contents.size()) {
      wells.remove(wells.size() - 1);
    }
    while (wells.size() < contents.size()) {
      WellView view = new WellView(contents.get(wells.size()), ink, widths);
      prepare.accept(view);
      wells.add(view);
    }
    List<Node> children = new ArrayList<>();
    shown.ifPresent(
        picture -> {
          parts.show(picture.box(), true);
          children.addAll(List.of(lid, tray, parts, leftKnuckle, rightKnuckle));
          children.addAll(wells);
          children.add(hint);
        });
    InPlace.arrange(getChildren(), children);
    carry(model.hand().holdingProperty().get());
  }

  private void markPicked() {
    Optional<String> picked = model.pickedProperty().get();
    for (WellView well : wells) {
      boolean isPicked = picked.equals(Optional.of(well.wellId()));
      well.mark(isPicked, model.relatedProperty().get().contains(well.wellId()));
    }
    keepOneTabStop(picked.flatMap(this::well));
  }

  /** The box is one stop of the Tab key; within it the arrows lead. */
  void keepOneTabStop(Optional<WellView> wanted) {
    Optional<WellView> stop = wanted.or(() -> wells.stream().findFirst());
    wells.forEach(well -> well.setFocusTraversable(stop.equals(Optional.of(well))));
  }

  private void carry(Optional<Holding> holding) {
    Optional<Outcome> outcome = holding.flatMap(Holding::outcome);
    hint.setVisible(false);
    for (WellView well : wells) {
      boolean isOver = holding.filter(h -> h.isOver(well.wellId())).isPresent();
      boolean isLifted = holding.filter(h -> h.isFrom(well.wellId())).isPresent();
      well.carry(holding.isPresent(), isLifted, outcome.filter(o -> isOver).map(Outcome::promise));
      if (isOver && outcome.isPresent()) {
        hint.setText(outcome.get().hint());
        hint.setVisible(true);
        placeHint(well);
      }
    }
  }

  private void placeHint(WellView well) {
    hint.applyCss();
    double width = Math.min(getWidth(), snapSizeX(hint.prefWidth(-1)));
    double height = snapSizeY(hint.prefHeight(-1));
    double x = well.getLayoutX() + (well.getWidth() - width) / 2;
    double above = well.getLayoutY() - height - 3;
    double y = above >= 0 ? above : well.getLayoutY() + well.getHeight() + 3;
    hint.resizeRelocate(
        snapPositionX(Math.max(0, Math.min(x, getWidth() - width))),
        snapPositionY(y),
        width,
        height);
  }

  @Override
  protected void layoutChildren() {
    shown.ifPresent(this::layOut);
    wells.stream()
        .filter(w -> hint.isVisible())
        .filter(w -> model.hand().holding().filter(h -> h.isOver(w.wellId())).isPresent())
        .forEach(this::placeHint);
  }

  private void layOut(BoxPicture picture) {
    BoxScale scale = BoxScale.fit(picture.box(), getWidth(), getHeight());
    BoxScale.Place trayPlace = scale.tray(picture.box());
    BoxScale.Place lidPlace = scale.lid(picture.box());
    put(tray, trayPlace);
    put(lid, lidPlace);
    boolean isLidRoomy = lidPlace.height() >= lid.getFont().getSize() * NameFit.LINE;
    lid.setText(isLidRoomy && !parts.hasLidParts() ? BoxWords.LID : "");
    parts.resizeRelocate(0, 0, getWidth(), getHeight());
    parts.place(picture.box(), scale);
    double wide = Math.min(KNUCKLE_MM * scale.pxPerMm(), trayPlace.width() / 4);
    double high = BoxScale.RIM_MM * scale.pxPerMm() / 2;
    double y = trayPlace.y() - high;
    put(leftKnuckle, new BoxScale.Place(trayPlace.x() + wide / 2, y, wide, high));
    put(
        rightKnuckle,
        new BoxScale.Place(trayPlace.x() + trayPlace.width() - 1.5 * wide, y, wide, high));
    for (WellView well : wells) {
      put(well, scale.of(well.shown().well()));
    }
    sharePlates(scale);
  }

  /**
   * Wells of one size get plates of one height, so that their pans line up; and none if most of
   * them are too small for anything telling, since a bare plate only takes the colour's room.
   */
  private void sharePlates(BoxScale scale) {
    Map<List<Long>, List<Double>> plates = new HashMap<>();
    for (WellView well : wells) {
      BoxScale.Place place = scale.of(well.shown().well());
      double plate = well.plateFor(place.width(), place.height());
      if (well.shown().content().isPresent()) {
        plates.computeIfAbsent(size(well), size -> new ArrayList<>()).add(plate);
      }
    }
    for (WellView well : wells) {
      List<Double> alike = plates.getOrDefault(size(well), List.of());
      long bare = alike.stream().filter(plate -> plate == 0).count();
      double highest = alike.stream().mapToDouble(Double::doubleValue).max().orElse(0);
      well.setPlate(2 * bare > alike.size() ? 0 : highest);
    }
  }

  private static List<Long> size(WellView well) {
    return List.of(
        Math.round(well.shown().well().widthMm() * 10),
        Math.round(well.shown().well().heightMm() * 10));
  }

  /** Edges are snapped one by one, so that wells stay crisp and gaps stay even. */
  private void put(Region region, BoxScale.Place place) {
    double left = snapPositionX(place.x());
    double top = snapPositionY(place.y());
    double right = snapPositionX(place.x() + place.width());
    double bottom = snapPositionY(place.y() + place.height());
    region.resizeRelocate(left, top, right - left, bottom - top);
  }

  @Override
  protected double computePrefWidth(double height) {
    return width(PREFERRED_PX_PER_MM);
  }

  @Override
  protected double computePrefHeight(double width) {
    return height(PREFERRED_PX_PER_MM);
  }

  @Override
  protected double computeMinWidth(double height) {
    return width(SMALLEST_PX_PER_MM);
  }

  @Override
  protected double computeMinHeight(double width) {
    return height(SMALLEST_PX_PER_MM);
  }

  private double width(double pxPerMm) {
    return shown.map(p -> BoxScale.outerWidthMm(p.box()) * pxPerMm).orElse(0.0);
  }

  private double height(double pxPerMm) {
    return shown.map(p -> BoxScale.outerHeightMm(p.box()) * pxPerMm).orElse(0.0);
  }
}
