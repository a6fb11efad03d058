package org.panwright.app.swatches;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.panwright.app.Session;
import org.panwright.app.fx.Latest;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.kit.Kit;
import org.panwright.kit.SwatchEdit;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsOrigin;
import org.panwright.paint.Paint;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.PigmentLibrary;
import org.panwright.swatch.FitRefusal;
import org.panwright.swatch.FitRefusedException;
import org.panwright.swatch.PaintFit;
import org.panwright.swatch.PaintFitReport;
import org.panwright.swatch.picture.Homography;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.sheet.FoundSheet;
import org.panwright.swatch.sheet.PaintMark;
import org.panwright.swatch.sheet.PatchKind;
import org.panwright.swatch.sheet.ReadingFault;
import org.panwright.swatch.sheet.ReadingFaultException;
import org.panwright.swatch.sheet.RowReading;
import org.panwright.swatch.sheet.SheetCoats;
import org.panwright.swatch.sheet.SheetFinder;
import org.panwright.swatch.sheet.SheetFormat;
import org.panwright.swatch.sheet.SheetPlan;
import org.panwright.swatch.sheet.SheetReading;
import org.panwright.swatch.sheet.SwappedRows;

/**
 * A printed sheet on the picture: its rows, which paint each holds, and what the paints learn from
 * it. Reading and fitting run away from the JavaFX thread; the newest request wins.
 */
public final class SheetModel {
  private final Session session;
  private final PictureModel pictures;
  private final PigmentLibrary library;
  private final Supplier<LocalDate> today;
  private final Consumer<RuntimeException> failures;
  private final Latest<Outcome> reading;
  private final Latest<Learnt> fitting;
  private final ObjectProperty<SheetFormat> format = new SimpleObjectProperty<>(SheetFormat.A4);
  private final ObjectProperty<SheetChoices> choices = new SimpleObjectProperty<>(SheetChoices.DRY);
  private final ReadOnlyObjectWrapper<Optional<SheetReading>> read =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<ReadingFault>> fault =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<FitRefusal>> refusal =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<PaintFitReport>> learnt =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<List<SheetRow>> rows = new ReadOnlyObjectWrapper<>(List.of());
  private final Map<Integer, Optional<String>> said = new HashMap<>();
  private boolean readingNow;
  private boolean fittingNow;

  private record Outcome(Optional<SheetReading> reading, Optional<ReadingFault> fault) {}

  private record Learnt(Optional<PaintFitReport> report, Optional<FitRefusal> refusal) {}

  /**
   * @param today the day noted with what is kept
   * @param away where sheets are read and paints fitted
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public SheetModel(
      Session session,
      PictureModel pictures,
      PigmentLibrary library,
      Supplier<LocalDate> today,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.session = session;
    this.pictures = pictures;
    this.library = library;
    this.today = today;
    this.failures = failures;
    reading = new Latest<>(away, home);
    fitting = new Latest<>(away, home);
    pictures
        .foundProperty()
        .addListener((property, before, now) -> now.ifPresent(sheet -> format.set(sheet.format())));
    pictures.pictureProperty().addListener(changed -> said.clear());
    pictures.cornersProperty().addListener(changed -> refresh());
    format.addListener(changed -> refresh());
    choices.addListener(changed -> refresh());
    session
        .historyProperty()
        .addListener(
            (property, before, now) -> {
              boolean same =
                  before.kit().shelf().equals(now.kit().shelf())
                      && before.kit().paper().equals(now.kit().paper());
              if (!same) {
                assign();
              }
            });
    guessWhiteAndBlack();
  }

  /** The paper the sheet was printed on. */
  ObjectProperty<SheetFormat> formatProperty() {
    return format;
  }

  /** Wet or dry, and what white and black were stirred in. */
  ObjectProperty<SheetChoices> choicesProperty() {
    return choices;
  }

  /** What was read off the sheet, if it could be. */
  ReadOnlyObjectProperty<Optional<SheetReading>> readingProperty() {
    return read.getReadOnlyProperty();
  }

