package org.panwright.app.box;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Pane;
import javafx.scene.text.Font;
import org.panwright.kit.Box;
import org.panwright.kit.Fixture;
import org.panwright.kit.FixtureKind;
import org.panwright.words.BoxWords;

/**
 * The mixing areas, strips, magnets and clips of a box, to scale behind its wells; those of the lid
 * lie in its strip, foreshortened. One that is free of wells and wide enough bears its name, all
 * tell name and size under the pointer.
 */
final class BoxParts extends Pane {
  private static final double AIR_PX = 8;
  private static final double BORDERS_PX = 2;

  private record Plate(Fixture fixture, String name, Label label) {}

  private final TextWidths widths = new TextWidths(Font.getDefault());
  private final List<Plate> plates = new ArrayList<>();

  BoxParts() {
    setPickOnBounds(false);
  }

  /**
   * Lays out the parts of a box anew.
   *
   * @param withLid whether the lid is drawn
   */
  void show(Box box, boolean withLid) {
    plates.clear();
    getChildren().clear();
    for (Fixture fixture : box.fixtures()) {
      if (withLid || !fixture.inLid()) {
        boolean isFree = box.wells().stream().noneMatch(fixture::isUnder);
        Label label = label(fixture);
        plates.add(new Plate(fixture, isFree ? BoxWords.part(fixture) : "", label));
        getChildren().add(label);
      }
    }
  }

  private static Label label(Fixture fixture) {
    Label label = new Label();
    label.setAlignment(Pos.CENTER);
    label.getStyleClass().addAll("box-part", style(fixture.kind()), "soft", "small");
    Tooltip.install(label, new Tooltip(BoxWords.partAndSize(fixture)));
    return label;
  }

  private static String style(FixtureKind kind) {
    return switch (kind) {
      case MIXING_AREA -> "mixing-area";
      case DAB_STRIP -> "dab-strip";
      case MAGNET, CLIP -> "holder";
    };
  }

  /** Puts the parts where they are at a scale. */
  void place(Box box, BoxScale scale) {
    for (Plate plate : plates) {
      BoxScale.Place place = scale.of(box, plate.fixture());
      Label label = plate.label();
      double needed = widths.of(plate.name()) * label.getFont().getSize() + AIR_PX;
      boolean isRoomy =
          needed <= place.width()
              && place.height() >= NameFit.LINE * label.getFont().getSize() + BORDERS_PX;
      label.setText(isRoomy ? plate.name() : "");
      double left = snapPositionX(place.x());
      double top = snapPositionY(place.y());
      label.resizeRelocate(
          left,
          top,
          snapPositionX(place.x() + place.width()) - left,
          snapPositionY(place.y() + place.height()) - top);
    }
  }

  /** Whether a part of the lid is drawn, which then stands for the lid's name. */
  boolean hasLidParts() {
    return plates.stream().anyMatch(plate -> plate.fixture().inLid());
  }

  @Override
  protected void layoutChildren() {
    // The drawing of the box places the parts, since it alone knows the scale.
  }
}
