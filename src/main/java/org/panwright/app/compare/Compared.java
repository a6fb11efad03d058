package org.panwright.app.compare;

import java.util.ArrayList;
import java.util.List;
import org.panwright.analysis.Comparison;
import org.panwright.analysis.Judgement;
import org.panwright.analysis.SubjectPair;

/**
 * Two sides judged.
 *
 * @param first what stands first
 * @param second what stands second
 * @param ofFirst its judgement
 * @param ofSecond its judgement
 * @param comparison what is won and lost
 * @param subjects how near they come to the colours of an outing
 */
record Compared(
    Side first,
    Side second,
    Judgement ofFirst,
    Judgement ofSecond,
    Comparison comparison,
    List<SubjectPair> subjects) {
  Compared {
    subjects = List.copyOf(subjects);
  }

  /** Rows and columns of both grids: what is in both, then what is in one only. */
  List<String> paints() {
    List<String> paints = new ArrayList<>(comparison.inCommon());
    paints.addAll(comparison.leaving());
    paints.addAll(comparison.coming());
    return paints;
  }
}
