package org.panwright.app.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.app.fx.Latest;
import org.panwright.kit.Kit;
import org.panwright.kit.SwatchEdit;
import org.panwright.paint.CoatReading;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsOrigin;
import org.panwright.paint.Paint;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.Swatchbook;
import org.panwright.swatch.file.ReadingFile;
import org.panwright.swatch.fit.FitRefusedException;
import org.panwright.swatch.kept.PaintFit;
import org.panwright.swatch.kept.PaintFitReport;
import org.panwright.swatch.table.TableFaultException;
import org.panwright.words.PaintPageWords;
import org.panwright.words.SwatchWords;

/**
 * The page of one paint: what its colour is known from, and the ways to know it better. Follows the
 * paint picked anywhere in the window; works things out off the JavaFX thread.
 */
public final class PageModel {
  private static final long MOST_BYTES = 20L << 20;

  private final Session session;
  private final PigmentLibrary library;
  private final Supplier<LocalDate> today;
  private final Consumer<RuntimeException> failures;
  private final Latest<PaintPage> looking;
  private final Latest<Learnt> learning;
  private final Latest<Opened> opening;
  private final ReadOnlyObjectWrapper<Optional<PaintPage>> page =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyStringWrapper remark = new ReadOnlyStringWrapper("");
  private final ReadOnlyObjectWrapper<Optional<PaintFitReport.OtherLoad>> doubted =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private String paintId = "";
  private boolean settled;

  private record Learnt(Optional<PaintFitReport> report, String refusal) {}

  private record Opened(Optional<ReadingFile> file, String fault) {}

  /**
   * @param today the day noted with what is kept
   * @param away where pages are worked out, files read and paints fitted
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public PageModel(
      Session session,
      PigmentLibrary library,
      Supplier<LocalDate> today,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.session = session;
    this.library = library;
    this.today = today;
    this.failures = failures;
    looking = new Latest<>(away, home);
    learning = new Latest<>(away, home);
    opening = new Latest<>(away, home);
    session.selectionProperty().addListener(changed -> follow());
    session
        .historyProperty()
        .addListener(
            changed -> {
              // What was said is of the kit before; what made the change says its own after it.
              remark.set("");
              refresh();
            });
    follow();
    refresh();
  }

  /** The newest whole page; empty while the shelf is. */
  ReadOnlyObjectProperty<Optional<PaintPage>> pageProperty() {
    return page.getReadOnlyProperty();
  }

  /** What came of the last thing asked for; empty for nothing. */
  ReadOnlyStringProperty remarkProperty() {
    return remark.getReadOnlyProperty();
  }

  /** The coat whose noted load the last learning doubts; empty once anything is changed. */
  ReadOnlyObjectProperty<Optional<PaintFitReport.OtherLoad>> doubtedProperty() {
    return doubted.getReadOnlyProperty();
  }

  /** Whether the page shown is of the kit as it is now. */
  public boolean isSettled() {
    return settled;
  }

  /** All paints of the shelf. */
  List<Paint> paints() {
    return session.kit().shelf().paints();
  }

  /** The coats kept with the paint shown. */
  List<PaintedCoat> coats() {
    return book().coats();
  }

  /** Shows another paint. */
  void choose(String id) {
    if (!id.equals(paintId)) {
      session.selectionProperty().set(new Selection.OfPaint(id));
    }
  }

  /** Keeps coats with the paint shown. */
  void keep(List<PaintedCoat> coats) {
    if (!coats.isEmpty()) {
      session.perform(new SwatchEdit.RecordSwatches(Map.of(paintId, coats)));
      remark.set(PaintPageWords.kept(coats.size()));
    }
  }

  /** Keeps one coat typed by hand, with its load if the painter knows it. */
  void keepTyped(CoatRole role, CoatReading reading, OptionalDouble load) {
    role.coat(book().freshId(), reading)
        .map(coat -> load.isPresent() ? coat.withLoad(load.getAsDouble()) : coat)
        .ifPresent(
            coat -> keep(List.of(coat.withOrigin(today.get(), PaintPageWords.TYPED_SOURCE))));
  }

  /** Keeps rows of a file, each in the role it was given. */
  void keepRead(List<ChosenRow> rows, String source) {
    Optional<CoatReading> paper =
        rows.stream()
            .filter(row -> row.role() == CoatRole.PAPER)
            .reduce((one, later) -> later)
            .map(row -> row.reading().kept());
    List<PaintedCoat> coats = new ArrayList<>();
    int tooLarge = 0;
    Swatchbook book = book();
    for (ChosenRow row : rows) {
      Optional<PaintedCoat> coat = row.role().coat(book.freshId(), row.reading().kept());
      if (coat.isPresent()) {
        PaintedCoat kept = coat.get().withOrigin(today.get(), source);
        if (row.load().isPresent() && row.load().getAsDouble() <= PaintedCoat.MOST_LOAD) {
          kept = kept.withLoad(row.load().getAsDouble());
        } else if (row.load().isPresent()) {
          tooLarge++;
        }
        if (kept.over() == PaintedCoat.Ground.PAPER && paper.isPresent()) {
          kept = kept.withGround(PaintedCoat.Ground.PAPER, paper);
        }
        coats.add(kept);
        book = book.with(List.of(kept));
      }
    }
    keep(coats);
    if (tooLarge > 0) {
      remark.set(remark.get() + " " + PaintPageWords.amountsTooLarge(tooLarge));
    }
  }

