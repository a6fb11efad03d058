package org.panwright.app.swatches;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.panwright.app.Session;
import org.panwright.app.fx.Latest;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.kit.SwatchEdit;
import org.panwright.paint.Paint;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.PigmentLibrary;
import org.panwright.swatch.kept.PaintFitReport;
import org.panwright.swatch.picture.Homography;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.sheet.Card;
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
  private final Learning learning;
  private final Consumer<RuntimeException> failures;
  private final Latest<Outcome> reading;
  private final Corners corners = new Corners();
  private final SheetMarks marks = new SheetMarks(corners);
  private final DoubleProperty card = new SimpleDoubleProperty(Card.GREY);
  private final ObjectProperty<SheetFormat> format = new SimpleObjectProperty<>(SheetFormat.A4);
  private final ObjectProperty<SheetChoices> choices;
  private final ReadOnlyObjectWrapper<SheetState> state =
      new ReadOnlyObjectWrapper<>(SheetState.NONE);
  private final ReadOnlyDoubleWrapper share = new ReadOnlyDoubleWrapper();
  private final Map<Integer, Optional<String>> said = new HashMap<>();
  private Optional<SheetReading> page = Optional.empty();
  private Optional<PaintFitReport> report = Optional.empty();
  private boolean measuredPaper;
  private boolean chosen;
  private boolean readingNow;

  /**
   * @param measuredPaper whether a card told the colour of the paper
   */
  private record Outcome(
      Optional<SheetReading> reading, boolean measuredPaper, Optional<ReadingFault> fault) {}

  /**
   * @param learning what the paints learn
   * @param away where sheets are read
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public SheetModel(
      Session session,
      PictureModel pictures,
      PigmentLibrary library,
      Learning learning,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.session = session;
    this.pictures = pictures;
    this.library = library;
    this.learning = learning;
    this.failures = failures;
    reading = new Latest<>(away, home);
    choices = new SimpleObjectProperty<>(SheetChoices.guess(session.kit().shelf()));
    pictures.pictureProperty().addListener((property, before, now) -> now.ifPresent(this::layOn));
    corners.placesProperty().addListener(changed -> refresh());
    marks.cardProperty().addListener(changed -> refresh());
    card.addListener(changed -> refresh());
    format.addListener(changed -> refresh());
    choices.addListener(changed -> assign(Optional.empty()));
    session.whenPaintsOrPaperChange(() -> assign(Optional.empty()));
  }

  /** The paper the sheet was printed on. */
  ObjectProperty<SheetFormat> formatProperty() {
    return format;
  }

  /** Wet or dry, and what white and black were stirred in. */
  ObjectProperty<SheetChoices> choicesProperty() {
    return choices;
  }

  /** What is known of the sheet; one change for each reading and one for what is learnt from it. */
  ReadOnlyObjectProperty<SheetState> stateProperty() {
    return state.getReadOnlyProperty();
  }

  /** What share of the learning under way is done, 0..1. */
  ReadOnlyDoubleProperty shareProperty() {
    return share.getReadOnlyProperty();
  }

  /** The middles of the sheet's corner marks. */
  Corners corners() {
    return corners;
  }

  /** The same, and the place of a card. */
  SheetMarks marks() {
    return marks;
  }

  /** What share of light the card turns back, above 0 and below 1. */
  DoubleProperty cardProperty() {
    return card;
  }

  /** The kit's paints, to choose from. */
  List<Paint> paints() {
    return session.kit().shelf().paints();
  }

  /** Says whether a printed sheet is what is looked for on the picture. */
  void setChosen(boolean now) {
    chosen = now;
    refresh();
  }

  /** Says which paint a row holds; none to leave it out. */
  void say(int row, Optional<String> paintId) {
    said.put(row, paintId);
    assign(Optional.empty());
  }

  /** Exchanges the paints of two places in the list of rows. */
  void exchange(int first, int second) {
    SheetRow one = state.get().rows().get(first);
    SheetRow two = state.get().rows().get(second);
    said.put(one.reading().row(), two.paintId());
    said.put(two.reading().row(), one.paintId());
    assign(Optional.empty());
  }

  /** Whether something could be kept now. */
  boolean canKeep() {
    return choices.get().wet()
        ? !wet().isEmpty()
        : state.get().report().isPresent() && state.get().stage() == Learning.Stage.DONE;
  }

  /** Keeps the coats with their paints and predicts from what they teach, as one edit. */
  void keep() {
    if (!canKeep()) {
      return;
    }
    if (choices.get().wet()) {
      session.perform(new SwatchEdit.RecordSwatches(wet()));
    } else {
      learning.keep(dry(), state.get().report().orElseThrow(), fileName());
    }
  }

  /** Leaves off learning; what was read stays, and nothing is kept. */
  void leaveOff() {
    learning.stop();
    if (state.get().learning()) {
      state.set(state.get().leftOff());
    }
  }

  /** Learns from the coats as they are, after leaving off. */
  void takeUp() {
    if (state.get().stage() == Learning.Stage.LEFT_OFF) {
      assign(Optional.empty());
    }
  }

  /** Whether what is shown is of the picture, the corners and the kit as they are now. */
  public boolean isSettled() {
    return pictures.isSettled() && !readingNow && !state.get().learning();
  }

  private void layOn(ShownPicture shown) {
    said.clear();
    report = Optional.empty();
    marks.clearCard();
    Optional<FoundSheet> found = pictures.found();
    if (found.isPresent()) {
      format.set(found.get().format());
      corners.layOn(shown.picture(), found.get().corners());
    } else {
      corners.layOn(shown.picture());
    }
  }

  private void refresh() {
    Optional<ShownPicture> shown = pictures.pictureProperty().get();
    List<Point> four = corners.placesProperty().get();
    if (!chosen || shown.isEmpty() || four.size() != 4) {
      reading.cancel();
      readingNow = false;
      leaveOff();
      return;
    }
    // What is read next would wait behind it, and it is of what was read before.
    learning.stop();
    Picture picture = shown.get().picture();
    SheetFormat paper = format.get();
    Lab paperColour = Light.D65.lab(session.kit().paper().reflectance());
    Optional<Card> lying =
        marks.cardZone(paper).map(zone -> new Card(zone, Card.lightnessOf(card.get())));
    readingNow = true;
    reading.request(
        outdated -> read(picture, paper, four, paperColour, lying),
        outcome -> {
          readingNow = false;
          take(outcome);
        },
        fault -> {
          readingNow = false;
          leaveOff();
          failures.accept(fault);
        });
  }

  private static Outcome read(
      Picture picture,
      SheetFormat format,
      List<Point> corners,
      Lab paperColour,
      Optional<Card> card) {
    FoundSheet placed = new FoundSheet(format, corners, Optional.empty());
    FoundSheet sheet = new FoundSheet(format, corners, SheetFinder.code(picture, placed));
    try {
      SheetReading read = SheetReading.of(picture, sheet, paperColour, card);
      boolean measured = card.isPresent() && !read.paper().equals(paperColour);
      return new Outcome(Optional.of(read), measured, Optional.empty());
    } catch (ReadingFaultException unreadable) {
      return new Outcome(Optional.empty(), false, Optional.of(unreadable.fault()));
    }
  }

  private void take(Outcome outcome) {
    page = outcome.reading();
    measuredPaper = outcome.measuredPaper();
    corners.outline(page.map(SheetModel::outlines).orElse(List.of()));
    assign(outcome.fault());
  }

  private static List<List<Point>> outlines(SheetReading page) {
    Homography place = page.sheet().place().orElseThrow();
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

  /** Finds the paints of the rows anew, and fits them. */
  private void assign(Optional<ReadingFault> fault) {
    if (!chosen || (page.isEmpty() && fault.isEmpty())) {
      return;
    }
    Map<String, List<PaintedCoat>> coats = choices.get().wet() ? Map.of() : dry();
    if (!coats.isEmpty()) {
      share.set(0);
      Learning.Outcome before = new Learning.Outcome(report, Optional.empty());
      state.set(state(fault, before, Learning.Stage.RUNNING));
    }
    learning.from(
        coats,
        share::set,
        found -> {
          report = found.report();
          state.set(state(fault, found, Learning.Stage.DONE));
        });
  }

  private SheetState state(
      Optional<ReadingFault> fault, Learning.Outcome found, Learning.Stage stage) {
    List<SheetRow> rows =
        page.map(p -> SheetRows.of(p, this::paintOf, coats(), found.report())).orElse(List.of());
    Optional<SwappedRows> swapped = SheetRemarks.swapped(rows, session.kit(), library);
    return new SheetState(
        page,
        fault,
        rows,
        found.report(),
        found.refusal(),
        swapped,
        SheetRemarks.of(rows, session.kit(), swapped, page, choices.get(), wet(), found.report()),
        stage);
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
    return page.isEmpty() ? Map.of() : coats().dry(learning.day(), fileName());
  }

  private Map<String, List<PaintedCoat>> wet() {
    return page.isEmpty() ? Map.of() : coats().wet(session.kit().shelf());
  }

  private SheetCoats coats() {
    Map<Integer, String> paints = new HashMap<>();
    SheetReading read = page.orElseThrow();
    read.rows().forEach(row -> paintOf(row).ifPresent(id -> paints.put(row.row(), id)));
    return new SheetCoats(
        read, paints, choices.get().whiteId(), choices.get().blackId(), measuredPaper);
  }

  private String fileName() {
    return pictures.pictureProperty().get().map(ShownPicture::name).orElse("");
  }
}
