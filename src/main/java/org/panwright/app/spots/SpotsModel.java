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
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.panwright.app.Session;
import org.panwright.app.fx.Latest;
import org.panwright.app.swatches.HeldRemarks;
import org.panwright.app.swatches.Learning;
import org.panwright.app.swatches.Lesson;
import org.panwright.app.swatches.PatchChip;
import org.panwright.app.swatches.PictureModel;
import org.panwright.app.swatches.Readout;
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
  private final Lesson lesson;
  private final Consumer<RuntimeException> failures;
  private final Latest<Readout<SpotsReading>> reading;
  private final SpotMarks marks = new SpotMarks();
  private final DoubleProperty card = new SimpleDoubleProperty(Card.GREY);
  private final ObjectProperty<SheetChoices> choices;
  private final ReadOnlyObjectWrapper<SpotsState> state =
      new ReadOnlyObjectWrapper<>(SpotsState.NONE);
  private Readout<SpotsReading> read = Readout.nothing();
  private boolean chosen;

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
    this.failures = failures;
    reading = new Latest<>(away, home);
    lesson = new Lesson(learning, this::show);
    choices = new SimpleObjectProperty<>(SheetChoices.guess(session.kit().shelf()));
    pictures
        .pictureProperty()
        .addListener((property, before, now) -> now.ifPresent(p -> marks.layOn(p.picture())));
    marks.spotsProperty().addListener(changed -> refresh());
    card.addListener(changed -> refresh());
    choices.addListener(changed -> learn());
    session.whenPaintsOrPaperChange(
        () -> {
          if (lesson.isBeingKept()) {
            show();
          } else {
            refresh();
          }
        });
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
    return lesson.shareProperty();
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
    return lesson.canKeep();
  }

  /** Keeps the coats with their paints and predicts from what they teach, as one edit. */
  void keep() {
    if (canKeep()) {
      lesson.keep(coats(), pictures.name());
    }
  }

  /** Leaves off learning; the spots stay, and nothing is kept. */
  void leaveOff() {
    reading.cancel();
    lesson.leaveOff();
  }

  /** Reads the spots anew and learns from them, after leaving off. */
  void takeUp() {
    if (lesson.stage() == Learning.Stage.LEFT_OFF) {
      refresh();
    }
  }

  /** The spots that would be kept, as coats of their paints. */
  Map<String, List<PaintedCoat>> coats() {
    return read.found().map(r -> coatsOf(r).of(lesson.day(), pictures.name())).orElse(Map.of());
  }

  /** Whether what is shown is of the picture, the spots and the kit as they are now. */
  public boolean isSettled() {
    return !state.get().working();
  }

  private SpotCoats coatsOf(SpotsReading r) {
    return new SpotCoats(r, choices.get().whiteId(), choices.get().blackId());
  }

  private void refresh() {
    Optional<ShownPicture> shown = pictures.pictureProperty().get();
    List<Spot> spots = marks.spotsProperty().get();
    if (!chosen || shown.isEmpty() || !SpotsReading.canRead(spots)) {
      reading.cancel();
      take(Readout.nothing());
      return;
    }
    Picture picture = shown.get().picture();
    Lab paper = Light.D65.lab(session.kit().paper().reflectance());
    double reflectance = card.get();
    lesson.begin();
    reading.request(
        outdated -> Readout.of(() -> SpotsReading.of(picture, spots, paper, reflectance)),
        this::take,
        fault -> {
          lesson.end();
          failures.accept(fault);
        });
  }

  private void take(Readout<SpotsReading> outcome) {
    read = outcome;
    learn();
  }

  private void learn() {
    lesson.from(coats());
  }

  private void show() {
    List<Spot> spots = marks.spotsProperty().get();
    state.set(
        new SpotsState(
            rows(spots, lesson.report()),
            !spots.isEmpty() && !SpotsReading.canRead(spots),
            read.fault(),
            read.found().map(r -> remarks(r, lesson.report())).orElse(List.of()),
            lesson.report(),
            lesson.refusal(),
            lesson.stage()));
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
    List<Optional<String>> ids =
        read.found().map(r -> coatsOf(r).ids(pictures.name())).orElse(List.of());
    List<SpotsState.Row> rows = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      Spot spot = spots.get(i);
      int at = i;
      Optional<PatchChip> chip =
          read.found()
              .filter(r -> at < r.spots().size() && isSame(r.spots().get(at), spot))
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
