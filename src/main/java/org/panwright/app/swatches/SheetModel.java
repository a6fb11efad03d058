package org.panwright.app.swatches;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyDoubleProperty;
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
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.sheet.Card;
import org.panwright.swatch.sheet.FoundSheet;
import org.panwright.swatch.sheet.RowReading;
import org.panwright.swatch.sheet.SheetCoats;
import org.panwright.swatch.sheet.SheetFormat;
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
  private final Lesson lesson;
  private final Consumer<RuntimeException> failures;
  private final Latest<Readout<ReadPage>> reading;
  private final Corners corners = new Corners();
  private final SheetMarks marks = new SheetMarks(corners);
  private final DoubleProperty card = new SimpleDoubleProperty(Card.GREY);
  private final ObjectProperty<SheetFormat> format = new SimpleObjectProperty<>(SheetFormat.A4);
  private final ObjectProperty<SheetChoices> choices;
  private final ReadOnlyObjectWrapper<SheetState> state =
      new ReadOnlyObjectWrapper<>(SheetState.NONE);
  private final RowPaints rowPaints = new RowPaints();
  private Readout<ReadPage> page = Readout.nothing();
  private boolean chosen;
  private boolean readingNow;

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
    this.failures = failures;
    reading = new Latest<>(away, home);
    lesson = new Lesson(learning, this::show);
    choices = new SimpleObjectProperty<>(SheetChoices.guess(session.kit().shelf()));
    pictures.pictureProperty().addListener((property, before, now) -> now.ifPresent(this::layOn));
    corners.placesProperty().addListener(changed -> refresh());
    marks.cardProperty().addListener(changed -> refresh());
    card.addListener(changed -> refresh());
    format.addListener(changed -> refresh());
    choices.addListener(changed -> assign());
    session.whenPaintsOrPaperChange(
        () -> {
          if (lesson.isBeingKept()) {
            show();
          } else {
            assign();
          }
        });
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
    return lesson.shareProperty();
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
    rowPaints.say(row, paintId);
    assign();
  }

  /** Exchanges the paints of two places in the list of rows. */
  void exchange(int first, int second) {
    SheetRow one = state.get().rows().get(first);
    SheetRow two = state.get().rows().get(second);
    rowPaints.say(one.reading().row(), two.paintId());
    rowPaints.say(two.reading().row(), one.paintId());
    assign();
  }

  /** Whether something could be kept now. */
  boolean canKeep() {
    return choices.get().wet() ? !wet().isEmpty() : lesson.canKeep();
  }

  /** Keeps the coats with their paints and predicts from what they teach, as one edit. */
  void keep() {
    if (!canKeep()) {
      return;
    }
    if (choices.get().wet()) {
      session.perform(new SwatchEdit.RecordSwatches(wet()));
    } else {
      lesson.keep(dry(), pictures.name());
    }
  }

  /** Leaves off learning; what was read stays, and nothing is kept. */
  void leaveOff() {
    lesson.leaveOff();
  }

  /** Learns from the coats as they are, after leaving off. */
  void takeUp() {
    if (lesson.stage() == Learning.Stage.LEFT_OFF) {
      assign();
    }
  }

  /** Whether what is shown is of the picture, the corners and the kit as they are now. */
  public boolean isSettled() {
    return pictures.isSettled() && !readingNow && !state.get().learning();
  }

  private void layOn(ShownPicture shown) {
    rowPaints.clear();
    lesson.forget();
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
    lesson.pause();
    Picture picture = shown.get().picture();
    SheetFormat paper = format.get();
    Lab paperColour = Light.D65.lab(session.kit().paper().reflectance());
    Optional<Card> lying =
        marks.cardZone(paper).map(zone -> new Card(zone, Card.lightnessOf(card.get())));
    readingNow = true;
    reading.request(
        outdated -> Readout.of(() -> ReadPage.of(picture, paper, four, paperColour, lying)),
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

  private void take(Readout<ReadPage> outcome) {
    page = outcome;
    corners.outline(page.found().map(ReadPage::outlines).orElse(List.of()));
    assign();
  }

  /** Finds the paints of the rows anew, and fits them. */
  private void assign() {
    if (chosen && !page.isNothing()) {
      lesson.from(choices.get().wet() ? Map.of() : dry());
    }
  }

  private void show() {
    Optional<SheetReading> reading = page.found().map(ReadPage::reading);
    List<SheetRow> rows =
        reading
            .map(read -> SheetRows.of(read, this::paintOf, coats(), lesson.report()))
            .orElse(List.of());
    Optional<SwappedRows> swapped = SheetRemarks.swapped(rows, session.kit(), library);
    state.set(
        new SheetState(
            reading,
            page.fault(),
            rows,
            lesson.report(),
            lesson.refusal(),
            swapped,
            SheetRemarks.of(
                rows, session.kit(), swapped, reading, choices.get(), wet(), lesson.report()),
            lesson.stage()));
  }

  private Optional<String> paintOf(RowReading row) {
    return rowPaints.of(row, session.kit().shelf());
  }

  private Map<String, List<PaintedCoat>> dry() {
    return page.found().isEmpty() ? Map.of() : coats().dry(lesson.day(), pictures.name());
  }

  private Map<String, List<PaintedCoat>> wet() {
    return page.found().isEmpty() ? Map.of() : coats().wet(session.kit().shelf());
  }

  private SheetCoats coats() {
    Map<Integer, String> paints = new HashMap<>();
    ReadPage read = page.found().orElseThrow();
    read.reading().rows().forEach(row -> paintOf(row).ifPresent(id -> paints.put(row.row(), id)));
    return new SheetCoats(
        read.reading(),
        paints,
        choices.get().whiteId(),
        choices.get().blackId(),
        read.measuredPaper());
  }
}
