package org.panwright.app.findings;

import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.Muted;
import org.panwright.analysis.judge.Judgement;
import org.panwright.app.Session;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.words.FindingListWords;
import org.panwright.words.FindingWords;

/**
 * What the judge found in the lineup as it stands, and the trying out of cures; knows no control.
 */
public final class FindingsModel {
  private final Session session;
  private final ObservableValue<Optional<Judgement>> judgement;

  public FindingsModel(Session session) {
    this.session = session;
    judgement = session.judgementProperty();
  }

  /** The findings, worst first, with the kit they are about. */
  ObservableValue<Shown> shownProperty() {
    return judgement.map(
        newest ->
            newest
                .map(j -> new Shown(j.kit(), j.lineupId(), j.findings(), j.muted()))
                .orElse(Shown.NOTHING));
  }

  /** The judgement the findings are from. */
  Optional<Judgement> judgement() {
    return judgement.getValue();
  }

  /** What to say where there are no findings; empty while the judge is still at work. */
  String nothing() {
    if (session.lineup().isEmpty()) {
      return FindingListWords.NO_LINEUP;
    }
    return judgement().isPresent() ? FindingWords.NOTHING_FOUND : "";
  }

  /** Shows in every view what a finding's cure would bring. */
  void tryCure(Finding finding) {
    finding.cure().ifPresent(session::preview);
  }

  /** Ends the trying. */
  void endTrial() {
    session.endPreview();
  }

  /** Does what a finding's cure says. */
  void cure(Finding finding) {
    finding.cure().ifPresent(session::perform);
  }

  /** Tells a finding no more for this lineup. */
  void mute(Finding finding, String reason) {
    session
        .lineup()
        .ifPresent(
            lineup ->
                session.perform(new Edit.MuteFinding(lineup.id(), finding.key(), reason.strip())));
  }

  /** Tells a muted finding again. */
  void tellAgain(Finding finding) {
    session
        .lineup()
        .filter(lineup -> lineup.mute(finding.key()).isPresent())
        .ifPresent(lineup -> session.perform(new Edit.TellFinding(lineup.id(), finding.key())));
  }

  /** Findings, those muted, and the kit and lineup they speak of. */
  record Shown(Kit kit, String lineupId, List<Finding> findings, List<Muted> muted) {
    static final Shown NOTHING = new Shown(Kit.empty("none"), "", List.of(), List.of());
  }
}
