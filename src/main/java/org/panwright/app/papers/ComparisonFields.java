package org.panwright.app.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.ChoiceBox;
import org.panwright.app.fx.ByLabel;
import org.panwright.kit.Lineup;
import org.panwright.print.ComparisonOptions;
import org.panwright.words.PaperViewWords;

/** What can be chosen about a comparison page. */
final class ComparisonFields extends OrderFields<ComparisonOptions> {
  private final PapersModel model;
  private final ChoiceBox<Optional<String>> others = new ChoiceBox<>();

  ComparisonFields(ComparisonOptions order, PapersModel model) {
    super(ComparisonOptions.class, order, model);
    this.model = model;
    others.setConverter(new ByLabel<>(this::name));
    form().row(PaperViewWords.COMPARED_WITH, others);
    others
        .valueProperty()
        .addListener(
            (property, before, now) -> {
              if (now != null) {
                change(comparison -> comparison.withOtherId(now));
              }
            });
    model.madeProperty().addListener((property, before, now) -> offer());
    offer();
  }

  /** Offers the lineups there are now; one that is gone gives way to the next. */
  private void offer() {
    List<Optional<String>> choices = new ArrayList<>(List.of(Optional.empty()));
    model.lineups().forEach(lineup -> choices.add(Optional.of(lineup.id())));
    if (!others.getItems().equals(choices)) {
      Optional<String> before = others.getValue() == null ? Optional.empty() : others.getValue();
      others.getItems().setAll(choices);
      others.setValue(choices.contains(before) ? before : Optional.empty());
    }
  }

  private String name(Optional<String> lineupId) {
    return lineupId
        .flatMap(
            id -> model.lineups().stream().filter(lineup -> lineup.id().equals(id)).findFirst())
        .map(Lineup::name)
        .orElse(PaperViewWords.NEXT_LINEUP);
  }
}
