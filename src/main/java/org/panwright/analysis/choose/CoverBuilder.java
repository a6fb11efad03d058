package org.panwright.analysis.choose;

import java.util.Arrays;
import java.util.List;
import org.panwright.analysis.reach.Nearness;
import org.panwright.analysis.reach.Net;
import org.panwright.analysis.reach.Reach;
import org.panwright.analysis.reach.Ring;
import org.panwright.analysis.reach.RingTracer;
import org.panwright.analysis.worth.SubjectsWithout;
import org.panwright.colour.Lab;
import org.panwright.kit.Aim;
import org.panwright.kit.Weights;

/**
 * Turns a walk over the net into a {@link Cover}; one thread.
 *
 * <ul>
 *   <li>ring: at each of 72 hues one bit for each {@value #CHROMA_LEVEL} of chroma, 32 at most;
 *   <li>reach: one bit for each occupied cell;
 *   <li>subjects: for each colour one bit for each ½ ΔE by which a mix comes nearer than 12;
 *   <li>darks: one bit for each ½ L* by which a dry mix is darker than 40;
 *   <li>transparency: one bit for each transparent or semi-transparent paint.
 * </ul>
 */
final class CoverBuilder extends RingTracer {
  /** Chroma of one bit of the ring. */
  static final double CHROMA_LEVEL = 0.01;

  private static final double DARK_FROM = 40;
  private static final double HALF = 0.5;
  private static final int LEVELS = 32;
  private static final int RING_WORDS = Ring.STEPS / 2;

  private final int candidates;
  private final int[] number;
  private final Nearness[] subjects;
  private final boolean[] transparent;
  private final int reachStart;
  private final int subjectStart;
  private final int darkStart;
  private final int transparentStart;
  private final long[] scratch;
  private final int[] touched;
  private int touchedCount;
  private final int[] cellNumber = new int[Reach.CELLS];
  private int cells;
  private final int[][] places;
  private final long[][] masks;

  /**
   * @param tablePaints the candidates as numbers of the optics table; their order numbers them
   * @param tableSize how many paints the table has
   * @param transparent which candidates are transparent
   */
  CoverBuilder(int[] tablePaints, int tableSize, List<Lab> subjects, boolean[] transparent) {
    candidates = tablePaints.length;
    number = new int[tableSize];
    for (int i = 0; i < candidates; i++) {
      number[tablePaints[i]] = i;
    }
    this.subjects = subjects.stream().map(Nearness::new).toArray(Nearness[]::new);
    subjectStart = RING_WORDS;
    darkStart = subjectStart + (subjects.size() + 1) / 2;
    transparentStart = darkStart + 1;
    reachStart = transparentStart + 1;
    scratch = new long[reachStart + (Reach.CELLS + 63) / 64];
    touched = new int[scratch.length];
    places = new int[Cover.tuples(candidates)][];
    masks = new long[places.length][];
    this.transparent = transparent;
  }

  @Override
  protected void raise(int step, double l, double c) {
    int levels = Math.min(LEVELS, (int) (c / CHROMA_LEVEL));
    mark(step / 2, lowest(levels) << (LEVELS * (step % 2)));
  }

  @Override
  public void single(int paint, double[] colours) {
    int one = number[paint];
    super.single(paint, colours);
    coats(colours, 1);
    if (transparent[one]) {
      mark(transparentStart, 1L << one);
    }
    keep(Cover.single(one));
  }

  @Override
  public void pair(int first, int second, double[] colours) {
    int one = number[first];
    int two = number[second];
    super.pair(first, second, colours);
    coats(colours, Net.PATH);
    keep(Cover.pair(candidates, Math.min(one, two), Math.max(one, two)));
  }

  @Override
  public void triad(int first, int second, int third, double[] colours) {
    int[] three = {number[first], number[second], number[third]};
    Arrays.sort(three);
    super.triad(first, second, third, colours);
    coats(colours, Net.TRIADS.size());
    keep(Cover.triad(candidates, three[0], three[1], three[2]));
  }

  private void coats(double[] colours, int mixes) {
    for (int at = 0; at < mixes * Net.MIX; at += Net.COLOUR) {
      double l = colours[at];
      double a = colours[at + 1];
      double b = colours[at + 2];
      int cell = Reach.cell(l, a, b);
      if (cellNumber[cell] == 0) {
        cellNumber[cell] = ++cells;
      }
      int bit = cellNumber[cell] - 1;
      mark(reachStart + bit / 64, 1L << (bit % 64));
      if (l < DARK_FROM) {
        mark(darkStart, lowest((int) ((DARK_FROM - l) / HALF)));
      }
      for (int subject = 0; subject < subjects.length; subject++) {
        double squared = subjects[subject].squared(l, a, b);
        if (squared < SubjectsWithout.NEAR * SubjectsWithout.NEAR) {
          long levels = lowest((int) ((SubjectsWithout.NEAR - Math.sqrt(squared)) / HALF));
          mark(subjectStart + subject / 2, levels << (LEVELS * (subject % 2)));
        }
      }
    }
  }

