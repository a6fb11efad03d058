package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.analysis.judge.Judgement;
import org.panwright.colour.Srgb;
import org.panwright.kit.Box;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Paint;
import org.panwright.paint.Wash;
import org.panwright.print.FittedText.Align;

/** A small box with a cream wash and the codes in each well, for a page of two lineups. */
final class ComparedBox {
  private static final double TEXT_PT = 5.5;

  private ComparedBox() {}

  static List<Mark> of(Judgement judgement, String name, Area area) {
    Kit kit = judgement.kit();
    Lineup lineup = kit.lineup(judgement.lineupId()).orElseThrow();
    Box box = kit.boxOf(lineup);
    WellMap map = WellMap.of(box, area, false);
    Mixer mixer = new Mixer(judgement.table());
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Rectangle(map.frame(), 1, 0.3, Ink.LINE, false, Optional.empty()));
    for (int i = 0; i < box.wells().size(); i++) {
      Well well = box.wells().get(i);
      Area cell = map.cells().get(i);
      Optional<Paint> paint =
          lineup.in(well.id()).flatMap(filling -> kit.shelf().find(filling.paintId()));
      Srgb ground = Ink.WHITE;
      if (paint.isPresent()) {
        ground =
            PrintColour.of(mixer.dry(Recipe.of(paint.get().id()), kit.washes().load(Wash.CREAM)))
                .shown();
        marks.add(new Mark.Swatch(cell, List.of(ground)));
      }
      marks.add(new Mark.Rectangle(cell, 0, 0.12, Ink.LINE, false, Optional.empty()));
      String text = well.label() + paint.map(p -> " " + p.codes()).orElse("");
      double width = Math.max(1, cell.widthMm() - 0.8);
      marks.addAll(
          TextFit.of(Typeface.REGULAR, TEXT_PT)
              .within(text, width, Math.max(2, cell.heightMm() - 0.6))
              .at(cell.xMm() + 0.4, cell.yMm() + 0.2, width, Align.LEFT, Ink.on(ground)));
    }
    return List.of(new Mark.Group(Role.FIGURE, name, marks));
  }
}
