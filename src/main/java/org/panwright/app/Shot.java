package org.panwright.app;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.panwright.app.theme.Theme;
import org.panwright.colour.Lab;
import org.panwright.kit.Box;
import org.panwright.kit.Lineup;
import org.panwright.mixing.Ratio;
import org.panwright.paint.Paint;
import org.panwright.words.ChooseViewWords;
import org.panwright.words.CompareWords;
import org.panwright.words.FillViewWords;
import org.panwright.words.OutingWords;
import org.panwright.words.SubjectWords;
import org.panwright.words.WindowWords;

/**
 * One picture of the guide.
 *
 * @param name of its file, without ending
 * @param width of the window
 * @param height of the window
 * @param prepare brings the window into the state to show
 */
record Shot(String name, double width, double height, Theme theme, Consumer<Workbench> prepare) {
  /** The pictures of the guide in the order they are taken. */
  static final List<Shot> GUIDE =
      List.of(
          new Shot("plan-light", 1440, 900, Theme.LIGHT, w -> w.showPlace(0)),
          new Shot("plan-dark", 1440, 900, Theme.DARK, w -> w.showPlace(0)),
          new Shot("mix", 1440, 900, Theme.LIGHT, Shot::pickMix),
          new Shot("recipes", 1440, 900, Theme.LIGHT, Shot::pickColour),
          new Shot("subject", 1440, 900, Theme.LIGHT, Shot::subject),
          new Shot("compare", 1440, 900, Theme.LIGHT, w -> w.showPlace(CompareWords.TITLE)),
          new Shot("choose", 1440, 900, Theme.LIGHT, w -> w.showPlace(ChooseViewWords.TITLE)),
          new Shot("arrange", 1280, 800, Theme.LIGHT, Shot::arrange),
          new Shot("paint-page", 1440, 900, Theme.LIGHT, w -> w.editors().openPage(painted(w))),
          new Shot("fill", 1440, 900, Theme.LIGHT, w -> w.showPlace(FillViewWords.FILL)),
          new Shot("outing", 1440, 900, Theme.LIGHT, w -> w.showPlace(OutingWords.VIEW)),
          new Shot("papers", 1440, 900, Theme.LIGHT, w -> w.showPlace(WindowWords.PAPERS)),
          new Shot("paint-editor", 1280, 800, Theme.LIGHT, w -> w.editors().editPaint(blend(w))),
          new Shot("box-editor", 1280, 800, Theme.LIGHT, Shot::editBox));

  /** The window at its smallest and on a large screen, to be looked at after a change. */
  static final List<Shot> SIZES =
      List.of(
          new Shot("plan-small", 1100, 700, Theme.LIGHT, Shot::plan),
          new Shot("plan-large", 1920, 1080, Theme.DARK, Shot::plan),
          new Shot("subject-small", 1100, 700, Theme.DARK, Shot::subject),
          new Shot("choose-small", 1100, 700, Theme.DARK, w -> w.showPlace(ChooseViewWords.TITLE)),
          new Shot("compare-small", 1100, 700, Theme.DARK, w -> w.showPlace(CompareWords.TITLE)),
          new Shot("fill-small", 1100, 700, Theme.DARK, w -> w.showPlace(FillViewWords.FILL)),
          new Shot("outing-small", 1100, 700, Theme.DARK, w -> w.showPlace(OutingWords.VIEW)),
          new Shot("outing-large", 1920, 1080, Theme.DARK, w -> w.showPlace(OutingWords.VIEW)),
          new Shot("papers-small", 1100, 700, Theme.DARK, w -> w.showPlace(WindowWords.PAPERS)),
          new Shot("paint-editor-dark", 1100, 700, Theme.DARK, w -> w.editors().addPaint()),
          new Shot("wash-strengths", 1100, 700, Theme.LIGHT, w -> w.editors().editPaperAndWashes()),
          new Shot("new-lineup", 1100, 700, Theme.LIGHT, w -> w.editors().addLineup()),
          new Shot("remove-paint", 1100, 700, Theme.LIGHT, Shot::removePaint));

  /** The pictures of these names, or those of the guide if none is named. */
  static List<Shot> named(List<String> names) {
    return names.isEmpty()
        ? GUIDE
        : Stream.concat(GUIDE.stream(), SIZES.stream())
            .filter(shot -> names.contains(shot.name()))
            .toList();
  }

  private static void plan(Workbench workbench) {
    workbench.showPlace(0);
    workbench.session().selectionProperty().set(Selection.NOTHING);
  }

  /** A grey green of the sea. */
  private static void pickColour(Workbench workbench) {
    plan(workbench);
    workbench
        .session()
        .selectionProperty()
        .set(
            new Selection.OfColour(
                new Lab(55, -10, -8), "Sea under cloud", Optional.empty(), List.of()));
  }

  private static void subject(Workbench workbench) {
    plan(workbench);
    workbench.showPlace(SubjectWords.PLACE);
  }

  private static void pickMix(Workbench workbench) {
    plan(workbench);
    List<String> paints = lineup(workbench).paintIds(box(workbench));
    workbench
        .session()
        .selectionProperty()
        .set(new Selection.OfMix(paints.get(0), paints.get(paints.size() / 2), Ratio.EVEN));
  }

  private static void arrange(Workbench workbench) {
    plan(workbench);
    workbench.editors().arrangeLineup();
  }

  private static void editBox(Workbench workbench) {
    plan(workbench);
    workbench.editors().editBox(box(workbench).id());
  }

  private static void removePaint(Workbench workbench) {
    plan(workbench);
    workbench.editors().removePaint(lineup(workbench).paintIds(box(workbench)).get(0));
  }

  private static Lineup lineup(Workbench workbench) {
    return workbench.session().lineup().orElseThrow();
  }

  private static Box box(Workbench workbench) {
    return workbench.session().kit().boxOf(lineup(workbench));
  }

  /** The first paint with swatches of its own. */
  private static String painted(Workbench workbench) {
    return workbench.session().kit().shelf().paints().stream()
        .filter(paint -> !paint.swatchbook().coats().isEmpty())
        .map(Paint::id)
        .findFirst()
        .orElseThrow();
  }

  /** A paint of several pigments shows more of the editor. */
  private static String blend(Workbench workbench) {
    return workbench.session().kit().shelf().paints().stream()
        .filter(paint -> paint.pigments().size() > 1)
        .map(Paint::id)
        .findFirst()
        .orElseThrow();
  }
}