  /** Why nothing could be read, if so. */
  ReadOnlyObjectProperty<Optional<ReadingFault>> faultProperty() {
    return fault.getReadOnlyProperty();
  }

  /** Why the paints cannot learn from the coats, if so. */
  ReadOnlyObjectProperty<Optional<FitRefusal>> refusalProperty() {
    return refusal.getReadOnlyProperty();
  }

  /** What the paints learn from the sheet and all they knew, if they can. */
  ReadOnlyObjectProperty<Optional<PaintFitReport>> learntProperty() {
    return learnt.getReadOnlyProperty();
  }

  /** The rows with paint on them. */
  ReadOnlyObjectProperty<List<SheetRow>> rowsProperty() {
    return rows.getReadOnlyProperty();
  }

  /** The kit's paints, to choose from. */
  List<Paint> paints() {
    return session.kit().shelf().paints();
  }

  /** Says which paint a row holds; none to leave it out. */
  void say(int row, Optional<String> paintId) {
    said.put(row, paintId);
    assign();
  }

  /** Exchanges the paints of two places in the list of rows. */
  void exchange(int first, int second) {
    SheetRow one = rows.get().get(first);
    SheetRow two = rows.get().get(second);
    said.put(one.reading().row(), two.paintId());
    said.put(two.reading().row(), one.paintId());
    assign();
  }

  /** Where the sheet is read, as outlines in pixels. */
  List<List<Point>> outlines() {
    return read.get()
        .flatMap(page -> page.sheet().place().map(place -> outlines(page, place)))
        .orElse(List.of());
  }

  private static List<List<Point>> outlines(SheetReading page, Homography place) {
    SheetPlan plan = new SheetPlan(page.sheet().format());
    List<List<Point>> outlines = new ArrayList<>();
    for (RowReading row : page.rows()) {
      for (PatchKind kind : PatchKind.values()) {
        outlines.add(place.map(plan.onPaper(row.row(), kind)));
      }
      outlines.add(place.map(plan.onLine(row.row(), PatchKind.FULL)));
    }
    return outlines;
  }

  /** What there is to say about the rows as they are, with what {@link #swapped} found. */
  List<String> remarks(Optional<SwappedRows> swapped) {
    return SheetRemarks.of(rows.get(), session.kit(), swapped, read.get(), choices.get(), wet());
  }

  /** Two rows that look exchanged, as places in the list. */
  Optional<SwappedRows> swapped() {
    return SheetRemarks.swapped(rows.get(), session.kit(), library);
  }

  /** Whether something could be kept now. */
  boolean canKeep() {
    return choices.get().wet() ? !wet().isEmpty() : learnt.get().isPresent();
  }

  /** Keeps the coats with their paints and predicts from what they teach, as one edit. */
  void keep() {
    if (choices.get().wet()) {
      Map<String, List<PaintedCoat>> wet = wet();
      if (!wet.isEmpty()) {
        session.perform(new SwatchEdit.RecordSwatches(wet));
      }
      return;
    }
    learnt
        .get()
        .ifPresent(
            report -> {
              Map<String, Optional<Optics>> optics = new LinkedHashMap<>();
              report.optics().forEach((id, found) -> optics.put(id, Optional.of(found)));
              session.perform(
                  new SwatchEdit.LearnPaints(
                      new SwatchEdit.RecordSwatches(dry()),
                      new SwatchEdit.UseOptics(
                          optics,
                          new OpticsOrigin(
                              Optional.of(today.get()), OpticsOrigin.Reason.FITTED, fileName()))));
            });
  }

  /** Whether what is shown is of the picture, the corners and the kit as they are now. */
  public boolean isSettled() {
    return pictures.isSettled() && !readingNow && !fittingNow;
  }

  private void guessWhiteAndBlack() {
    Kit kit = session.kit();
    choices.set(SheetChoices.guess(kit.shelf()));
  }

