package org.panwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.panwright.app.box.BoxModel;
import org.panwright.app.box.BoxView;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.hand.Hand;
import org.panwright.app.theme.Theme;
import org.panwright.kit.Edit;
import org.panwright.kit.Fixture;
import org.panwright.kit.FixtureKind;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Mixing areas, strips, magnets and clips in the drawing of a box. */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class BoxPartsWindowTest {
  private Session session;
  private Region figure;

  @Start
  void start(Stage stage) {
    session = BenchKit.session(BenchKit.kit());
    session.perform(
        new Edit.ChangeBox(
            BenchKit.box()
                .withFixtures(
                    List.of(
                        new Fixture("dish", FixtureKind.MIXING_AREA, false, 64, 14, 15, 20, 0),
                        new Fixture("magnet", FixtureKind.MAGNET, false, 1, 1, 62, 36, 0.5),
                        new Fixture("lid", FixtureKind.MIXING_AREA, true, 4, 4, 70, 28, 0)))));
    figure =
        BoxView.figure(new BoxModel(session, new ToneBook(BenchKit.LIBRARY), new Hand(session)));
    Scene scene = new Scene(figure, 900, 500);
    scene.getStylesheets().setAll(Theme.LIGHT.sheets());
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void partsLieToScaleBehindTheWells(FxRobot robot) {
    List<Label> parts = robot.lookup(".box-part").<Label>queryAllAs(Label.class).stream().toList();
    assertThat(parts).hasSize(3);
    Bounds dish = parts.get(0).getLayoutBounds();
    Bounds well = robot.lookup(".well").queryAll().iterator().next().getLayoutBounds();
    assertThat(dish.getWidth() / well.getWidth()).isCloseTo(15.0 / 19, within(0.02));
    List<Node> drawn = figure.getChildrenUnmodifiable();
    Node layer = parts.get(0).getParent();
    for (Node pan : robot.lookup(".well").queryAll()) {
      assertThat(drawn.indexOf(pan)).isGreaterThan(drawn.indexOf(layer));
    }
  }

  @Test
  void freePartsBearTheirNamesAndCoveredOnesDoNot(FxRobot robot) {
    assertThat(robot.lookup(".box-part").<Label>queryAllAs(Label.class))
        .extracting(Label::getText)
        .containsExactlyInAnyOrder("mixing area", "", "mixing area in the lid");
  }
}
