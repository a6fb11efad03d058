package org.panwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.store.DemoKit;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** F6 goes round the parts of every view and back to where it began. */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class PartKeysWindowTest {
  private static final int MOST = 12;

  private Stage stage;
  private OpenWindow window;

  @Start
  void open(Stage stage) throws Exception {
    this.stage = stage;
    window =
        new OpenWindow(
            stage,
            Files.createTempDirectory("panwright-keys"),
            DemoKit.read(OpenWindow.LIBRARY),
            Optional.empty());
  }

  /** Reads the pigments before the clock of the first window starts. */
  @BeforeAll
  static void readTheLibrary() {
    assertThat(OpenWindow.LIBRARY.pigments()).isNotEmpty();
  }

  @AfterEach
  void close() {
    window.close();
  }

  /** The least number of stops: the parts named in the view's description, and the bar on top. */
  @ParameterizedTest
  @CsvSource({
    "0, Plan, 6",
    "1, Paint, 2",
    "2, Swatches, 4",
    "3, Subject, 3",
    "4, Compare, 7",
    "5, Choose, 3",
    "6, Fill, 5",
    "7, Outing, 4",
    "8, Papers, 4"
  })
  void thePartsOfAViewFollowEachOther(int place, String name, int least, FxRobot robot)
      throws Exception {
    robot.interact(() -> window.workbench.showPlace(place));
    WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, window.workbench::isSettled);
    WaitForAsyncUtils.waitForFxEvents();
    robot.push(KeyCode.F6);
    List<Node> stops = new ArrayList<>();
    while (!stops.contains(focused()) && stops.size() < MOST) {
      stops.add(focused());
      robot.push(KeyCode.F6);
    }
    assertThat(stops).as(name).hasSizeGreaterThanOrEqualTo(least).first().isEqualTo(focused());
    robot.push(KeyCode.SHIFT, KeyCode.F6);
    assertThat(focused()).as(name).isEqualTo(stops.get(stops.size() - 1));
  }

  private Node focused() {
    WaitForAsyncUtils.waitForFxEvents();
    return stage.getScene().getFocusOwner();
  }
}
