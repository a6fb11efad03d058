package org.panwright.app.compare;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.panwright.analysis.compare.Comparison;
import org.panwright.analysis.reach.Ring;
import org.panwright.app.Session;
import org.panwright.app.fx.Sentence;
import org.panwright.app.recipes.Wanted;
import org.panwright.app.ring.RingCursor;
import org.panwright.app.ring.TwoRings;
import org.panwright.colour.Lab;
import org.panwright.kit.Kit;
import org.panwright.words.CompareWords;
import org.panwright.words.ComparisonWords;
import org.panwright.words.RingWords;

/** What two lineups win and lose against each other, in a ring and in sentences. */
final class ComparedSide extends ScrollPane {
  private final Session session;
  private final Runnable open;
  private final RingCursor cursor;
  private final TwoRings rings;
  private final Label key = Sentence.of(CompareWords.RING_KEY, "soft", "small");
  private final VBox content = new VBox(10);
  private Optional<Compared> shown = Optional.empty();

  /**
   * @param session where what is picked is picked
   * @param open shows what is picked large
   */
  ComparedSide(Session session, Runnable open) {
    this.session = session;
    this.open = open;
    cursor = new RingCursor(session.selectionProperty()::set);
    rings = new TwoRings(cursor);
    getStyleClass().add("compared-side");
    content.getStyleClass().add("compared-content");
    rings.setPrefHeight(270);
    setContent(content);
    setFitToWidth(true);
    setPrefWidth(390);
    setMinWidth(330);
    cursor.placeProperty().addListener(changed -> shown.ifPresent(this::tellRing));
  }

  void show(Optional<Compared> compared) {
    shown = compared;
    content.getChildren().clear();
    if (compared.isEmpty()) {
      rings.clear();
      return;
    }
    show(compared.get());
  }

  private void show(Compared shown) {
    Comparison comparison = shown.comparison();
    Kit kit = shown.ofFirst().kit();
    String first = shown.first().label();
    String second = shown.second().label();
    rings.show(
        shown.ofFirst().ring(),
        shown.ofSecond().ring(),
        shown.ofFirst().shelfRing(),
        comparison.lost(),
        comparison.won());
    tellRing(shown);
    content.getChildren().addAll(rings, key);
    part(CompareWords.HUES, ComparisonWords.hues(comparison));
    part(CompareWords.COLOURS, List.of(ComparisonWords.reach(comparison, first, second)));
    samples(comparison.onlyFirst(), first);
    samples(comparison.onlySecond(), second);
    part(CompareWords.DARKS, List.of(ComparisonWords.darks(comparison, first, second)));
    if (!shown.subjects().isEmpty()) {
      part(
          CompareWords.SUBJECTS,
          ComparisonWords.subjects(
              shown.subjects(), shown.ofFirst(), shown.ofSecond(), first, second));
    }
    part(CompareWords.PAINTS, ComparisonWords.paints(comparison, kit, first, second));
    part(
        CompareWords.CAUTIONS,
        ComparisonWords.cautions(shown.ofFirst(), shown.ofSecond(), first, second));
    part(
        CompareWords.MOVES,
        ComparisonWords.moves(comparison, kit, kit.boxOf(shown.first().lineup())));
  }

  private void samples(List<Lab> colours, String lineup) {
    if (!colours.isEmpty()) {
      content
          .getChildren()
          .add(
              new SampleStrip(
                  colours,
                  lineup,
                  (lab, name) -> session.selectionProperty().set(Wanted.colour(lab, name)),
                  open));
    }
  }

  /** Says how far both get in the hue gone to, or else what the figure is. */
  private void tellRing(Compared shown) {
    String first = shown.first().label();
    String second = shown.second().label();
    Optional<RingCursor.Place> gone = cursor.placeProperty().get();
    String said =
        gone.map(
                at ->
                    RingWords.compared(
                        at.hueDeg(),
                        at.chroma(),
                        first,
                        shown.ofFirst().ring().chroma(Ring.step(at.hueDeg())),
                        second,
                        shown.ofSecond().ring().chroma(Ring.step(at.hueDeg()))))
            .orElse(CompareWords.RING_KEY);
    key.setText(said);
    rings.setAccessibleText(gone.isPresent() ? said : CompareWords.ringFigure(first, second));
  }

  private void part(String title, List<String> sentences) {
    Label heading = new Label(title);
    heading.getStyleClass().add("part-heading");
    VBox part = new VBox(3, heading);
    sentences.forEach(text -> part.getChildren().add(Sentence.of(text)));
    content.getChildren().add(part);
  }
}
