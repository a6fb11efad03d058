package org.panwright.app.theme;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import javafx.scene.Scene;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What is dressed wears the colours that the sheets name, whichever theme was worn before. */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class LooksWindowTest {
  private Looks looks;
  private StackPane root;
  private Label label;

  @Start
  void open(Stage stage) {
    looks = new Looks(Theme.LIGHT);
    label = new Label("text");
    root = new StackPane(label);
    Scene scene = new Scene(root, 200, 100);
    looks.dress(scene.getStylesheets(), root);
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void aChangeOfThemeChangesEveryColour(FxRobot robot) throws IOException {
    for (Theme theme : new Theme[] {Theme.DARK, Theme.LIGHT, Theme.DARK}) {
      wear(robot, theme);
      assertThat(label.getTextFill()).isEqualTo(RoleColours.of(theme, "text"));
      assertThat(ground(root)).isEqualTo(RoleColours.of(theme, "surface"));
    }
  }

  @Test
  void aMenuWearsTheThemeOfItsWindowEachTimeItOpens(FxRobot robot) throws IOException {
    ContextMenu menu = new ContextMenu(new MenuItem("line"));
    for (Theme theme : new Theme[] {Theme.DARK, Theme.LIGHT}) {
      wear(robot, theme);
      robot.interact(() -> menu.show(label, 300, 300));
      WaitForAsyncUtils.waitForFxEvents();
      Label line = robot.from(menu.getScene().getRoot()).lookup(".label").query();
      assertThat(line.getTextFill()).isEqualTo(RoleColours.of(theme, "text"));
      robot.interact(menu::hide);
    }
  }

  @Test
  void whatIsUndressedKeepsItsColours(FxRobot robot) throws IOException {
    looks.undress(root);
    wear(robot, Theme.DARK);
    assertThat(label.getTextFill()).isEqualTo(RoleColours.of(Theme.LIGHT, "text"));
  }

  private void wear(FxRobot robot, Theme theme) {
    robot.interact(() -> looks.themeProperty().set(theme));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private static Paint ground(Region region) {
    Paint fill = region.getBackground().getFills().get(0).getFill();
    assertThat(fill).isInstanceOf(Color.class);
    return fill;
  }
}
