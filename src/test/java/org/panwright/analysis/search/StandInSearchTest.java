package org.panwright.analysis.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.finding.StandIn;
import org.panwright.analysis.judge.Judgement;
import org.panwright.analysis.reach.PaintSet;
import org.panwright.analysis.reach.Parts;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Portion;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Handling;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.Paper;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;

class StandInSearchTest {
  private static final String[] IDS = {"PY154", "PR254", "PB29", "PG7", "PBr7", "PY43"};

  /** A tube made of two pigments, two strength parts to one, must be found as that very mix. */
  @Test
  void aConvenienceMixIsMixedFromItsPigments() {
    List<Paint> shelf = new ArrayList<>(Lineups.paints("PY154", "PB15:3", "PR254", "PBr7"));
    OpticsTable table = OpticsTable.of(shelf, Lineups.LIBRARY, Paper.WHITE);
    double yellow = 2 * table.tintLoad(0);
    double blue = table.tintLoad(1);
    double share = yellow / (yellow + blue);
    shelf.add(tube("sap", "PY154", share, "PB15:3", 1 - share));
    Judgement judgement =
        Lineups.judge(Lineups.kit(shelf, 5, "sap", "PY154", "PB15:3", "PR254", "PBr7"));
    StandIn sap = judgement.standIns().get(0);
    assertThat(sap.paintId()).isEqualTo("sap");
    assertThat(sap.worst()).isLessThan(0.1);
    assertThat(sap.recipe()).isEqualTo(Recipe.of("PY154", 2, "PB15:3", 1));
  }

  @Test
  void differencesAreThoseOfTheMixer() {
    Judgement judgement = Lineups.judge(Lineups.kit(Lineups.paints(IDS), 6, IDS));
    Mixer mixer = new Mixer(judgement.table());
    assertThat(judgement.standIns()).hasSize(6);
    for (StandIn standIn : judgement.standIns()) {
      assertThat(standIn.recipe().portions())
          .noneMatch(portion -> portion.paintId().equals(standIn.paintId()));
      double[] differences = differences(mixer, standIn.paintId(), standIn.recipe());
      assertThat(standIn.masstone()).isCloseTo(differences[0], within(1e-6));
      assertThat(standIn.tint()).isCloseTo(differences[1], within(0.1));
    }
  }

  /** Brute force over all pairs and triads of the others in all whole parts. */
  @Test
  void isHardlyWorseThanTheBestOfAll() {
    Judgement judgement = Lineups.judge(Lineups.kit(Lineups.paints(IDS), 6, IDS));
    OpticsTable table = judgement.table();
    Mixer mixer = new Mixer(table);
    for (StandIn standIn : judgement.standIns()) {
      double best = Double.POSITIVE_INFINITY;
      for (PaintSet set : sets(table.size())) {
        if (!set.holds(table.indexOf(standIn.paintId()))) {
          for (Parts parts : set.parts()) {
            double[] d = differences(mixer, standIn.paintId(), set.recipe(table, parts));
            best = Math.min(best, d[0] + d[1]);
          }
        }
      }
      assertThat(standIn.masstone() + standIn.tint()).as(standIn.paintId()).isLessThan(best * 1.15);
    }
  }

  @Test
  void noStandInNeedsAPaintNamedAsSpare() {
    String[] ids = {
      "PY175",
      "PY65",
      "PR254",
      "PV19",
      "PV23",
      "PB29",
      "PB28",
      "PB15:3",
      "PB35",
      "PG7",
      "PG18",
      "PBr7",
      "PBr7 burnt umber",
      "PBk6"
    };
    Judgement judgement = Lineups.judge(Lineups.kit(Lineups.paints(ids), ids.length, ids));
    List<StandIn> named =
        judgement.findings().stream()
            .filter(StandIn.class::isInstance)
            .map(StandIn.class::cast)
            .toList();
    assertThat(named).isNotEmpty();
    List<String> spare = named.stream().map(StandIn::paintId).toList();
    assertThat(named)
        .allSatisfy(
            standIn -> {
              assertThat(standIn.isClose()).isTrue();
              assertThat(standIn.recipe().portions())
                  .noneMatch(portion -> spare.contains(portion.paintId()));
            });
  }

  @Test
  void twoPaintsHaveNoStandIns() {
    assertThat(
            Lineups.judge(Lineups.kit(Lineups.paints("PB29", "PY154"), 2, "PB29", "PY154"))
                .standIns())
        .isEmpty();
  }

  private static List<PaintSet> sets(int paints) {
    List<PaintSet> sets = new ArrayList<>();
    for (int i = 0; i < paints; i++) {
      for (int j = i + 1; j < paints; j++) {
        sets.add(new PaintSet(i, j, PaintSet.NONE));
        for (int k = j + 1; k < paints; k++) {
          sets.add(new PaintSet(i, j, k));
        }
      }
    }
    return sets;
  }

  private static double[] differences(Mixer mixer, String paintId, Recipe recipe) {
    OpticsTable table = mixer.table();
    double total = recipe.portions().stream().mapToDouble(Portion::parts).sum();
    double tintLoad =
        recipe.portions().stream()
            .mapToDouble(p -> p.parts() / total * table.tintLoad(table.indexOf(p.paintId())))
            .sum();
    Recipe alone = Recipe.of(paintId);
    Lab tint = mixer.lab(alone, table.tintLoad(table.indexOf(paintId)));
    double thin = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= 50; i++) {
      double load = tintLoad * Math.pow(2, i / 25.0 - 1);
      thin = Math.min(thin, Difference.ciede2000(tint, mixer.lab(recipe, load)));
    }
    double thick = Difference.ciede2000(mixer.lab(alone, 1), mixer.lab(recipe, 1));
    return new double[] {thick, thin};
  }

  private static Paint tube(
      String id, String first, double firstShare, String second, double secondShare) {
    Handling handling = Lineups.paint(first).handling();
    return new Paint(
        id,
        id,
        "",
        List.of(
            new PigmentShare(PigmentName.parse(first), firstShare),
            new PigmentShare(PigmentName.parse(second), secondShare)),
        handling,
        Ownership.OWNED,
        Optional.empty(),
        "");
  }
}
