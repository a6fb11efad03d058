package org.panwright.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import org.panwright.analysis.choose.Choice;
import org.panwright.analysis.choose.Proposal;
import org.panwright.analysis.choose.Reason;
import org.panwright.analysis.mud.Dark;
import org.panwright.kit.Aim;
import org.panwright.kit.Kit;
import org.panwright.paint.Paint;
import org.panwright.words.ChooseWords;

/** Proposed lineups as JSON; see docs/command-line.md for the fields. */
final class ChoiceJson {
  private static final int DECIMALS = 6;

  private ChoiceJson() {}

  static ObjectNode of(Choice choice, Kit kit) {
    ObjectNode root = Json.object();
    root.put("allowed", choice.allowed());
    root.put("considered", choice.considered());
    root.put("lineups", choice.lineups());
    root.put("apart", choice.apart());
    ArrayNode proposals = root.putArray("proposals");
    for (Proposal proposal : choice.proposals()) {
      ObjectNode node = proposals.addObject();
      node.set("paints", names(proposal.paints(), kit));
      node.set("dabs", names(proposal.dabs(), kit));
      node.put("score", Json.rounded(proposal.worth(), DECIMALS));
      node.put("provenBest", proposal.provenBest());
      node.put("bound", Json.rounded(proposal.bound(), DECIMALS));
      ObjectNode parts = node.putObject("parts");
      for (Aim aim : Aim.values()) {
        parts.put(
            aim.name().toLowerCase(Locale.ROOT), Json.rounded(proposal.byAim().get(aim), DECIMALS));
      }
      node.set("ring", Json.numbers(proposal.ring().toArray(), 4));
      node.put("reach", proposal.reach().size());
      node.put(
          "darkestDry",
          proposal.darkest().map(Dark::dryL).map(l -> Json.rounded(l, 2)).orElse(null));
      ArrayNode reasons = node.putArray("reasons");
      for (Reason reason : proposal.reasons()) {
        reasons
            .addObject()
            .put("paint", name(reason.paintId(), kit))
            .put("why", ChooseWords.why(reason, kit));
      }
    }
    return root;
  }

  private static ArrayNode names(List<String> paints, Kit kit) {
    ArrayNode list = Json.array();
    paints.forEach(id -> list.add(name(id, kit)));
    return list;
  }

  private static String name(String paintId, Kit kit) {
    return kit.shelf().find(paintId).map(Paint::name).orElse(paintId);
  }
}