  private void refresh() {
    Optional<ShownPicture> shown = pictures.pictureProperty().get();
    List<Point> corners = pictures.cornersProperty().get();
    if (shown.isEmpty() || corners.size() != 4) {
      reading.cancel();
      readingNow = false;
      take(new Outcome(Optional.empty(), Optional.empty()));
      return;
    }
    Picture picture = shown.get().picture();
    SheetFormat paper = format.get();
    Lab paperColour = Light.D65.lab(session.kit().paper().reflectance());
    readingNow = true;
    reading.request(
        outdated -> read(picture, paper, corners, paperColour),
        outcome -> {
          readingNow = false;
          take(outcome);
        },
        failures);
  }

  private static Outcome read(
      Picture picture, SheetFormat format, List<Point> corners, Lab paperColour) {
    FoundSheet placed = new FoundSheet(format, corners, Optional.empty());
    FoundSheet sheet = new FoundSheet(format, corners, SheetFinder.code(picture, placed));
    try {
      return new Outcome(
          Optional.of(SheetReading.of(picture, sheet, paperColour, Optional.empty())),
          Optional.empty());
    } catch (ReadingFaultException unreadable) {
      return new Outcome(Optional.empty(), Optional.of(unreadable.fault()));
    }
  }

  private void take(Outcome outcome) {
    fault.set(outcome.fault());
    read.set(outcome.reading());
    assign();
  }

  /** Finds the paints of the rows anew, and fits them. */
  private void assign() {
    learnt.set(Optional.empty());
    refusal.set(Optional.empty());
    rows.set(list(Optional.empty()));
    Map<String, List<PaintedCoat>> coats = choices.get().wet() ? Map.of() : dry();
    if (coats.isEmpty()) {
      fitting.cancel();
      fittingNow = false;
      return;
    }
    Kit kit = new SwatchEdit.RecordSwatches(coats).apply(session.kit());
    fittingNow = true;
    fitting.request(
        outdated -> {
          try {
            return new Learnt(
                Optional.of(
                    PaintFit.of(kit.shelf(), coats.keySet(), library, kit.paper(), outdated)),
                Optional.empty());
          } catch (FitRefusedException refused) {
            return new Learnt(Optional.empty(), Optional.of(refused.refusal()));
          }
        },
        found -> {
          fittingNow = false;
          refusal.set(found.refusal());
          rows.set(list(found.report()));
          learnt.set(found.report());
        },
        failures);
  }

  private List<SheetRow> list(Optional<PaintFitReport> report) {
    if (read.get().isEmpty()) {
      return List.of();
    }
    List<SheetRow> list = new ArrayList<>();
    for (RowReading row : read.get().get().rows()) {
      Optional<String> paint = paintOf(row);
      list.add(new SheetRow(row, paint, SheetChips.of(row, paint, coats(), report)));
    }
    return list;
  }

  private Optional<String> paintOf(RowReading row) {
    Optional<String> byHand = said.get(row.row());
    if (byHand != null) {
      return byHand.filter(id -> session.kit().shelf().find(id).isPresent());
    }
    List<String> marked =
        session.kit().shelf().paints().stream()
            .map(Paint::id)
            .filter(id -> row.mark().filter(PaintMark.of(id)::equals).isPresent())
            .toList();
    return marked.size() == 1 ? Optional.of(marked.get(0)) : Optional.empty();
  }

  private Map<String, List<PaintedCoat>> dry() {
    return read.get().isEmpty() ? Map.of() : coats().dry(today.get(), fileName());
  }

  private Map<String, List<PaintedCoat>> wet() {
    return read.get().isEmpty() ? Map.of() : coats().wet(session.kit().shelf());
  }

  private SheetCoats coats() {
    Map<Integer, String> paints = new HashMap<>();
    SheetReading page = read.get().orElseThrow();
    page.rows().forEach(row -> paintOf(row).ifPresent(id -> paints.put(row.row(), id)));
    return new SheetCoats(page, paints, choices.get().whiteId(), choices.get().blackId(), false);
  }

  private String fileName() {
    return pictures.pictureProperty().get().map(ShownPicture::name).orElse("");
  }
}
