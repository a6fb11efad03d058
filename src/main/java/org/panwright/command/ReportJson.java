package org.panwright.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.HueGap;
import org.panwright.analysis.judge.Judgement;
import org.panwright.analysis.worth.Earning;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.mixing.MixGrid;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.Ratio;
import org.panwright.mixing.Recipe;
import org.panwright.mixing.Trust;
import org.panwright.paint.Paint;
import org.panwright.paint.Wash;
import org.panwright.words.ColourWords;
import org.panwright.words.CommandWords;
import org.panwright.words.PaintWords;
import org.panwright.words.RecipeWords;

/** The figures of a judgement as {@code report.json}; see docs/command-line.md for the fields. */
final class ReportJson {
  private static final int CHROMA_DECIMALS = 4;

  private final Judgement judgement;
  private final Kit kit;
  private final Lineup lineup;

  private ReportJson(Judgement judgement) {
    this.judgement = judgement;
    kit = judgement.kit();
    lineup = kit.lineup(judgement.lineupId()).orElseThrow();
  }

  static ObjectNode of(Judgement judgement) {
    return new ReportJson(judgement).root();
  }

  private ObjectNode root() {
    ObjectNode root = Json.object();
    root.put("program", CommandWords.PROGRAM);
    root.put("kit", kit.name());
    root.put("lineup", lineup.name());
    root.put("box", kit.boxOf(lineup).name());
    root.put("light", CommandWords.LIGHT);
    root.set("wells", wells());
    root.set("ring", Json.numbers(judgement.ring().toArray(), CHROMA_DECIMALS));
    root.set("shelfRing", Json.numbers(judgement.shelfRing().toArray(), CHROMA_DECIMALS));
    root.set("gaps", gaps());
    root.set("findings", FindingJson.of(judgement));
    root.set("earnings", earnings());
    root.set("mixes", mixes());
    return root;
  }

  private ArrayNode wells() {
    ArrayNode wells = Json.array();
    Mixer mixer = new Mixer(judgement.table());
    for (Well well : kit.boxOf(lineup).wells()) {
      Optional<Filling> filling = lineup.in(well.id());
      Optional<Paint> paint = filling.flatMap(f -> kit.shelf().find(f.paintId()));
      ObjectNode node = wells.addObject();
      node.put("position", well.label());
      node.put("paint", paint.map(Paint::name).orElse(null));
      ArrayNode pigments = node.putArray("pigments");
      paint.ifPresent(p -> p.pigments().forEach(s -> pigments.add(s.pigment().code())));
      node.put("fill", filling.map(f -> CommandWords.fill(f.fill())).orElse(null));
      Optional<Trust> trust =
          paint.map(p -> mixer.trust(Recipe.of(p.id(), p.id(), Ratio.GRID.get(Ratio.EVEN))));
      node.put("expectedError", trust.map(t -> Json.rounded(t.error(), 2)).orElse(null));
      node.put("known", trust.map(t -> PaintWords.badge(t.source())).orElse(null));
    }
    return wells;
  }

  private ArrayNode gaps() {
    ArrayNode gaps = Json.array();
    for (Finding finding : judgement.findings()) {
      if (finding instanceof HueGap gap) {
        gaps.addObject()
            .put("from", Json.rounded(gap.fromDeg(), 1))
            .put("to", Json.rounded(gap.toDeg(), 1))
            .put("hues", ColourWords.arc(gap.hues()))
            .put("best", Json.rounded(gap.best(), CHROMA_DECIMALS))
            .put("possible", Json.rounded(gap.possible(), CHROMA_DECIMALS))
            .put("suggest", gap.suggestPaintId().map(this::name).orElse(null))
            .put("giveUp", gap.giveUpPaintId().map(this::name).orElse(null));
      }
    }
    return gaps;
  }

  /** What each paint earns, loses in mixes, and which mix of the others comes nearest to it. */
  private ArrayNode earnings() {
    ArrayNode earnings = Json.array();
    for (Earning earning : judgement.earnings()) {
      String id = earning.paintId();
      ObjectNode node = earnings.addObject();
      node.put("paint", name(id));
      node.put("ringLost", Json.rounded(earning.ringLost(), 4));
      node.put("reachLost", Json.rounded(earning.reachLost(), 4));
      node.put("subjectsLost", Json.rounded(earning.subjects().share(), 4));
      Double mud = judgement.mud().byPaint().get(id);
      node.put("mud", mud == null ? null : Json.rounded(mud, 3));
      judgement.standIns().stream()
          .filter(standIn -> standIn.paintId().equals(id))
          .findFirst()
          .ifPresent(
              standIn ->
                  node.putObject("standIn")
                      .put("recipe", RecipeWords.recipe(standIn.recipe(), kit))
                      .put("masstone", Json.rounded(standIn.masstone(), 1))
                      .put("tint", Json.rounded(standIn.tint(), 1)));
    }
    return earnings;
  }

  /** Each pair in every ratio and wash; a paint by itself as one part with one part of itself. */
  private ArrayNode mixes() {
    ArrayNode mixes = Json.array();
    MixGrid grid = judgement.grid();
    for (int row = 0; row < grid.size(); row++) {
      for (int column = row; column < grid.size(); column++) {
        for (int ratio = 0; ratio < Ratio.GRID.size(); ratio++) {
          if (row != column || ratio == Ratio.EVEN) {
            washes(mixes, grid, row, column, ratio);
          }
        }
      }
    }
    return mixes;
  }

  private void washes(ArrayNode mixes, MixGrid grid, int row, int column, int ratio) {
    Ratio parts = Ratio.GRID.get(ratio);
    String first = judgement.table().ids().get(grid.paint(row));
    String second = judgement.table().ids().get(grid.paint(column));
    Trust trust = new Mixer(judgement.table()).trust(Recipe.of(first, second, parts));
    for (Wash wash : Wash.values()) {
      ObjectNode mix = mixes.addObject();
      mix.put("a", name(first));
      mix.put("b", name(second));
      mix.put("partA", parts.first());
      mix.put("partB", parts.second());
      mix.put("wash", PaintWords.label(wash));
      mix.set("lab", Json.lab(grid.lab(row, column, ratio, wash)));
      mix.put("expectedError", Json.rounded(trust.error(), 2));
      mix.put("known", PaintWords.badge(trust.source()));
    }
  }

  private String name(String paintId) {
    return kit.shelf().find(paintId).orElseThrow().name();
  }
}
