package org.panwright.app.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.panwright.analysis.compare.Comparison;
import org.panwright.analysis.compare.SubjectPair;
import org.panwright.analysis.judge.Judgement;
import org.panwright.kit.SubjectColour;

/**
 * Two sides judged.
 *
 * @param first what stands first
 * @param second what stands second
 * @param ofFirst its judgement
 * @param ofSecond its judgement
 * @param comparison what is won and lost
 * @param subjects how near they come to the colours of an outing
 * @param paints rows and columns of both grids: what is in both, then what is in one only
 * @param firstCells the first grid
 * @param secondCells the second grid
 */
record Compared(
    Side first,
    Side second,
    Judgement ofFirst,
    Judgement ofSecond,
    Comparison comparison,
    List<SubjectPair> subjects,
    List<String> paints,
    AlignedCells firstCells,
    AlignedCells secondCells) {
  Compared {
    subjects = List.copyOf(subjects);
    paints = List.copyOf(paints);
  }

  /** Works out everything that is shown of two judged sides. */
  static Compared of(
      Side first,
      Side second,
      Judgement ofFirst,
      Judgement ofSecond,
      List<SubjectColour> subjects,
      BooleanSupplier outdated) {
    Comparison comparison = Comparison.of(ofFirst, ofSecond);
    List<String> paints = new ArrayList<>(comparison.inCommon());
    paints.addAll(comparison.leaving());
    paints.addAll(comparison.coming());
    return new Compared(
        first,
        second,
        ofFirst,
        ofSecond,
        comparison,
        SubjectPair.of(ofFirst, ofSecond, subjects, outdated),
        paints,
        AlignedCells.of(ofFirst, paints),
        AlignedCells.of(ofSecond, paints));
  }
}
