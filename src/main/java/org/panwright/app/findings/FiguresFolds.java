package org.panwright.app.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.panwright.analysis.finding.StandIn;
import org.panwright.analysis.judge.Judgement;
import org.panwright.analysis.worth.Earning;
import org.panwright.app.fx.Sentence;
import org.panwright.words.LineupFigureWords;

/** The figures behind the findings, folded up at the end of the list. */
final class FiguresFolds {
  private final Fold paints = new Fold();
  private final Fold balance = new Fold();
  private final Fold greys = new Fold();

  /** The parts for a judgement; none for an empty lineup. */
  List<Fold> of(Judgement judgement) {
    if (judgement.earnings().isEmpty()) {
      return List.of();
    }
    paints.hold(LineupFigureWords.PAINTS, () -> paints(judgement));
    balance.hold(
        LineupFigureWords.BALANCE,
        () -> lines(LineupFigureWords.balance(judgement.balance(), judgement.kit())));
    if (judgement.mud().greys().isEmpty()) {
      return List.of(paints, balance);
    }
    greys.hold(
        LineupFigureWords.GREYS,
        () -> lines(LineupFigureWords.greys(judgement.mud().greys(), judgement.kit())));
    return List.of(paints, balance, greys);
  }

  private static List<Node> paints(Judgement judgement) {
    List<Node> rows = new ArrayList<>();
    for (Earning earning : judgement.earnings()) {
      VBox row = new VBox(Sentence.of(LineupFigureWords.earns(earning, judgement)));
      Optional<StandIn> standIn =
          judgement.standIns().stream()
              .filter(s -> s.paintId().equals(earning.paintId()))
              .findFirst();
      standIn.ifPresent(
          s -> {
            String nearest = LineupFigureWords.nearest(s, judgement.kit());
            row.getChildren().add(Sentence.of(nearest, "soft", "small"));
          });
      rows.add(row);
    }
    return rows;
  }

  private static List<Node> lines(List<String> words) {
    List<Node> lines = new ArrayList<>();
    words.forEach(line -> lines.add(Sentence.of(line)));
    return lines;
  }
}
