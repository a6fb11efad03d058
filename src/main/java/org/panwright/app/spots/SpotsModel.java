package org.panwright.app.spots;

import java.util.ArrayList;
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
import org.panwright.app.swatches.HeldRemarks;
import org.panwright.app.swatches.Learning;
import org.panwright.app.swatches.PatchChip;
import org.panwright.app.swatches.PictureModel;
import org.panwright.app.swatches.SheetChoices;
import org.panwright.app.swatches.SheetRemarks;
import org.panwright.app.swatches.ShownPicture;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.paint.Paint;
import org.panwright.paint.PaintedCoat;
import org.panwright.swatch.kept.PaintFitReport;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.sheet.Card;
import org.panwright.swatch.sheet.ReadingFault;
import org.panwright.swatch.sheet.ReadingFaultException;
import org.panwright.swatch.spot.Spot;
import org.panwright.swatch.spot.SpotCoats;
import org.panwright.swatch.spot.SpotsReading;
import org.panwright.words.PictureWords;
import org.panwright.words.SpotsWords;
import org.panwright.words.SwatchWords;

/**
 * Spots the painter placed on the picture, what is read there, and what the paints learn from it.
 * Reading and fitting run away from the JavaFX thread; the newest request wins.
 */
public final class SpotsModel {
  private final Session session;
  private final PictureModel pictures;
  private final Learning learning;
  private final Consumer<RuntimeException> failures;
  private final Latest<Outcome> reading;
  private final SpotMarks marks = new SpotMarks();
  private final DoubleProperty card = new SimpleDoubleProperty(Card.GREY);
  private final ObjectProperty<SheetChoices> choices;
  private final ReadOnlyObjectWrapper<SpotsState> state =
      new ReadOnlyObjectWrapper<>(SpotsState.NONE);
  private final ReadOnlyDoubleWrapper share = new ReadOnlyDoubleWrapper();
  private Optional<SpotsReading> read = Optional.empty();
  private Optional<PaintFitReport> report = Optional.empty();
  private boolean chosen;

  private record Outcome(Optional<SpotsReading> reading, Optional<ReadingFault> fault) {}

  /**
   * @param learning what the paints learn
   * @param away where spots are read
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public SpotsModel(
      Session session,
      PictureModel pictures,
      Learning learning,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.session = session;
    this.pictures = pictures;
    this.learning = learning;
    this.failures = failures;
    reading = new Latest<>(away, home);
    choices = new SimpleObjectProperty<>(SheetChoices.guess(session.kit().shelf()));
    pictures
        .pictureProperty()
        .addListener((property, before, now) -> now.ifPresent(p -> marks.layOn(p.picture())));
    marks.spotsProperty().addListener(changed -> refresh());
    card.addListener(changed -> refresh());
    choices.addListener(changed -> learn());
    session.whenPaintsOrPaperChange(this::refresh);
  }

  /** The spots on the picture. */
  public SpotMarks marks() {
    return marks;
  }

  /** What is known of them. */
  ReadOnlyObjectProperty<SpotsState> stateProperty() {
    return state.getReadOnlyProperty();
  }

  /** What share of the learning under way is done, 0..1. */
  ReadOnlyDoubleProperty shareProperty() {
    return share.getReadOnlyProperty();
  }

  /** What share of light the card turns back, above 0 and below 1. */
  DoubleProperty cardProperty() {
    return card;
  }

  /** What white and black were stirred in. */
  ObjectProperty<SheetChoices> choicesProperty() {
    return choices;
  }

  /** The kit's paints, to choose from. */
  List<Paint> paints() {
    return session.kit().shelf().paints();
  }

  /** Says whether single spots are what is read on the picture. */
  void setChosen(boolean now) {
    chosen = now;
    refresh();
  }

  /** Whether something could be kept now. */
  boolean canKeep() {
    return state.get().report().isPresent() && state.get().stage() == Learning.Stage.DONE;
  }

  /** Keeps the coats with their paints and predicts from what they teach, as one edit. */
  void keep() {
    if (canKeep()) {
      learning.keep(coats(), state.get().report().orElseThrow(), source());
    }
  }

  /** Leaves off learning; the spots stay, and nothing is kept. */
  void leaveOff() {
    reading.cancel();
    learning.stop();
    if (state.get().working()) {
      Learning.Outcome before = new Learning.Outcome(report, Optional.empty());
      state.set(state(Optional.empty(), before, Learning.Stage.LEFT_OFF));
    }
  }

  /** Reads the spots anew and learns from them, after leaving off. */
  void takeUp() {
    if (state.get().stage() == Learning.Stage.LEFT_OFF) {
      refresh();
    }
  }

