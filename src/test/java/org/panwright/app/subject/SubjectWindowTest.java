package org.panwright.app.subject;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.app.box.BoxMarks;
import org.panwright.app.dialogs.ScriptedDialogs;
import org.panwright.app.recipes.RecipesModel;
import org.panwright.app.recipes.RecipesView;
import org.panwright.app.theme.Theme;
import org.panwright.words.RecipeViewWords;
import org.panwright.words.SubjectWords;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The subject view by keyboard and mouse: type a colour, see its mixes, mark its wells. */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class SubjectWindowTest {
  private Session session;
  private final ScriptedDialogs dialogs = new ScriptedDialogs();

  @Start
  void open(Stage stage) {
    session = Sessions.on(ThreePaintKit.kit());
    PhotoBench bench =
        new PhotoBench(
            session,
            (file, progress, stopped) -> new Photo("bay.png", 20, halves()),
            Sessions.AT_ONCE,
            Sessions.AT_ONCE,
            Sessions.AT_ONCE,
            Sessions::fail);
    SubjectModel model = new SubjectModel(session, bench);
    SubjectRecipes recipes =
        new SubjectRecipes(session, model, Sessions.AT_ONCE, Sessions.AT_ONCE, Sessions::fail);
    RecipesModel ways =
        new RecipesModel(session, Sessions.AT_ONCE, Sessions.AT_ONCE, Sessions::fail);
    RecipesView waysView = new RecipesView(ways, Optional.of(RecipeViewWords.CLOSE));
    waysView.visibleProperty().bind(ways.shownProperty());
    Scene scene =
        new Scene(new SubjectView(model, recipes, waysView, dialogs, Runnable::run), 1200, 700);
    scene.getStylesheets().setAll(Theme.LIGHT.sheets());
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void aTypedColourIsMixedAndItsWellsMarked(FxRobot robot) {
    TextField field = robot.lookup("#subject-colour").queryAs(TextField.class);
    robot.interact(field::requestFocus);
    robot.write("#6f9a50").type(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(session.kit().outings()).hasSize(1);
    robot.clickOn(SubjectWords.WAYS);
    WaitForAsyncUtils.waitForFxEvents();
    robot.clickOn(RecipeViewWords.MARK);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(BoxMarks.of(session)).isNotEmpty();
    assertThat(robot.lookup(RecipeViewWords.UNMARK).tryQueryAs(Labeled.class)).isPresent();
  }

  @Test
  void whatIsNoColourIsSaidBesideTheField(FxRobot robot) {
    TextField field = robot.lookup("#subject-colour").queryAs(TextField.class);
    robot.interact(field::requestFocus);
    robot.write("mud").type(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(robot.lookup(".field-problem").queryAllAs(Labeled.class))
        .filteredOn(label -> label.isVisible())
        .extracting(Labeled::getText)
        .contains(RecipeViewWords.NO_COLOUR);
    assertThat(session.kit().outings()).isEmpty();
  }

  @Test
  void aPlaceOfThePhotoIsGoneToByKeysSaidAndPicked(FxRobot robot) {
    dialogs.choose(Path.of("bay.png"));
    robot.interact(() -> robot.lookup(SubjectWords.OPEN).queryButton().fire());
    Node photo = robot.lookup(".photo-canvas").query();
    robot.interact(photo::requestFocus);
    for (int step = 0; step < 10; step++) {
      robot.type(KeyCode.RIGHT);
    }
    assertThat(photo.getAccessibleText()).startsWith("black");
    assertThat(session.selectionProperty().get()).isEqualTo(Selection.NOTHING);
    robot.type(KeyCode.ENTER);
    assertThat(session.selectionProperty().get())
        .isInstanceOfSatisfying(
            Selection.OfColour.class,
            picked -> {
              assertThat(picked.lab().l()).isCloseTo(0, within(1e-9));
              assertThat(picked.name()).isEqualTo(SubjectWords.pickedIn("bay.png"));
            });
  }

  /** Twenty by twenty pixels, white on the left and black on the right. */
  private static int[] halves() {
    int[] rgb = new int[400];
    for (int i = 0; i < rgb.length; i++) {
      rgb[i] = i % 20 < 10 ? 0xffffffff : 0xff000000;
    }
    return rgb;
  }
}
