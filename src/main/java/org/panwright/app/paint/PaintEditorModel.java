package org.panwright.app.paint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.panwright.app.fx.TypedNumber;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsOrigin;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Swatchbook;
import org.panwright.words.PaintEditorWords;

/** A paint while it is being edited: the fields, what is not right yet, and the paint they make. */
final class PaintEditorModel {
  private static final int PERCENT_DECIMALS = 2;

  private final PigmentLibrary library;
  private final Optional<Paint> start;
  private String id;
  private final StringProperty name = new SimpleStringProperty("");
  private final StringProperty maker = new SimpleStringProperty("");
  private final StringProperty note = new SimpleStringProperty("");
  private final ObjectProperty<Ownership> ownership = new SimpleObjectProperty<>(Ownership.OWNED);
  private final ObservableList<PigmentPart> pigments =
      FXCollections.observableArrayList(part -> new Observable[] {part.partsProperty()});
  private final HandlingFields handling;
  private final Optional<Optics> measured;
  private final BooleanProperty keepMeasured = new SimpleBooleanProperty(true);
  private final ReadOnlyStringWrapper added = new ReadOnlyStringWrapper("");
  private final ObservableValue<String> impliedName;
  private final ObservableValue<String> nameProblem;
  private final ObservableValue<String> pigmentsProblem;
  private final ObservableValue<Optional<Paint>> look;
  private final ObservableValue<Optional<Paint>> paint;

  private PaintEditorModel(PigmentLibrary library, Optional<Paint> start, String id) {
    this.library = library;
    this.start = start;
    this.id = id;
    measured = start.flatMap(Paint::measured);
    start.ifPresent(this::fillIn);
    handling =
        new HandlingFields(
            pigments, () -> library.usualHandling(shares()), start.map(Paint::handling));
    impliedName = Bindings.createStringBinding(this::impliedName, pigments);
    nameProblem = Bindings.createStringBinding(this::nameProblem, name, pigments);
    pigmentsProblem = Bindings.createStringBinding(this::pigmentsProblem, pigments);
    look = Bindings.createObjectBinding(() -> toPaint(id), pigments, keepMeasured);
    paint =
        Bindings.createObjectBinding(
            () -> called().isEmpty() ? Optional.empty() : toPaint(called()),
            name,
            maker,
            note,
            ownership,
            pigments,
            keepMeasured,
            handling.property());
  }

  /** An editor for a paint that is not on the shelf yet. */
  static PaintEditorModel ofNew(PigmentLibrary library, String id) {
    return new PaintEditorModel(library, Optional.empty(), id);
  }

  /** An editor that starts from a paint and keeps or changes its id. */
  static PaintEditorModel of(PigmentLibrary library, Paint start, String id) {
    return new PaintEditorModel(library, Optional.of(start), id);
  }

  /**
   * Goes on with another paint that is not on the shelf yet; maker and ownership stay.
   *
   * @param before the name of the one just put there
   */
  void startAnew(String newId, String before) {
    id = newId;
    added.set(PaintEditorWords.added(before));
    name.set("");
    note.set("");
    pigments.clear();
    handling.asUsualProperty().set(true);
  }

  /** What was just put on the shelf; empty if nothing was. */
  ReadOnlyStringProperty addedProperty() {
    return added.getReadOnlyProperty();
  }

  /** The name the paint has if none is typed: that of its only pigment; else empty. */
  ObservableValue<String> impliedNameProperty() {
    return impliedName;
  }

  private String impliedName() {
    return pigments.size() == 1
        ? library
            .find(pigments.get(0).pigment())
            .map(pigment -> PaintEditorWords.nameAfter(pigment))
            .orElse("")
        : "";
  }

  private String called() {
    return name.get().isBlank() ? impliedName() : name.get().strip();
  }

  /** Asked for only once there is a pigment: an untouched form is not at fault. */
  private String nameProblem() {
    return called().isEmpty() && !pigments.isEmpty() ? PaintEditorWords.NAME_NEEDED : "";
  }

  private void fillIn(Paint paint) {
    name.set(paint.name());
    maker.set(paint.maker());
    note.set(paint.note());
    ownership.set(paint.ownership());
    for (PigmentShare share : paint.pigments()) {
      pigments.add(new PigmentPart(share.pigment(), percent(share)));
    }
  }

