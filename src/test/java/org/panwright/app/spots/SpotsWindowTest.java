package org.panwright.app.spots;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.dialogs.ScriptedDialogs;
import org.panwright.app.swatches.Learning;
import org.panwright.app.swatches.PictureModel;
import org.panwright.app.swatches.SwatchesView;
import org.panwright.app.theme.Theme;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.Shelf;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.sheet.InventedShelf;
import org.panwright.swatch.spot.SpotKind;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Spots placed by mouse and by keys on a picture of one coat on white. */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class SpotsWindowTest {
  private static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();

  @TempDir Path folder;
  private SpotsModel spots;
  private SwatchesView view;

  @Start
  void start(Stage stage) {
    Session session =
        Sessions.on(Kit.empty("invented").withShelf(new Shelf(InventedShelf.paints())));
    PictureModel pictures = new PictureModel(Sessions.AT_ONCE, Sessions.AT_ONCE, Sessions::fail);
    Learning learning =
        new Learning(
            session,
            LIBRARY,
            () -> LocalDate.EPOCH,
            Sessions.AT_ONCE,
            Sessions.AT_ONCE,
            Sessions::fail);
    spots =
        new SpotsModel(
            session, pictures, learning, Sessions.AT_ONCE, Sessions.AT_ONCE, Sessions::fail);
    view =
        new SwatchesView(
            pictures, List.of(new SpotsSide(spots)), new ScriptedDialogs(), Runnable::run);
    Scene scene = new Scene(view, 1240, 760);
    scene.getStylesheets().setAll(Theme.LIGHT.sheets());
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void spotsArePlacedByClickAndByKeyAndRead(FxRobot robot) throws Exception {
    BufferedImage image = new BufferedImage(600, 400, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(new Color(235, 235, 232));
    pen.fillRect(0, 0, 600, 400);
    pen.setColor(new Color(150, 90, 60));
    pen.fillRect(200, 100, 200, 200);
    pen.dispose();
    Path file = folder.resolve("coat.png");
    ImageIO.write(image, "png", file.toFile());
    robot.interact(() -> view.open(file, () -> {}));

    robot.clickOn(".picture-desk");
    assertThat(spots.marks().spotsProperty().get()).hasSize(1);
    robot.type(KeyCode.DELETE);
    assertThat(spots.marks().spotsProperty().get()).isEmpty();

    robot.interact(() -> spots.marks().nextKindProperty().set(SpotKind.FULL));
    robot.type(KeyCode.INSERT);
    assertThat(robot.lookup(".spot-row").queryAll()).hasSize(1);
    assertThat(robot.lookup("not read").tryQuery()).isPresent();
    robot.interact(
        () -> {
          spots.marks().nextKindProperty().set(SpotKind.PAPER);
          spots.marks().pointAt(new Point(60, 60));
        });

    assertThat(robot.lookup(".spot-row").queryAll()).hasSize(2);
    assertThat(robot.lookup("not read").tryQuery()).isEmpty();
    robot.type(KeyCode.PAGE_UP, KeyCode.RIGHT);
    assertThat(spots.marks().pickedProperty().get()).isZero();
    assertThat(spots.marks().spotsProperty().get().get(0).kind()).isEqualTo(SpotKind.FULL);
  }
}
