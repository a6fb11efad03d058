package org.panwright.app.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.panwright.analysis.compare.LineupPair;
import org.panwright.analysis.fill.PaintPlaces;
import org.panwright.app.fx.Parted;
import org.panwright.kit.FilledWell;
import org.panwright.kit.Kit;
import org.panwright.words.FillViewWords;
import org.panwright.words.FillWords;

/** Where every paint is, over all boxes; beneath it which two boxes go well together. */
final class WherePart extends VBox implements Parted {
  /** One line: a paint in one well, or in tubes only. */
  private record Row(PaintPlaces paint, Optional<PaintPlaces.Place> place) {}

  private final FillModel model;
  private final CheckBox doubles = new CheckBox(FillViewWords.DOUBLES);
  private final TextTable<Row> places;
  private final TextTable<LineupPair> pairs;

  WherePart(FillModel model) {
    super(10);
    this.model = model;
    getStyleClass().add("fill-part");
    places =
        new TextTable<Row>(FillViewWords.WHERE, FillViewWords.NO_PLACES)
            .words(FillViewWords.PAINT, 190, r -> FillWords.paint(r.paint().paintId(), kit()))
            .figures(
                FillViewWords.IN_TUBES,
                90,
                r -> r.paint().leftMl(),
                r -> FillWords.ml(r.paint().leftMl()))
            .words(FillViewWords.BOX, 150, r -> of(r, p -> FillWords.box(p.boxId(), kit())))
            .words(FillViewWords.WELL, 80, this::well)
            .words(FillViewWords.PLANNED_IN, 200, r -> of(r, this::lineups))
            .figures(
                FillViewWords.FILLED,
                140,
                r -> filled(r).map(FilledWell::leftMl).orElse(-1.0),
                r -> filled(r).map(this::amount).orElse("–"))
            .words(FillViewWords.AGE, 120, r -> of(r, p -> FillWords.age(p.ageDays())));
    pairs =
        new TextTable<LineupPair>(FillViewWords.TOGETHER, FillViewWords.NO_PAIRS)
            .words(
                FillViewWords.BOTH, 300, p -> FillWords.together(p.firstId(), p.secondId(), kit()))
            .figures(FillViewWords.COLOURS, 90, LineupPair::reach, p -> "" + p.reach())
            .figures(FillViewWords.GAIN, 120, LineupPair::gain, p -> "+" + p.gain())
            .figures(
                FillViewWords.OF_RING,
                120,
                LineupPair::ringShare,
                p -> Math.round(100 * p.ringShare()) + " %")
            .words(FillViewWords.TWICE, 260, p -> FillWords.paints(p.doubled(), kit()));
    pairs.setPrefHeight(170);
    pairs.setMinHeight(120);
    VBox.setVgrow(places, Priority.ALWAYS);
    doubles.selectedProperty().addListener(changed -> show());
    Label heading = new Label(FillViewWords.TOGETHER);
    heading.getStyleClass().add("part-heading");
    getChildren().setAll(doubles, places, heading, pairs);
  }

  @Override
  public List<Node> parts() {
    return List.copyOf(getChildren());
  }

  /** Shows the kit as it is now. */
  void show() {
    List<Row> rows = new ArrayList<>();
    for (PaintPlaces paint : model.places()) {
      if (doubles.isSelected() && !paint.isDoubled()) {
        continue;
      }
      if (paint.places().isEmpty()) {
        rows.add(new Row(paint, Optional.empty()));
      }
      paint.places().forEach(place -> rows.add(new Row(paint, Optional.of(place))));
    }
    places.getItems().setAll(rows);
    places.sort();
    pairs.getItems().setAll(model.furtherProperty().get().pairs());
    pairs.sort();
  }

  private Kit kit() {
    return model.kit();
  }

  private String well(Row row) {
    return of(
        row,
        place -> {
          String label = FillWords.wellLabel(kit(), place.boxId(), place.wellId());
          return place.beside() ? FillWords.beside(label) : label;
        });
  }

  private static String of(Row row, java.util.function.Function<PaintPlaces.Place, String> text) {
    return row.place().map(text).orElse("–");
  }

  private String lineups(PaintPlaces.Place place) {
    return place.lineupIds().isEmpty()
        ? "–"
        : String.join(
            ", ", place.lineupIds().stream().map(id -> FillWords.lineup(id, kit())).toList());
  }

  private static Optional<FilledWell> filled(Row row) {
    return row.place().flatMap(PaintPlaces.Place::filled);
  }

  private String amount(FilledWell filled) {
    return FillWords.ofFilled(filled);
  }
}
