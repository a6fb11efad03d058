package org.panwright.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.application.Application;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.panwright.app.box.BoxModel;
import org.panwright.app.box.BoxView;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.grid.GridModel;
import org.panwright.app.grid.GridView;
import org.panwright.app.hand.Hand;
import org.panwright.app.hand.Held;
import org.panwright.app.hand.Holding;
import org.panwright.app.hand.Spot;
import org.panwright.app.ring.RingModel;
import org.panwright.app.ring.RingView;
import org.panwright.app.shelf.ShelfModel;
import org.panwright.app.shelf.ShelfView;
import org.panwright.app.theme.Theme;
import org.panwright.app.window.PlanView;
import org.panwright.kit.Box;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.Pigment;
import org.panwright.words.ShelfWords;

/**
 * Shelf and box in their places of the window, to look at them.
 *
 * <p>Arguments: {@code dark} for the dark theme; a number for that many paints on the shelf; {@code
 * carry} or {@code swap} to see a paint being carried; {@code narrow} for the filters.
 */
public final class BenchPreview extends Application {
  /** Starts the toolkit from a class that is no application, as the launcher does. */
  public static final class Main {
    private Main() {}

    public static void main(String[] args) {
      Application.launch(BenchPreview.class, args);
    }
  }

  @Override
  public void start(Stage stage) {
    List<String> args = getParameters().getUnnamed();
    int paints =
        args.stream()
            .filter(a -> a.matches("\\d+"))
            .mapToInt(Integer::parseInt)
            .findFirst()
            .orElse(40);
    Session session = BenchKit.session(BenchKit.kit(shelf(paints), box(), fillings()));
    Hand hand = new Hand(session);
    ToneBook book = new ToneBook(BenchKit.LIBRARY);
    ShelfView shelf =
        new ShelfView(
            new ShelfModel(session, book, hand, Runnable::run, Runnable::run), new NoEditors());
    BoxView box = new BoxView(new BoxModel(session, book, hand), new NoEditors());
    Parent bench =
        new PlanView(
            shelf,
            box,
            new GridView(
                new GridModel(session, Runnable::run, Runnable::run, BenchPreview::fail), () -> {}),
            new RingView(new RingModel(session)),
            new StackPane(),
            PlanView.USUAL);
    Scene scene = new Scene(bench, 1280, 740);
    Theme theme = args.contains("dark") ? Theme.DARK : Theme.LIGHT;
    scene.getStylesheets().setAll(theme.sheets());
    theme.putOn(bench);
    stage.setScene(scene);
    stage.show();
    if (args.contains("carry")) {
      hand.pickUp(new Held.FromShelf("p9"), Holding.Means.KEYS);
      hand.hover(new Spot.AtWell("w4"));
    }
    if (args.contains("narrow")) {
      bench.lookupAll(".toggle-button").stream()
          .filter(node -> ((ToggleButton) node).getText().equals(ShelfWords.NARROW))
          .forEach(node -> ((ToggleButton) node).fire());
    }
    if (args.contains("swap")) {
      hand.pickUp(new Held.FromWell("w0"), Holding.Means.POINTER);
      hand.hover(new Spot.AtWell("w7"));
    }
  }

  private static void fail(RuntimeException failure) {
    throw failure;
  }

  private static List<Paint> shelf(int count) {
    List<Pigment> pigments = BenchKit.LIBRARY.pigments();
    List<Paint> paints = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Pigment pigment = pigments.get(i * 7 % pigments.size());
      String name =
          pigment.commonName().isBlank() ? pigment.name().toString() : pigment.commonName();
      name = Character.toUpperCase(name.charAt(0)) + name.substring(1);
      Ownership how =
          i % 9 == 4 ? Ownership.WISHED : i % 7 == 3 ? Ownership.TRIED : Ownership.OWNED;
      paints.add(BenchKit.paint("p" + i, name, how, pigment.name().toString()));
    }
    return paints;
  }

  private static Box box() {
    List<Well> wells = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      double y = i < 6 ? 3 : 40;
      wells.add(new Well("w" + i, "" + (i + 1), WellKind.HALF_PAN, 3 + 18 * (i % 6), y, 16, 19.5));
    }
    for (int i = 0; i < 6; i++) {
      wells.add(new Well("d" + i, "dab " + (i + 1), WellKind.DAB, 4 + 18 * i, 25.5, 12, 11));
    }
    wells.add(new Well("p1", "13", WellKind.PAN, 113, 3, 19.5, 30));
    wells.add(new Well("p2", "14", WellKind.PAN, 113, 35, 19.5, 25));
    return new Box("tin", "Enamelled travel tin", 136, 64, 130, 60, wells);
  }

  private static Map<String, Filling> fillings() {
    Map<String, Filling> fillings = new LinkedHashMap<>();
    for (int i = 0; i < 12; i++) {
      if (i % 5 != 3) {
        Fill fill = i % 4 == 2 ? Fill.HALF : i == 6 ? Fill.DAB : Fill.FULL;
        fillings.put("w" + i, new Filling("p" + i * 2, fill));
      }
    }
    fillings.put("d0", new Filling("p30", Fill.DAB));
    fillings.put("d2", new Filling("p31", Fill.DAB));
    fillings.put("p1", new Filling("p33", Fill.FULL));
    return fillings;
  }

  /** Editors that open nothing. */
  static final class NoEditors implements Editors {
    @Override
    public void addPaint() {}

    @Override
    public void editPaint(String paintId) {}

    @Override
    public void duplicatePaint(String paintId) {}

    @Override
    public void removePaint(String paintId) {}

    @Override
    public void openPage(String paintId) {}

    @Override
    public void openPlan() {}

    @Override
    public void addBox() {}

    @Override
    public void editBox(String boxId) {}

    @Override
    public void addLineup() {}

    @Override
    public void arrangeLineup() {}

    @Override
    public void editPaperAndWashes() {}
  }
}
