package org.panwright.app.compare;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.CornerRadii;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.analysis.Comparison;
import org.panwright.app.fx.Sentence;
import org.panwright.app.fx.Swatches;
import org.panwright.app.ring.TwoRings;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.kit.Kit;
import org.panwright.words.ColourWords;
import org.panwright.words.CompareWords;
import org.panwright.words.ComparisonWords;

/** What two lineups win and lose against each other, in a ring and in sentences. */
final class ComparedSide extends ScrollPane {
  private static final double SWATCH = 20;

  private final TwoRings rings = new TwoRings();
  private final VBox content = new VBox(10);

  ComparedSide() {
    getStyleClass().add("compared-side");
    content.getStyleClass().add("compared-content");
    rings.setPrefHeight(270);
    setContent(content);
    setFitToWidth(true);
    setPrefWidth(390);
    setMinWidth(330);
  }

  void show(Optional<Compared> compared) {
    content.getChildren().clear();
    if (compared.isEmpty()) {
      rings.clear();
      return;
    }
    Compared shown = compared.get();
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
    rings.setAccessibleText(CompareWords.ringFigure(first, second));
    Label key = Sentence.of(CompareWords.RING_KEY);
    key.getStyleClass().addAll("soft", "small");
    content.getChildren().addAll(rings, key);
    part(CompareWords.HUES, ComparisonWords.hues(comparison));
    part(CompareWords.COLOURS, List.of(ComparisonWords.reach(comparison, first, second)));
    content.getChildren().add(samples(comparison.onlyFirst(), first));
    content.getChildren().add(samples(comparison.onlySecond(), second));
    part(CompareWords.DARKS, List.of(ComparisonWords.darks(comparison, first, second)));
    if (!shown.subjects().isEmpty()) {
      part(
          CompareWords.SUBJECTS,
          shown.subjects().stream()
              .map(pair -> ComparisonWords.subject(pair, first, second))
              .toList());
    }
    part(CompareWords.PAINTS, ComparisonWords.paints(comparison, kit, first, second));
    part(
        CompareWords.CAUTIONS,
        ComparisonWords.cautions(shown.ofFirst(), shown.ofSecond(), first, second));
    part(
        CompareWords.MOVES,
        ComparisonWords.moves(comparison, kit, kit.boxOf(shown.first().lineup())));
  }

  private void part(String title, List<String> sentences) {
    Label heading = new Label(title);
    heading.getStyleClass().add("part-heading");
    VBox part = new VBox(3, heading);
    sentences.forEach(text -> part.getChildren().add(Sentence.of(text)));
    content.getChildren().add(part);
  }

  private static Node samples(List<Lab> colours, String lineup) {
    FlowPane row = new FlowPane(3, 3);
    if (!colours.isEmpty()) {
      Label whose = new Label(lineup);
      whose.getStyleClass().addAll("soft", "small");
      row.getChildren().add(whose);
    }
    for (Lab colour : colours) {
      Region swatch = new Region();
      swatch.setMinSize(SWATCH, SWATCH);
      swatch.setBackground(
          new Background(
              new BackgroundFill(Swatches.color(colour), new CornerRadii(2), Insets.EMPTY)));
      String words =
          CompareWords.sample(
              ColourWords.describe(Oklab.ofD65(colour.toXyz(Light.D65.white())).toOklch()), lineup);
      swatch.setAccessibleText(words);
      Tooltip.install(swatch, new Tooltip(words));
      row.getChildren().add(swatch);
    }
    return row;
  }
}
