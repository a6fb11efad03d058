package org.panwright.app;

import java.util.List;
import java.util.function.Consumer;
import org.panwright.app.theme.Theme;

/**
 * One picture of the guide.
 *
 * @param name of its file, without ending
 * @param width of the window
 * @param height of the window
 * @param prepare brings the window into the state to show
 */
record Shot(String name, double width, double height, Theme theme, Consumer<Workbench> prepare) {
  /** All pictures in the order they are taken. */
  static final List<Shot> ALL =
      List.of(
          new Shot("plan-light", 1440, 900, Theme.LIGHT, w -> w.showPlace(0)),
          new Shot("plan-dark", 1440, 900, Theme.DARK, w -> w.showPlace(0)),
          new Shot("plan-small", 1100, 700, Theme.LIGHT, w -> w.showPlace(0)),
          new Shot("plan-large", 1920, 1080, Theme.LIGHT, w -> w.showPlace(0)),
          new Shot("key-card", 1440, 900, Theme.LIGHT, w -> w.showPlace(1)),
          new Shot("paint-editor", 1280, 800, Theme.LIGHT, w -> w.editors().editPaint(first(w))),
          new Shot("box-editor", 1280, 800, Theme.LIGHT, w -> w.editors().addBox()));

  private static String first(Workbench workbench) {
    return workbench.session().kit().shelf().paints().get(0).id();
  }
}
