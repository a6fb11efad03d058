package org.panwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.panwright.app.box.BoxModel;
import org.panwright.app.box.BoxView;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.hand.Hand;
import org.panwright.app.shelf.ShelfModel;
import org.panwright.app.shelf.ShelfView;
import org.panwright.app.theme.Theme;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Shelf and box together under a real mouse and real keys. */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class BenchWindowTest {
  private Session session;
  private Scene scene;

  @Start
  void start(Stage stage) {
    session = BenchKit.session(BenchKit.kit());
    Hand hand = new Hand(session);
    ToneBook book = new ToneBook(BenchKit.LIBRARY);
    Editors editors = new BenchPreview.NoEditors();
    BorderPane bench = new BorderPane();
    bench.setLeft(
        new ShelfView(new ShelfModel(session, book, hand, Runnable::run, Runnable::run), editors));
    bench.setCenter(new BoxView(new BoxModel(session, book, hand), editors));
    scene = new Scene(bench, 1000, 600);
    scene.getStylesheets().setAll(Theme.LIGHT.sheets());
    stage.setScene(scene);
    stage.show();
    stage.requestFocus();
  }

  private static <T> T onFx(Callable<T> question) {
    WaitForAsyncUtils.waitForFxEvents();
    return WaitForAsyncUtils.waitForAsyncFx(5000, question);
  }

  private Optional<Filling> in(String wellId) {
    return onFx(() -> session.lineup().flatMap(l -> l.in(wellId)));
  }

  private Optional<String> paintIn(String wellId) {
    return in(wellId).map(Filling::paintId);
  }

  private Optional<Integer> previewedPaints() {
    return onFx(() -> session.previewProperty().get().map(j -> j.grid().size()));
  }

  private static Node row(FxRobot robot, String name) {
    return robot
        .lookup(".paint-name")
        .match(node -> node instanceof Label label && label.getText().equals(name))
        .query();
  }

  private static Node well(FxRobot robot, String label) {
    String start = "Well " + label + ":";
    return robot
        .lookup(".well")
        .match(n -> n.getAccessibleText() != null && n.getAccessibleText().startsWith(start))
        .query();
  }

  private String status(FxRobot robot) {
    return onFx(() -> robot.lookup(".hand-status").queryAs(Label.class).getText());
  }

  private Node focused() {
    return onFx(scene::getFocusOwner);
  }

  @Test
  void dragFromShelfShowsTheChangeBeforeItFillsTheWell(FxRobot robot) {
    robot.drag(row(robot, "Burnt Sienna"), MouseButton.PRIMARY).moveTo(well(robot, "4"));
    assertThat(previewedPaints()).contains(4);
    assertThat(paintIn("w4")).isEmpty();
    assertThat(status(robot)).contains("Burnt Sienna").contains("well 4");
    Node hint = robot.lookup(".well-hint").query();
    assertThat(onFx(hint::isVisible)).isTrue();
    robot.drop();
    assertThat(paintIn("w4")).contains("sienna");
    assertThat(previewedPaints()).isEmpty();
    assertThat(onFx(hint::isVisible)).isFalse();
  }

  @Test
  void previewVanishesWhenTheDragLeavesTheWell(FxRobot robot) {
    robot.drag(row(robot, "Burnt Sienna"), MouseButton.PRIMARY).moveTo(well(robot, "4"));
    assertThat(previewedPaints()).contains(4);
    robot.moveTo(robot.lookup(".box .pane-title").queryAs(Node.class));
    assertThat(previewedPaints()).isEmpty();
    robot.drop();
    assertThat(paintIn("w4")).isEmpty();
    assertThat(onFx(() -> session.historyProperty().get().past())).isEmpty();
    assertThat(status(robot)).contains("nothing has changed");
  }

  @Test
  void dragOntoAFilledWellReplaces(FxRobot robot) {
    robot.drag(row(robot, "Burnt Sienna"), MouseButton.PRIMARY).moveTo(well(robot, "2"));
    assertThat(status(robot)).contains("Burnt Sienna").contains("Ultramarine");
    robot.drop();
    assertThat(paintIn("w2")).contains("sienna");
  }

  @Test
  void dragFromWellToWellSwaps(FxRobot robot) {
    robot.drag(well(robot, "1"), MouseButton.PRIMARY).moveTo(well(robot, "2"));
    assertThat(status(robot)).contains("Lemon Yellow").contains("Ultramarine");
    robot.drop();
    assertThat(paintIn("w1")).contains("ultra");
    assertThat(paintIn("w2")).contains("lemon");
  }

  @Test
  void dragFromWellToShelfEmptiesTheWell(FxRobot robot) {
    robot.drag(well(robot, "3"), MouseButton.PRIMARY).moveTo(row(robot, "Viridian"));
    assertThat(previewedPaints()).contains(2);
    assertThat(onFx(() -> robot.lookup(".drop-here").queryAs(Node.class).isVisible())).isTrue();
    robot.drop();
    assertThat(paintIn("w3")).isEmpty();
  }

  @Test
  void doubleClickFillsTheNextEmptyWell(FxRobot robot) {
    robot.doubleClickOn(row(robot, "Burnt Sienna"));
    assertThat(paintIn("w4")).contains("sienna");
  }

  @Test
  void paintGoesFromShelfToWellByKeysAlone(FxRobot robot) {
    robot.clickOn(row(robot, "Lemon Yellow"));
    Node list = focused();
    assertThat(list).isInstanceOf(ListView.class);
    robot.write("burnt");
    assertThat(focused()).isInstanceOf(TextField.class);
    robot.type(KeyCode.DOWN);
    assertThat(focused()).isSameAs(list);
    robot.type(KeyCode.ENTER);
    assertThat(previewedPaints()).contains(4);
    robot.type(KeyCode.RIGHT);
    assertThat(focused().getAccessibleText()).startsWith("Well 5").contains("Burnt Sienna");
    assertThat(status(robot)).contains("well 5");
    robot.type(KeyCode.ENTER);
    assertThat(paintIn("w5")).contains("sienna");
    assertThat(paintIn("w4")).isEmpty();
    assertThat(previewedPaints()).isEmpty();
    assertThat(focused()).isSameAs(list);
  }

  @Test
  void escapeLetsGoAndReturnsToTheShelf(FxRobot robot) {
    robot.clickOn(row(robot, "Burnt Sienna"));
    Node list = focused();
    robot.type(KeyCode.SPACE);
    assertThat(previewedPaints()).contains(4);
    robot.type(KeyCode.ESCAPE);
    assertThat(previewedPaints()).isEmpty();
    assertThat(focused()).isSameAs(list);
    assertThat(onFx(() -> session.historyProperty().get().past())).isEmpty();
  }

  @Test
  void wellsSwapByKeys(FxRobot robot) {
    robot.clickOn(well(robot, "1"));
    robot.type(KeyCode.ENTER, KeyCode.RIGHT);
    assertThat(status(robot)).contains("Swaps");
    robot.type(KeyCode.ENTER);
    assertThat(paintIn("w1")).contains("ultra");
    assertThat(paintIn("w2")).contains("lemon");
    assertThat(focused().getAccessibleText()).startsWith("Well 2");
  }

  @Test
  void keysFillAndEmptyAWell(FxRobot robot) {
    robot.clickOn(well(robot, "1"));
    robot.type(KeyCode.F);
    assertThat(in("w1").orElseThrow().fill()).isEqualTo(Fill.HALF);
    robot.type(KeyCode.DELETE);
    assertThat(paintIn("w1")).isEmpty();
    assertThat(focused().getAccessibleText()).startsWith("Well 1: empty");
  }

  @Test
  void carryingByKeysEndsWhenTheFocusGoesElsewhere(FxRobot robot) {
    robot.clickOn(well(robot, "1"));
    robot.type(KeyCode.ENTER, KeyCode.RIGHT);
    assertThat(previewedPaints()).isPresent();
    robot.clickOn(".shelf .text-field");
    assertThat(previewedPaints()).isEmpty();
    assertThat(focused()).isInstanceOf(TextField.class);
    assertThat(paintIn("w1")).contains("lemon");
  }

  @Test
  void boxIsOneStopOfTheTabKey(FxRobot robot) {
    robot.clickOn(well(robot, "2"));
    assertThat(
            onFx(
                () ->
                    robot.lookup(".well").queryAll().stream()
                        .filter(Node::isFocusTraversable)
                        .map(Node::getAccessibleText)
                        .toList()))
        .singleElement()
        .asString()
        .startsWith("Well 2");
  }

  @Test
  void contextMenuDoesWhatTheDragDoes(FxRobot robot) {
    Node well = well(robot, "2");
    robot.interact(() -> well.fireEvent(menuKey(well)));
    robot.clickOn("Take out");
    assertThat(paintIn("w2")).isEmpty();
  }

  /** Sent straight to the node: the headless platform makes no such event of its own. */
  private static ContextMenuEvent menuKey(Node node) {
    Bounds bounds = node.localToScreen(node.getBoundsInLocal());
    return new ContextMenuEvent(
        ContextMenuEvent.CONTEXT_MENU_REQUESTED,
        1,
        1,
        bounds.getMinX() + 1,
        bounds.getMinY() + 1,
        true,
        null);
  }

  @Test
  void menuOfAShelfPaintPutsItIntoAWell(FxRobot robot) {
    robot.clickOn(row(robot, "Burnt Sienna"));
    Node list = focused();
    robot.interact(() -> list.fireEvent(menuKey(list)));
    robot.clickOn("Put into the next empty well (4)");
    assertThat(paintIn("w4")).contains("sienna");
  }

  @Test
  void undoneMoveShowsItsWell(FxRobot robot) {
    robot.drag(well(robot, "1"), MouseButton.PRIMARY).dropTo(well(robot, "6"));
    assertThat(paintIn("w6")).contains("lemon");
    robot.interact(session::undo);
    assertThat(onFx(() -> session.selectionProperty().get())).isEqualTo(new Selection.OfWell("w1"));
  }
}
