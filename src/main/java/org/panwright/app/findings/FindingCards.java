package org.panwright.app.findings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.panwright.analysis.finding.Finding;

/**
 * The cards of the findings, kept from one judgement to the next: a finding told again keeps its
 * card, and the cards of findings that are gone take those that are new.
 *
 * <p>Making a card and working out its styles is most of what a new list costs.
 */
final class FindingCards {
  private final FindingsModel model;
  private List<FindingCard> cards = List.of();
  private String lineupId = "";

  FindingCards(FindingsModel model) {
    this.model = model;
  }

  /** The cards now, in the order of the findings. */
  List<FindingCard> cards() {
    return cards;
  }

  /** Makes the cards show a judgement's findings. */
  void show(FindingsModel.Shown shown) {
    Map<String, FindingCard> known = new HashMap<>();
    if (shown.lineupId().equals(lineupId)) {
      cards.forEach(card -> known.put(card.key(), card));
    }
    List<FindingCard> free = new ArrayList<>(cards);
    shown.findings().forEach(finding -> free.remove(known.get(finding.key())));
    List<FindingCard> now = new ArrayList<>();
    for (Finding finding : shown.findings()) {
      FindingCard card = known.get(finding.key());
      if (card != null) {
        card.renew(finding, shown.kit());
      } else if (free.isEmpty()) {
        card = new FindingCard(model, finding, shown.kit());
      } else {
        card = free.remove(0);
        card.turnTo(finding, shown.kit());
      }
      now.add(card);
    }
    lineupId = shown.lineupId();
    cards = now;
  }
}