  /** Takes a coat off the page. */
  void remove(String coatId) {
    remark.set("");
    session.perform(new SwatchEdit.RemoveSwatch(paintId, coatId));
  }

  /** Predicts the paint from former optics again. */
  void goBack(int former) {
    remark.set("");
    session.perform(new SwatchEdit.GoBack(paintId, former));
  }

  /** Fits the paint to the coats kept with it, and uses what comes out. */
  void learn() {
    learn(new SwatchEdit.RecordSwatches(Map.of()));
  }

  /** Notes the load that would fit the coat whose own is doubted, and learns again, in one step. */
  void takeLoad() {
    doubted
        .get()
        .map(found -> found.coat().coat().withLoad(found.load()))
        .ifPresent(coat -> learn(new SwatchEdit.RecordSwatches(Map.of(paintId, List.of(coat)))));
  }

  private void learn(SwatchEdit.RecordSwatches first) {
    Kit before = session.kit();
    Kit kit = first.apply(before);
    String id = paintId;
    remark.set(PaintPageWords.LEARNING);
    learning.request(
        outdated -> {
          try {
            return new Learnt(
                Optional.of(PaintFit.of(kit.shelf(), Set.of(id), library, kit.paper(), outdated)),
                "");
          } catch (FitRefusedException refused) {
            return new Learnt(Optional.empty(), PaintPageWords.refused(refused.refusal()));
          }
        },
        learnt -> {
          remark.set(learnt.refusal());
          learnt
              .report()
              .filter(report -> session.kit().equals(before))
              .ifPresent(report -> use(first, report));
        },
        failures);
  }

  private void use(SwatchEdit.RecordSwatches first, PaintFitReport report) {
    Map<String, Optional<Optics>> optics = new LinkedHashMap<>();
    report.optics().forEach((id, found) -> optics.put(id, Optional.of(found)));
    SwatchEdit.UseOptics learnt =
        new SwatchEdit.UseOptics(
            optics,
            new OpticsOrigin(
                Optional.of(today.get()),
                OpticsOrigin.Reason.FITTED,
                PaintPageWords.coats(report.coats().size())));
    session.perform(first.coats().isEmpty() ? learnt : new SwatchEdit.LearnPaints(first, learnt));
    remark.set(PaintPageWords.learnt(report));
    doubted.set(report.doubted());
  }

  /** Reads a file of readings off the JavaFX thread; what is wrong with it becomes the remark. */
  void open(Path path, Consumer<ReadingFile> opened) {
    opening.request(
        outdated -> read(path),
        result -> {
          remark.set(result.fault());
          result.file().ifPresent(opened);
        },
        failures);
  }

  private static Opened read(Path path) {
    String name = path.getFileName().toString();
    try {
      if (Files.size(path) > MOST_BYTES) {
        return new Opened(Optional.empty(), PaintPageWords.tooLarge(name));
      }
      return new Opened(Optional.of(ReadingFile.read(Files.readAllBytes(path))), "");
    } catch (IOException unreadable) {
      return new Opened(Optional.empty(), PaintPageWords.unreadable(name));
    } catch (TableFaultException broken) {
      return new Opened(Optional.empty(), SwatchWords.sentence(name, broken.fault()));
    }
  }

  private Swatchbook book() {
    return session.kit().shelf().find(paintId).map(Paint::swatchbook).orElse(Swatchbook.EMPTY);
  }

  private void follow() {
    Optional<String> picked = Optional.empty();
    if (session.selectionProperty().get() instanceof Selection.OfPaint paint) {
      picked = Optional.of(paint.paintId());
    } else if (session.selectionProperty().get() instanceof Selection.OfWell well) {
      picked = session.lineup().flatMap(l -> l.in(well.wellId())).map(f -> f.paintId());
    }
    if (picked.isPresent() && !picked.get().equals(paintId)) {
      paintId = picked.get();
      remark.set("");
      refresh();
    }
  }

  private void refresh() {
    doubted.set(Optional.empty());
    Kit kit = session.kit();
    Optional<Paint> paint = kit.shelf().find(paintId);
    if (paint.isEmpty()) {
      paint = kit.shelf().paints().stream().findFirst();
      paintId = paint.map(Paint::id).orElse("");
    }
    if (paint.isEmpty()) {
      looking.cancel();
      settled = true;
      page.set(Optional.empty());
      return;
    }
    Paint shown = paint.get();
    settled = false;
    looking.request(
        outdated -> PaintPage.of(shown, kit.shelf(), library, kit.paper(), kit.washes()),
        made -> {
          settled = true;
          page.set(Optional.of(made));
        },
        failures);
  }
}