  private static String percent(PigmentShare share) {
    return TypedNumber.write(share.share() * 100, PERCENT_DECIMALS);
  }

  PigmentLibrary library() {
    return library;
  }

  StringProperty nameProperty() {
    return name;
  }

  StringProperty makerProperty() {
    return maker;
  }

  StringProperty noteProperty() {
    return note;
  }

  ObjectProperty<Ownership> ownershipProperty() {
    return ownership;
  }

  HandlingFields handling() {
    return handling;
  }

  /** The pigments in the order of the tube; each code once. */
  ObservableList<PigmentPart> pigments() {
    return pigments;
  }

  /** Whether the paint has optics of its own, from swatches or a spectral file. */
  boolean isMeasured() {
    return measured.isPresent();
  }

  /** Whether those optics are kept; if not, the colour is estimated from the pigments. */
  BooleanProperty keepMeasuredProperty() {
    return keepMeasured;
  }

  /** What is not right with the name; empty if nothing is. */
  ObservableValue<String> nameProblemProperty() {
    return nameProblem;
  }

  /** What is not right with the pigments; empty if nothing is. */
  ObservableValue<String> pigmentsProblemProperty() {
    return pigmentsProblem;
  }

  /** The paint the fields make; empty while something is not right. */
  ObservableValue<Optional<Paint>> paintProperty() {
    return paint;
  }

  /** The paint as far as its colour goes: also there while only the name is not right. */
  ObservableValue<Optional<Paint>> lookProperty() {
    return look;
  }

  /** Adds a pigment with as many parts as the others have on average; once only. */
  void add(PigmentName pigment) {
    if (pigments.stream().anyMatch(part -> part.pigment().equals(pigment))) {
      return;
    }
    double usual =
        pigments.stream()
            .map(PigmentPart::amount)
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .average()
            .orElse(1);
    pigments.add(new PigmentPart(pigment, TypedNumber.write(usual, 1)));
  }

  void remove(PigmentPart part) {
    pigments.remove(part);
  }

  /** The share of a part in all, 0..1; empty while a part is not right. */
  OptionalDouble share(PigmentPart part) {
    return shares().stream()
        .filter(share -> share.pigment().equals(part.pigment()))
        .mapToDouble(PigmentShare::share)
        .findFirst();
  }

  private String pigmentsProblem() {
    if (pigments.isEmpty()) {
      return PaintEditorWords.PIGMENT_NEEDED;
    }
    return pigments.stream()
        .filter(part -> part.amount().isEmpty())
        .findFirst()
        .map(part -> PaintEditorWords.partsWrong(part.pigment().toString()))
        .orElse("");
  }

  private Optional<Paint> toPaint(String called) {
    List<PigmentShare> shares = shares();
    if (shares.isEmpty()) {
      return Optional.empty();
    }
    Paint typed =
        new Paint(
            id,
            called,
            maker.get().strip(),
            shares,
            handling.value(),
            ownership.get(),
            measured,
            note.get().strip(),
            start.map(Paint::swatchbook).orElse(Swatchbook.EMPTY));
    boolean keeps = measured.isEmpty() || keepMeasured.get();
    return Optional.of(keeps ? typed : typed.using(Optional.empty(), OpticsOrigin.ESTIMATE));
  }

  /**
   * The shares typed, exactly as they were if nothing was changed; empty while one is not right.
   */
  private List<PigmentShare> shares() {
    List<PigmentShare> before = start.map(Paint::pigments).orElse(List.of());
    if (isUntouched(before)) {
      return before;
    }
    double total = 0;
    for (PigmentPart part : pigments) {
      if (part.amount().isEmpty()) {
        return List.of();
      }
      total += part.amount().getAsDouble();
    }
    List<PigmentShare> shares = new ArrayList<>();
    for (PigmentPart part : pigments) {
      shares.add(new PigmentShare(part.pigment(), part.amount().getAsDouble() / total));
    }
    return shares;
  }

  private boolean isUntouched(List<PigmentShare> before) {
    if (before.size() != pigments.size()) {
      return false;
    }
    for (int i = 0; i < before.size(); i++) {
      PigmentPart now = pigments.get(i);
      boolean same =
          now.pigment().equals(before.get(i).pigment())
              && now.partsProperty().get().equals(percent(before.get(i)));
      if (!same) {
        return false;
      }
    }
    return true;
  }
}
