package org.panwright.analysis.worth;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.panwright.analysis.reach.Nearness;
import org.panwright.analysis.reach.Net;
import org.panwright.kit.SubjectColour;

/**
 * How near a lineup comes to the colours of a place, and how near without each of its paints,
 * gathered in one walk over its net; one thread.
 *
 * <pre>
 * near(s) = max(0, 12 − least d to s over the mixes)             d as in {@link Nearness}
 * lost(q) = 1 − Σ near(s) without q / Σ near(s)                  every colour counts alike
 * </pre>
 */
public final class SubjectsWithout implements Net.Sink {
  /** A mix farther off than this is no attempt at the colour. */
  public static final double NEAR = 12;

  private static final int NOBODY = -1;

  private final List<SubjectColour> subjects;
  private final Nearness[] nearness;
  private final int[] places;
  private final int members;
  private final double[][] least;
  private final double[] farthest;

  /**
   * @param subjects the colours; with none the walk costs nothing
   * @param members the paints that may leave, by their number in a table of {@code tableSize}
   */
  SubjectsWithout(List<SubjectColour> subjects, int[] members, int tableSize) {
    this.subjects = List.copyOf(subjects);
    this.members = members.length;
    nearness = subjects.stream().map(s -> new Nearness(s.lab())).toArray(Nearness[]::new);
    places = new int[tableSize];
    Arrays.fill(places, NOBODY);
    for (int i = 0; i < members.length; i++) {
      places[members[i]] = i;
    }
    least = new double[subjects.size()][members.length + 1];
    farthest = new double[subjects.size()];
    Arrays.fill(farthest, NEAR * NEAR);
    for (double[] row : least) {
      Arrays.fill(row, NEAR * NEAR);
    }
  }

  private SubjectsWithout(SubjectsWithout original) {
    subjects = original.subjects;
    members = original.members;
    nearness = original.nearness;
    places = original.places;
    least = Arrays.stream(original.least).map(double[]::clone).toArray(double[][]::new);
    farthest = original.farthest.clone();
  }

  /** The same so far, to be led on with other mixes. */
  public SubjectsWithout copy() {
    return new SubjectsWithout(this);
  }

  /** What goes when one of the paints that may leave does. */
  public SubjectsLost lost(int member) {
    double all = 0;
    double gone = 0;
    double most = 0;
    String missed = "";
    for (int subject = 0; subject < subjects.size(); subject++) {
      double near = near(subject, members);
      double fall = near - near(subject, member);
      all += near;
      gone += fall;
      if (fall > most) {
        most = fall;
        missed = subjects.get(subject).name();
      }
    }
    return gone > 0 ? new SubjectsLost(gone / all, missed, most) : SubjectsLost.NONE;
  }

  /** How near the lineup comes to all colours: Σ near. */
  public double nearness() {
    return nearnessWithout(members);
  }

  /** The same without one of the paints that may leave. */
  public double nearnessWithout(int member) {
    return IntStream.range(0, subjects.size()).mapToDouble(s -> near(s, member)).sum();
  }

  private double near(int subject, int without) {
    return NEAR - Math.sqrt(least[subject][without]);
  }

  @Override
  public void single(int paint, double[] colours) {
    look(places[paint], NOBODY, NOBODY, colours, 0, 1);
  }

  @Override
  public void pair(int first, int second, double[] colours) {
    look(places[first], places[second], NOBODY, colours, 1, Net.PATH - 1);
  }

  @Override
  public void triad(int first, int second, int third, double[] colours) {
    look(places[first], places[second], places[third], colours, 0, Net.TRIADS.size());
  }

  private void look(int first, int second, int third, double[] colours, int fromMix, int toMix) {
    for (int subject = 0; subject < nearness.length; subject++) {
      for (int at = fromMix * Net.MIX; at < toMix * Net.MIX; at += Net.COLOUR) {
        double away = nearness[subject].squared(colours[at], colours[at + 1], colours[at + 2]);
        if (away < farthest[subject]) {
          near(subject, away, first, second, third);
        }
      }
    }
  }

  private void near(int subject, double away, int first, int second, int third) {
    double[] row = least[subject];
    for (int without = 0; without < row.length; without++) {
      if (away < row[without] && without != first && without != second && without != third) {
        row[without] = away;
      }
    }
    farthest[subject] = IntStream.range(0, row.length).mapToDouble(i -> row[i]).max().orElse(0);
  }
}
