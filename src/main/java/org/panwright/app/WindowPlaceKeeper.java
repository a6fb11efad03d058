package org.panwright.app;

import java.util.List;
import javafx.application.Platform;
import javafx.beans.InvalidationListener;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import org.panwright.app.settings.Remembered;
import org.panwright.app.window.ScreenPlace;
import org.panwright.store.Settings.WindowSpot;

/** Puts the window where it was last, as far as that screen is still there, and remembers moves. */
final class WindowPlaceKeeper {
  private static final double USUAL_WIDTH = 1440;
  private static final double USUAL_HEIGHT = 900;

  private WindowPlaceKeeper() {}

  static void of(Stage stage, Remembered remembered) {
    List<Rectangle2D> screens = Screen.getScreens().stream().map(Screen::getVisualBounds).toList();
    ScreenPlace place =
        remembered
            .settings()
            .window()
            .map(s -> new ScreenPlace(s.x(), s.y(), s.width(), s.height(), s.maximised()))
            .orElseGet(() -> centred(screens.get(0)))
            .onto(screens);
    put(stage, place);
    stage.addEventHandler(
        WindowEvent.WINDOW_SHOWN,
        shown ->
            Platform.runLater(
                () -> {
                  // Some window managers open at the least size, whatever was asked for before.
                  put(stage, place);
                  if (place.maximised()) {
                    findAgain(stage, place);
                  }
                  remember(stage, remembered);
                }));
  }

  private static void put(Stage stage, ScreenPlace place) {
    putNormal(stage, place);
    stage.setMaximized(place.maximised());
  }

  private static void putNormal(Stage stage, ScreenPlace place) {
    stage.setX(place.x());
    stage.setY(place.y());
    stage.setWidth(place.width());
    stage.setHeight(place.height());
  }

  /** A window that starts maximised has had no other size its manager could give it back. */
  private static void findAgain(Stage stage, ScreenPlace place) {
    stage
        .maximizedProperty()
        .addListener(
            new ChangeListener<>() {
              @Override
              public void changed(
                  ObservableValue<? extends Boolean> maximised, Boolean before, Boolean now) {
                maximised.removeListener(this);
                Platform.runLater(() -> putNormal(stage, place));
              }
            });
  }

  private static void remember(Stage stage, Remembered remembered) {
    InvalidationListener moved = changed -> remembered.change(s -> s.withWindow(spot(stage, s)));
    stage.xProperty().addListener(moved);
    stage.yProperty().addListener(moved);
    stage.widthProperty().addListener(moved);
    stage.heightProperty().addListener(moved);
    stage.maximizedProperty().addListener(moved);
  }

  private static ScreenPlace centred(Rectangle2D screen) {
    double width = Math.min(USUAL_WIDTH, screen.getWidth());
    double height = Math.min(USUAL_HEIGHT, screen.getHeight());
    return new ScreenPlace(
        screen.getMinX() + (screen.getWidth() - width) / 2,
        screen.getMinY() + (screen.getHeight() - height) / 2,
        width,
        height,
        false);
  }

  /** A maximised window keeps the place it returns to. */
  private static WindowSpot spot(Stage stage, org.panwright.store.Settings before) {
    if (stage.isMaximized() && before.window().isPresent()) {
      WindowSpot last = before.window().get();
      return new WindowSpot(last.x(), last.y(), last.width(), last.height(), true);
    }
    return new WindowSpot(
        stage.getX(), stage.getY(), stage.getWidth(), stage.getHeight(), stage.isMaximized());
  }
}
