package org.panwright.app.outing;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.stream.Stream;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.CommittedField;
import org.panwright.app.fx.Sentence;
import org.panwright.app.fx.TypedNumber;
import org.panwright.kit.Lineup;
import org.panwright.kit.Outing;
import org.panwright.kit.PackingRates;
import org.panwright.kit.SheetSize;
import org.panwright.words.OutingWords;
import org.panwright.words.SheetWords;

/** Day, place, lineup, sheets, subject colours and rates of the outing looked at. */
final class OutingForm extends VBox {
  private final OutingModel model;
  private final CommittedField name;
  private final CommittedField date;
  private final Label dateNote = Sentence.of("", "warn");
  private final CommittedField place;
  private final ChoiceBox<Optional<String>> lineup = new ChoiceBox<>();
  private final CommittedField hours;
  private final CommittedField sheets;
  private final ChoiceBox<SheetSize> size = new ChoiceBox<>();
  private final CommittedField width;
  private final CommittedField height;
  private final FlowPane subjects = new FlowPane(6, 6);
  private final Label noSubjects = Sentence.of(OutingWords.NO_SUBJECTS, "soft");
  private final Map<Rate, CommittedField> rates = new EnumMap<>(Rate.class);
  private String shownId = "";
  private boolean following;

  /**
   * @param later when all below the first fields is put in
   */
  OutingForm(OutingModel model, Executor later) {
    this.model = model;
    OutingEntries entries = new OutingEntries(model);
    name = new CommittedField(entries::name);
    date = new CommittedField(entries::date);
    place = new CommittedField(entries::place);
    hours = new CommittedField(entries::hours);
    sheets = new CommittedField(entries::sheets);
    width = new CommittedField(entries::widthMm);
    height = new CommittedField(entries::heightMm);
    getStyleClass().add("outing-form");
    date.setPromptText(OutingWords.DATE_HINT);
    dateNote.managedProperty().bind(dateNote.textProperty().isNotEmpty());
    lineup.setConverter(new ByLabel<>(this::lineupName));
    size.setConverter(new ByLabel<>(SheetWords::size));
    for (Rate rate : Rate.values()) {
      rates.put(rate, new CommittedField(typed -> entries.rate(typed, rate)));
    }
    whenChosen();
    getChildren().setAll(plan(later));
    later.execute(() -> getChildren().add(subjectPart()));
    later.execute(() -> getChildren().add(ratePart()));
    model.chosenProperty().addListener(changed -> show());
    show();
  }

  private FormGrid plan(Executor later) {
    FormGrid form = new FormGrid();
    form.row(OutingWords.NAME, name, name.problemProperty());
    form.row(OutingWords.DATE, new VBox(3, date, dateNote), date.problemProperty());
    form.row(OutingWords.PLACE, place);
    form.row(OutingWords.LINEUP, lineup);
    date.setAccessibleText(OutingWords.DATE);
    later.execute(() -> addSheets(form));
    return form;
  }

  private void addSheets(FormGrid form) {
    form.row(OutingWords.HOURS, hours, hours.problemProperty());
    form.row(OutingWords.SHEETS, sheets, sheets.problemProperty());
    form.row(OutingWords.SIZE, size);
    form.row(OutingWords.WIDTH, width, width.problemProperty());
    form.row(OutingWords.HEIGHT, height, height.problemProperty());
  }

  private VBox subjectPart() {
    Label title = Sentence.of(OutingWords.SUBJECTS, "part-heading");
    subjects.getStyleClass().add("subject-chips");
    // Not among the chips: a flow is never narrower than its widest child on one line.
    return new VBox(6, title, subjects, noSubjects);
  }

  private TitledPane ratePart() {
    FormGrid form = new FormGrid();
    for (Rate rate : Rate.values()) {
      rates.get(rate).setPrefColumnCount(5);
      form.row(rate.words(), rates.get(rate), rates.get(rate).problemProperty());
    }
    Button usual = new Button(OutingWords.USUAL_RATES);
    usual.setOnAction(event -> model.change(outing -> outing.withRates(PackingRates.USUAL)));
    VBox content = new VBox(10, Sentence.of(OutingWords.RATES_NOTE, "soft"), form, usual);
    TitledPane pane = new TitledPane(OutingWords.RATES, content);
    pane.setExpanded(false);
    pane.setAnimated(false);
    return pane;
  }

  private void whenChosen() {
    lineup
        .valueProperty()
        .addListener(
            (property, before, now) -> {
              if (!following && now != null) {
                model.change(outing -> outing.withLineup(now));
              }
            });
    size.valueProperty()
        .addListener(
            (property, before, now) -> {
              if (!following && now != null) {
                model.change(outing -> outing.withSheetSize(now));
              }
            });
  }

  private void show() {
    Optional<Outing> chosen = model.chosenProperty().get();
    setDisable(chosen.isEmpty());
    chosen.ifPresent(this::show);
  }

  private void show(Outing outing) {
    following = true;
    if (!shownId.equals(outing.id())) {
      // What was typed for another outing and could not be used must not stay here.
      fields().forEach(field -> field.showAnew(""));
      shownId = outing.id();
    }
    name.show(outing.name());
    date.show(outing.date().map(LocalDate::toString).orElse(""));
    dateNote.setText(OutingWords.dayNote(model.day()));
    place.show(outing.place());
    lineup
        .getItems()
        .setAll(
            Stream.concat(
                    Stream.of(Optional.<String>empty()),
                    model.lineups().stream().map(l -> Optional.of(l.id())))
                .toList());
    lineup.setValue(outing.lineupId());
    hours.show(TypedNumber.write(outing.hours(), 2));
    sheets.show(Integer.toString(outing.sheets()));
    size.getItems().setAll(sizes(outing.sheetSize()));
    size.setValue(outing.sheetSize());
    width.show(TypedNumber.write(outing.sheetSize().widthMm(), 1));
    height.show(TypedNumber.write(outing.sheetSize().heightMm(), 1));
    rates.forEach((rate, field) -> field.show(TypedNumber.write(rate.get(outing.rates()), 4)));
    subjects.getChildren().setAll(outing.subjects().stream().map(SubjectChip::new).toList());
    subjects.setManaged(!outing.subjects().isEmpty());
    noSubjects.setVisible(outing.subjects().isEmpty());
    noSubjects.setManaged(outing.subjects().isEmpty());
    following = false;
  }

  private List<CommittedField> fields() {
    return Stream.concat(
            Stream.of(name, date, place, hours, sheets, width, height), rates.values().stream())
        .toList();
  }

  private static List<SheetSize> sizes(SheetSize own) {
    return SheetWords.OFFERED.contains(own)
        ? SheetWords.OFFERED
        : Stream.concat(SheetWords.OFFERED.stream(), Stream.of(own)).toList();
  }

  private String lineupName(Optional<String> id) {
    return id.flatMap(
            wanted -> model.lineups().stream().filter(l -> l.id().equals(wanted)).findFirst())
        .map(Lineup::name)
        .orElse(OutingWords.NO_LINEUP);
  }
}