  private static long lowest(int bits) {
    return bits >= 64 ? -1L : (1L << bits) - 1;
  }

  private void mark(int word, long mask) {
    if (mask != 0) {
      if (scratch[word] == 0) {
        touched[touchedCount++] = word;
      }
      scratch[word] |= mask;
    }
  }

  private void keep(int tuple) {
    int[] words = Arrays.copyOf(touched, touchedCount);
    long[] bits = new long[touchedCount];
    for (int i = 0; i < touchedCount; i++) {
      bits[i] = scratch[words[i]];
      scratch[words[i]] = 0;
    }
    touchedCount = 0;
    places[tuple] = words;
    masks[tuple] = bits;
  }

  /**
   * The cover of all that was walked.
   *
   * @param weights what counts how much
   * @param lineup how many paints a lineup has, which bounds how many can be transparent
   */
  Cover cover(Weights weights, int lineup) {
    prune();
    int count = 0;
    for (int[] words : places) {
      count += words.length;
    }
    int[] starts = new int[places.length + 1];
    int[] allPlaces = new int[count];
    long[] allMasks = new long[count];
    int at = 0;
    for (int tuple = 0; tuple < places.length; tuple++) {
      starts[tuple] = at;
      for (int i = 0; i < places[tuple].length; i++) {
        allPlaces[at] = moved(places[tuple][i]);
        allMasks[at++] = masks[tuple][i];
      }
    }
    starts[places.length] = at;
    int reachWords = (cells + 63) / 64;
    int[] aimStarts = {
      0,
      RING_WORDS,
      RING_WORDS + reachWords,
      darkStart + reachWords,
      darkStart + reachWords + 1,
      darkStart + reachWords + 2
    };
    return new Cover(
        candidates,
        starts,
        allPlaces,
        allMasks,
        aimStarts,
        perBit(weights, lineup, aimStarts, starts, allPlaces, allMasks));
  }

  /** Words gathered as ring, subjects, darks, transparency, reach become the order of the aims. */
  private int moved(int word) {
    if (word < RING_WORDS) {
      return word;
    }
    return word >= reachStart ? RING_WORDS + word - reachStart : word + (cells + 63) / 64;
  }

  private double[] perBit(
      Weights weights, int lineup, int[] aimStarts, int[] starts, int[] places, long[] masks) {
    long[] all = new long[aimStarts[aimStarts.length - 1]];
    for (int at = 0; at < starts[starts.length - 1]; at++) {
      all[places[at]] |= masks[at];
    }
    double[] perBit = new double[Aim.values().length];
    double sum = 0;
    for (Aim aim : Aim.values()) {
      int most = 0;
      for (int word = aimStarts[aim.ordinal()]; word < aimStarts[aim.ordinal() + 1]; word++) {
        most += Long.bitCount(all[word]);
      }
      if (aim == Aim.TRANSPARENCY) {
        most = Math.min(most, lineup);
      }
      if (most > 0) {
        perBit[aim.ordinal()] = weights.of(aim) / most;
        sum += weights.of(aim);
      }
    }
    for (int i = 0; i < perBit.length && sum > 0; i++) {
      perBit[i] /= sum;
    }
    return perBit;
  }

  /** Takes out of pairs what their paints have, out of triads what their paints and pairs have. */
  private void prune() {
    for (int high = 0; high < candidates; high++) {
      for (int middle = 0; middle < high; middle++) {
        for (int low = 0; low < middle; low++) {
          show(Cover.single(low), Cover.single(middle), Cover.single(high));
          show(
              Cover.pair(candidates, low, middle),
              Cover.pair(candidates, low, high),
              Cover.pair(candidates, middle, high));
          leaveOut(Cover.triad(candidates, low, middle, high));
        }
      }
    }
    for (int high = 0; high < candidates; high++) {
      for (int low = 0; low < high; low++) {
        show(Cover.single(low), Cover.single(high));
        leaveOut(Cover.pair(candidates, low, high));
      }
    }
  }

  private void show(int... tuples) {
    for (int tuple : tuples) {
      for (int i = 0; i < places[tuple].length; i++) {
        mark(places[tuple][i], masks[tuple][i]);
      }
    }
  }

  private void leaveOut(int tuple) {
    int[] words = places[tuple];
    long[] bits = masks[tuple];
    int kept = 0;
    for (int i = 0; i < words.length; i++) {
      long left = bits[i] & ~scratch[words[i]];
      if (left != 0) {
        words[kept] = words[i];
        bits[kept++] = left;
      }
    }
    places[tuple] = Arrays.copyOf(words, kept);
    masks[tuple] = Arrays.copyOf(bits, kept);
    for (int i = 0; i < touchedCount; i++) {
      scratch[touched[i]] = 0;
    }
    touchedCount = 0;
  }
}
