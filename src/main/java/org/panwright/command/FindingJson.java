package org.panwright.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.panwright.analysis.finding.DriesGrey;
import org.panwright.analysis.finding.Fading;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.HueGap;
import org.panwright.analysis.finding.Lopsided;
import org.panwright.analysis.finding.Metals;
import org.panwright.analysis.finding.MuddyPaint;
import org.panwright.analysis.finding.MuddyPairs;
import org.panwright.analysis.finding.Muted;
import org.panwright.analysis.finding.NearTwins;
import org.panwright.analysis.finding.NoDark;
import org.panwright.analysis.finding.Passenger;
import org.panwright.analysis.finding.StandIn;
import org.panwright.analysis.finding.Wish;
import org.panwright.analysis.judge.Judgement;
import org.panwright.analysis.mud.Dark;
import org.panwright.analysis.mud.PairMud;
import org.panwright.kit.Kit;
import org.panwright.words.FindingWords;
import org.panwright.words.RecipeWords;

/** Findings with their figures for {@code report.json}; see docs/command-line.md for the fields. */
final class FindingJson {
  private final Kit kit;

  private FindingJson(Kit kit) {
    this.kit = kit;
  }

  /** All findings, worst first, the muted ones last. */
  static ArrayNode of(Judgement judgement) {
    FindingJson json = new FindingJson(judgement.kit());
    ArrayNode all = Json.array();
    judgement.findings().forEach(finding -> all.add(json.finding(finding).putNull("muted")));
    for (Muted muted : judgement.muted()) {
      all.add(json.finding(muted.finding()).put("muted", muted.reason()));
    }
    return all;
  }

  private ObjectNode finding(Finding finding) {
    ObjectNode node = Json.object();
    node.put("kind", finding.kind().code());
    node.put("severity", Json.rounded(finding.severity(), 3));
    node.put("title", FindingWords.title(finding, kit));
    node.put("sentence", FindingWords.meaning(finding, kit));
    ArrayNode paints = node.putArray("paints");
    finding.paintIds().forEach(id -> paints.add(name(id)));
    node.put("cure", FindingWords.action(finding, kit).orElse(null));
    node.set("figures", figures(finding));
    return node;
  }

  private ObjectNode figures(Finding finding) {
    ObjectNode node = Json.object();
    if (finding instanceof HueGap gap) {
      put(node, "from", gap.fromDeg(), 1);
      put(node, "to", gap.toDeg(), 1);
      put(node, "best", gap.best(), 4);
      put(node, "possible", gap.possible(), 4);
      put(node, "closes", gap.closes(), 3);
    } else if (finding instanceof NoDark dark) {
      dark(node, dark.darkest());
      put(node, "suggestL", dark.suggestL(), 1);
    } else if (finding instanceof DriesGrey grey) {
      dark(node, grey.stays());
      ArrayNode deceivers = node.putArray("deceivers");
      grey.deceivers().forEach(deceiver -> dark(deceivers.addObject(), deceiver));
    } else if (finding instanceof MuddyPaint muddy) {
      put(node, "loss", muddy.loss(), 3);
      put(node, "typical", muddy.typical(), 3);
      put(node, "insteadLoss", muddy.insteadLoss(), 3);
    } else if (finding instanceof MuddyPairs pairs) {
      pairs(node.putArray("muddy"), pairs.pairs());
      pairs(node.putArray("greys"), pairs.greys());
    } else {
      ofPaints(node, finding);
    }
    return node;
  }

  private void ofPaints(ObjectNode node, Finding finding) {
    if (finding instanceof Fading fading) {
      put(node, "instead", fading.instead(), 1);
    } else if (finding instanceof NearTwins twins) {
      put(node, "masstone", twins.masstone(), 1);
      put(node, "tint", twins.tint(), 1);
      put(node, "expectedError", twins.doubt().error(), 1);
    } else if (finding instanceof StandIn standIn) {
      node.put("recipe", RecipeWords.recipe(standIn.recipe(), kit));
      put(node, "masstone", standIn.masstone(), 1);
      put(node, "tint", standIn.tint(), 1);
      put(node, "expectedError", standIn.doubt().error(), 1);
    } else if (finding instanceof Passenger passenger) {
      put(node, "ringLost", passenger.earning().ringLost(), 4);
      put(node, "reachLost", passenger.earning().reachLost(), 4);
      put(node, "subjectsLost", passenger.earning().subjects().share(), 4);
    } else if (finding instanceof Lopsided lopsided) {
      node.put("count", lopsided.count());
      node.put("paints", lopsided.paints());
    } else if (finding instanceof Metals metals) {
      metals.holders().forEach((metal, holders) -> node.put(metal, holders.size()));
    } else if (finding instanceof Wish wish) {
      put(node, "from", wish.fromDeg(), 1);
      put(node, "to", wish.toDeg(), 1);
      put(node, "possible", wish.possible(), 4);
      put(node, "brought", wish.brought(), 4);
    }
  }

  private void dark(ObjectNode node, Dark dark) {
    node.put("recipe", RecipeWords.recipe(dark.recipe(), kit));
    put(node, "dryL", dark.dryL(), 1);
    put(node, "wetL", dark.wetL(), 1);
  }

  private void pairs(ArrayNode list, List<PairMud> pairs) {
    for (PairMud pair : pairs) {
      ObjectNode node = list.addObject();
      node.put("a", name(pair.firstPaintId()));
      node.put("b", name(pair.secondPaintId()));
      put(node, "loss", pair.loss(), 3);
      put(node, "greyestChroma", pair.greyestChroma(), 1);
      put(node, "greyestL", pair.greyestL(), 1);
    }
  }

  private static void put(ObjectNode node, String name, double value, int decimals) {
    node.put(name, Json.rounded(value, decimals));
  }

  private String name(String paintId) {
    return kit.shelf().find(paintId).orElseThrow().name();
  }
}
