package org.panwright.app.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.scene.Scene;
import javafx.scene.control.ListView;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.panwright.app.BenchKit;
import org.panwright.app.Session;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.hand.Hand;
import org.panwright.app.theme.Theme;
import org.panwright.kit.Kit;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A shelf of 5,000 paints. */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class LargeShelfWindowTest {
  private static final int MANY = 5000;

  private final AtomicInteger rebuilt = new AtomicInteger();
  private ShelfModel model;
  private ShelfList list;

  @Start
  void start(Stage stage) {
    List<Paint> paints = new ArrayList<>();
    int kinds = BenchKit.LIBRARY.pigments().size();
    for (int i = 0; i < MANY; i++) {
      String code = BenchKit.LIBRARY.pigments().get(i % kinds).name().toString();
      paints.add(BenchKit.paint("p" + i, "Paint number " + i, Ownership.OWNED, code));
    }
    Kit withoutLineup = BenchKit.kit(paints, BenchKit.box(), Map.of()).withLineups(List.of());
    Session session = BenchKit.session(withoutLineup);
    model =
        new ShelfModel(
            session,
            new ToneBook(BenchKit.LIBRARY),
            new Hand(session),
            Runnable::run,
            Runnable::run);
    list = new ShelfList(model);
    list.getItems()
        .addListener(
            (javafx.collections.ListChangeListener<ShelfRow>) c -> rebuilt.incrementAndGet());
    Scene scene = new Scene(list, 300, 500);
    scene.getStylesheets().setAll(Theme.LIGHT.sheets());
    scene.getStylesheets().add("/org/panwright/app/theme/bench.css");
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void onlyTheRowsInSightHaveCells(FxRobot robot) {
    assertThat(list.getItems()).hasSize(MANY);
    robot.interact(() -> list.scrollTo(MANY / 2));
    robot.interact(() -> list.scrollTo(MANY - 1));
    assertThat(robot.from(list).lookup(".shelf-cell").queryAll().size()).isLessThan(60);
  }

  @Test
  void scrolledListShowsTheRowsOfItsPlace(FxRobot robot) {
    robot.interact(() -> list.scrollTo(MANY - 1));
    ListView<ShelfRow> shown = list;
    String last = shown.getItems().get(MANY - 1).paint().name();
    assertThat(robot.from(list).lookup(last).tryQuery()).isPresent();
  }

  @Test
  void aSearchChangesTheListInOneStep(FxRobot robot) {
    robot.interact(() -> model.queryProperty().set(ShelfQuery.ALL.withText("number 4321")));
    assertThat(list.getItems()).hasSize(1);
    assertThat(rebuilt.get()).isEqualTo(1);
  }

  @Test
  void pickedPaintOutOfSightIsScrolledTo(FxRobot robot) {
    String far = list.getItems().get(MANY - 10).paint().id();
    robot.interact(() -> model.pick(far));
    assertThat(list.getSelectionModel().getSelectedIndex()).isEqualTo(MANY - 10);
    String name = list.getItems().get(MANY - 10).paint().name();
    assertThat(robot.from(list).lookup(name).tryQuery()).isPresent();
  }
}
