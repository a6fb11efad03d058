package org.panwright.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.panwright.app.spots.SpotMarks;
import org.panwright.app.swatches.SwatchesView;
import org.panwright.app.theme.Theme;
import org.panwright.colour.Lab;
import org.panwright.kit.Box;
import org.panwright.kit.Edit;
import org.panwright.kit.Lineup;
import org.panwright.mixing.Ratio;
import org.panwright.paint.Paint;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.spot.Spot;
import org.panwright.swatch.spot.SpotKind;
import org.panwright.words.ChartReadingWords;
import org.panwright.words.ChooseViewWords;
import org.panwright.words.CompareWords;
import org.panwright.words.FillViewWords;
import org.panwright.words.OutingWords;
import org.panwright.words.SpotsWords;
import org.panwright.words.SwatchesWords;
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
          new Shot("compare", 1440, 900, Theme.LIGHT, w -> w.showPlace(CompareWords.TITLE)),
          new Shot("choose", 1440, 900, Theme.LIGHT, w -> w.showPlace(ChooseViewWords.TITLE)),
          new Shot("arrange", 1280, 800, Theme.LIGHT, Shot::arrange),
          new Shot("paint-page", 1440, 900, Theme.LIGHT, w -> w.editors().openPage(painted(w))),
          new Shot("swatches", 1440, 900, Theme.LIGHT, Shot::paintedSheet),
          new Shot("chart-read", 1440, 900, Theme.LIGHT, Shot::paintedChart),
          new Shot("fill", 1440, 900, Theme.LIGHT, w -> w.showPlace(FillViewWords.FILL)),
          new Shot("outing", 1440, 900, Theme.LIGHT, w -> w.showPlace(OutingWords.VIEW)),
          new Shot("papers", 1440, 900, Theme.LIGHT, w -> w.showPlace(WindowWords.PAPERS)),
          new Shot("paint-editor", 1280, 800, Theme.LIGHT, w -> w.editors().editPaint(blend(w))),
          new Shot("box-editor", 1280, 800, Theme.LIGHT, Shot::editBox),
          new Shot("subject", 1440, 900, Theme.LIGHT, Shot::subject));

  /** The window at its smallest and on a large screen, to be looked at after a change. */
  static final List<Shot> SIZES =
      List.of(
          new Shot("plan-small", 1100, 700, Theme.LIGHT, Shot::plan),
          new Shot("plan-large", 1920, 1080, Theme.DARK, Shot::plan),
          new Shot("choose-small", 1100, 700, Theme.DARK, w -> w.showPlace(ChooseViewWords.TITLE)),
          new Shot("compare-small", 1100, 700, Theme.DARK, w -> w.showPlace(CompareWords.TITLE)),
          new Shot("spots", 1440, 900, Theme.LIGHT, Shot::spots),
          new Shot("spots-small", 1100, 700, Theme.DARK, Shot::spots),
          new Shot("swatches-small", 1100, 700, Theme.DARK, Shot::paintedSheet),
          new Shot("chart-read-small", 1100, 700, Theme.DARK, Shot::paintedChart),
          new Shot("fill-small", 1100, 700, Theme.DARK, w -> w.showPlace(FillViewWords.FILL)),
          new Shot("outing-small", 1100, 700, Theme.DARK, w -> w.showPlace(OutingWords.VIEW)),
          new Shot("outing-large", 1920, 1080, Theme.DARK, w -> w.showPlace(OutingWords.VIEW)),
          new Shot("papers-small", 1100, 700, Theme.DARK, w -> w.showPlace(WindowWords.PAPERS)),
          new Shot("paint-editor-dark", 1100, 700, Theme.DARK, w -> w.editors().addPaint()),
          new Shot("wash-strengths", 1100, 700, Theme.LIGHT, w -> w.editors().editPaperAndWashes()),
          new Shot("new-lineup", 1100, 700, Theme.LIGHT, w -> w.editors().addLineup()),
          new Shot("remove-paint", 1100, 700, Theme.LIGHT, Shot::removePaint),
          new Shot("subject-small", 1100, 700, Theme.DARK, Shot::subject));

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

  /** A photo of no place, its colours taken afresh for the first outing. */
  private static void subject(Workbench workbench) {
    plan(workbench);
    Session session = workbench.session();
    session.perform(new Edit.SetSubjects(session.kit().outings().get(0).id(), List.of()));
    try {
      workbench.paint(InventedPhoto.in(Files.createTempDirectory("panwright-photo")));
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private static void pickMix(Workbench workbench) {
    plan(workbench);
    List<String> paints = lineup(workbench).paintIds(box(workbench));
    workbench
        .session()
        .selectionProperty()
        .set(new Selection.OfMix(paints.get(0), paints.get(paints.size() / 2), Ratio.EVEN));
  }

  /** A photo of a painted swatch sheet, read. */
  private static void paintedSheet(Workbench workbench) {
    SwatchesView view = swatches(workbench, SwatchesWords.PRINTED);
    view.open(staged(workbench).sheet(lineup(workbench), photo("painted sheet.png")), () -> {});
  }

  /** A photo of a painted mixing chart, its corners put in place. */
  private static void paintedChart(Workbench workbench) {
    SwatchesView view = swatches(workbench, ChartReadingWords.NAME);
    List<Point> corners = new ArrayList<>();
    Path chart =
        staged(workbench).chart(lineup(workbench), photo("painted chart.png"), corners::addAll);
    view.open(
        chart,
        () -> {
          for (int i = 0; i < corners.size(); i++) {
            view.marks().move(i, corners.get(i));
          }
          view.marks().whenChanged(() -> view.marks().pointAt(exchanged(corners)));
        });
  }

  /** The middle of the exchanged cell in the first row, near enough. */
  private static Point exchanged(List<Point> corners) {
    Point first = corners.get(0);
    double cell = corners.get(1).distance(first) / 9;
    return first.plus(3.5 * cell, 0.5 * cell);
  }

  /** Bare paper and two coats of the first paint, pointed at on the photo of a sheet. */
  private static void spots(Workbench workbench) {
    SwatchesView view = swatches(workbench, SpotsWords.NAME);
    SpotMarks marks = (SpotMarks) view.marks();
    Optional<String> first = lineup(workbench).paintIds(box(workbench)).stream().findFirst();
    view.open(
        staged(workbench).sheet(lineup(workbench), photo("painted sheet.png")),
        () -> {
          marks.add(new Spot(SpotKind.PAPER, Optional.empty(), new Point(690, 1500), 40));
          marks.add(new Spot(SpotKind.FULL, first, new Point(480, 345), 40));
          marks.add(new Spot(SpotKind.WASH, first, new Point(735, 350), 40));
        });
  }

  private static SwatchesView swatches(Workbench workbench, String way) {
    plan(workbench);
    workbench.showPlace(SwatchesWords.NAME);
    SwatchesView view = (SwatchesView) workbench.part(".swatches-view").orElseThrow();
    view.choose(way);
    return view;
  }

  private static StagedSwatches staged(Workbench workbench) {
    return new StagedSwatches(workbench.session().kit(), PigmentLibraryReader.read());
  }

  private static Path photo(String name) {
    try {
      return Files.createTempDirectory("panwright-photo").resolve(name);
    } catch (IOException full) {
      throw new UncheckedIOException(full);
    }
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
