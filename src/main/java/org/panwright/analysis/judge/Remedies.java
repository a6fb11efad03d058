package org.panwright.analysis.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.analysis.finding.DriesGrey;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.Metals;
import org.panwright.analysis.finding.MuddyPaint;
import org.panwright.analysis.finding.MuddyPairs;
import org.panwright.analysis.finding.Nature;
import org.panwright.analysis.finding.Remedy;
import org.panwright.analysis.finding.Wish;
import org.panwright.analysis.search.Case;
import org.panwright.analysis.search.Exchange;
import org.panwright.paint.Paint;

/**
 * Gives each finding that came without one the single exchange that cures it, if the shelf has one.
 */
final class Remedies {
  private final Case open;
  private final Bench bench;
  private final Trials trials;

  private Remedies(Case open, List<Finding> found) {
    this.open = open;
    List<String> atHand = open.atHand().stream().map(Paint::id).toList();
    bench = new Bench(open.table(), open.kit().washes(), open.ids(), atHand);
    trials = new Trials(open, bench, found);
  }

  /** The findings in the same order. */
  static List<Finding> of(Case open, List<Finding> found) {
    Remedies remedies = new Remedies(open, found);
    List<Finding> cured = new ArrayList<>();
    found.forEach(finding -> cured.add(remedies.cured(finding)));
    return cured;
  }

  private Finding cured(Finding finding) {
    if (finding instanceof MuddyPaint muddy) {
      return MudRemedy.of(open, bench, trials, muddy);
    } else if (finding instanceof MuddyPairs pairs) {
      return pairs.with(MudRemedy.of(open, bench, trials, pairs));
    } else if (finding instanceof DriesGrey grey) {
      return grey.with(GreyRemedy.of(open, bench, trials, grey));
    } else if (finding instanceof Metals metals) {
      return metals.with(NearRemedy.of(open, trials, metals));
    } else if (finding instanceof Nature nature) {
      return nature.with(NearRemedy.of(open, trials, nature));
    } else if (finding instanceof Wish wish) {
      return wish.with(tried(wish));
    }
    return finding;
  }

  /**
   * The wished paint put in as if it were owned, the way a paint comes in for a hue gap. Where none
   * leaves the lineup for it nothing is lost, and nothing has to be tried.
   */
  private Optional<Remedy> tried(Wish wish) {
    Exchange exchange = Exchange.bringing(open, wish.paintId());
    Optional<String> coming = Optional.of(wish.paintId());
    Optional<String> leaving = exchange.leavingId().filter(open.seats()::sitsOnce);
    return leaving.isEmpty()
        ? exchange.edit().map(edit -> new Remedy(leaving, coming, 0, 0, edit))
        : exchange
            .edit()
            .flatMap(edit -> trials.first(wish, 0, List.of(new Swap(leaving.get(), coming, edit))));
  }
}
