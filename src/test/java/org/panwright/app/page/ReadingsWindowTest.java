package org.panwright.app.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.panwright.app.theme.Theme;
import org.panwright.swatch.file.ReadingFile;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A file whose heads are in another language, and one of whose rows is broken. */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class ReadingsWindowTest {
  private static final String FILE =
      """
      Probe;Helligkeit;rot-grün;gelb-blau
      paper;94;0;3
      full;34;4;-44
      wash;68;-18;NaN
      """;

  private ReadingsModel model;

  @Start
  void start(Stage stage) throws Exception {
    model = new ReadingsModel(ReadingFile.read(FILE.getBytes(StandardCharsets.UTF_8)));
    Scene scene = new Scene(new ReadingsView(model, "blue.csv"), 820, 560);
    scene.getStylesheets().setAll(Theme.LIGHT.sheets());
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void thePainterSaysWhichColumnHoldsWhatAndSeesEachRow(FxRobot robot) {
    assertThat(said(robot))
        .contains("Say below in which columns")
        .contains("paper · 94 · 0 · 3\nfull · 34 · 4 · -44");
    assertThat(model.chosen()).isEmpty();

    choose(robot, "L*", "Helligkeit (column 2): 94");
    choose(robot, "a*", "rot-grün (column 3): 0");
    choose(robot, "b*", "gelb-blau (column 4): 3");

    assertThat(said(robot))
        .contains("blue.csv is read as L*, a*, b* under D65.")
        .contains("wash, line 4, column gelb-blau: “NaN” is no number.")
        .contains("2 rows. 1 cannot be used and is left out.");
    assertThat(model.chosen())
        .extracting(ChosenRow::role)
        .containsExactly(CoatRole.PAPER, CoatRole.FULL);

    choose(robot, "Name", "not read");
    choose(robot, "Name", "Probe (column 1): paper");
    choose(robot, "full", "wash");
    choose(robot, "b*", "not read");
    choose(robot, "b*", "gelb-blau (column 4): 3");
    assertThat(model.chosen())
        .extracting(ChosenRow::role)
        .containsExactly(CoatRole.PAPER, CoatRole.WASH);
  }

  private static void choose(FxRobot robot, String choice, String value) {
    ChoiceBox<?> box =
        robot
            .lookup(node -> node instanceof ChoiceBox<?> && choice.equals(node.getAccessibleText()))
            .query();
    robot.interact(() -> select(box, value));
  }

  private static <T> void select(ChoiceBox<T> box, String label) {
    box.getItems().stream()
        .filter(item -> box.getConverter().toString(item).contains(label))
        .findFirst()
        .ifPresentOrElse(
            box::setValue,
            () -> {
              throw new AssertionError("no choice " + label + " among " + box.getItems());
            });
  }

  private static String said(FxRobot robot) {
    robot.interact(() -> {});
    Set<Node> labels = robot.lookup(node -> node instanceof Labeled).queryAll();
    return labels.stream()
        .map(label -> String.valueOf(((Labeled) label).getText()))
        .collect(Collectors.joining("\n"));
  }
}