  /** The spots that would be kept, as coats of their paints. */
  Map<String, List<PaintedCoat>> coats() {
    return read.map(r -> coatsOf(r).of(learning.day(), source())).orElse(Map.of());
  }

  /** Whether what is shown is of the picture, the spots and the kit as they are now. */
  public boolean isSettled() {
    return !state.get().working();
  }

  private SpotCoats coatsOf(SpotsReading r) {
    return new SpotCoats(r, choices.get().whiteId(), choices.get().blackId());
  }

  private String source() {
    return pictures.pictureProperty().get().map(ShownPicture::name).orElse("");
  }

  private void refresh() {
    Optional<ShownPicture> shown = pictures.pictureProperty().get();
    List<Spot> spots = marks.spotsProperty().get();
    learning.stop();
    if (!chosen || shown.isEmpty() || !SpotsReading.canRead(spots)) {
      reading.cancel();
      take(new Outcome(Optional.empty(), Optional.empty()));
      return;
    }
    Picture picture = shown.get().picture();
    Lab paper = Light.D65.lab(session.kit().paper().reflectance());
    double reflectance = card.get();
    state.set(state(Optional.empty(), Learning.Outcome.NOTHING, Learning.Stage.RUNNING));
    reading.request(
        outdated -> read(picture, spots, paper, reflectance),
        this::take,
        fault -> {
          state.set(state(Optional.empty(), Learning.Outcome.NOTHING, Learning.Stage.DONE));
          failures.accept(fault);
        });
  }

  private static Outcome read(Picture picture, List<Spot> spots, Lab paper, double reflectance) {
    try {
      return new Outcome(
          Optional.of(SpotsReading.of(picture, spots, paper, reflectance)), Optional.empty());
    } catch (ReadingFaultException unreadable) {
      return new Outcome(Optional.empty(), Optional.of(unreadable.fault()));
    }
  }

  private void take(Outcome outcome) {
    read = outcome.reading();
    if (outcome.fault().isPresent() || read.isEmpty()) {
      report = Optional.empty();
      state.set(state(outcome.fault(), Learning.Outcome.NOTHING, Learning.Stage.DONE));
    } else {
      learn();
    }
  }

  private void learn() {
    Map<String, List<PaintedCoat>> coats = coats();
    if (!coats.isEmpty()) {
      share.set(0);
      state.set(
          state(
              Optional.empty(),
              new Learning.Outcome(report, Optional.empty()),
              Learning.Stage.RUNNING));
    }
    learning.from(
        coats,
        share::set,
        found -> {
          report = found.report();
          state.set(state(Optional.empty(), found, Learning.Stage.DONE));
        });
  }

  private SpotsState state(
      Optional<ReadingFault> fault, Learning.Outcome found, Learning.Stage stage) {
    List<Spot> spots = marks.spotsProperty().get();
    return new SpotsState(
        rows(spots, found.report()),
        !spots.isEmpty() && !SpotsReading.canRead(spots),
        fault,
        read.map(r -> remarks(r, found.report())).orElse(List.of()),
        found.report(),
        found.refusal(),
        stage);
  }

  private List<String> remarks(SpotsReading r, Optional<PaintFitReport> fit) {
    List<String> remarks = new ArrayList<>();
    r.notes().forEach(note -> remarks.add(PictureWords.sentence(note)));
    HeldRemarks held = new HeldRemarks();
    for (int i = 0; i < r.patches().size(); i++) {
      String place = SpotsWords.spot(i + 1);
      r.patches().get(i).ifPresent(patch -> held.add(place, patch));
    }
    remarks.addAll(held.sentences());
    SheetRemarks.odd(session.kit(), fit).ifPresent(remarks::add);
    fit.flatMap(SwatchWords::darks).ifPresent(remarks::add);
    return remarks;
  }

  /** Spots moved since the reading are shown as they were read until they are read anew. */
  private List<SpotsState.Row> rows(List<Spot> spots, Optional<PaintFitReport> fit) {
    List<Optional<String>> ids = read.map(r -> coatsOf(r).ids(source())).orElse(List.of());
    List<SpotsState.Row> rows = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      Spot spot = spots.get(i);
      int at = i;
      Optional<PatchChip> chip =
          read.filter(r -> at < r.spots().size() && isSame(r.spots().get(at), spot))
              .flatMap(r -> r.patches().get(at))
              .map(
                  patch ->
                      PatchChip.of(
                          SpotsWords.kind(spot.kind()),
                          patch,
                          ids.get(at).flatMap(id -> PatchChip.fit(spot.paintId(), id, fit))));
      rows.add(new SpotsState.Row(spot, chip));
    }
    return rows;
  }

  private static boolean isSame(Spot was, Spot now) {
    return was.kind() == now.kind() && was.paintId().equals(now.paintId());
  }
}
