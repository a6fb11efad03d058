package org.panwright.analysis.reach;

import java.util.Arrays;
import org.panwright.colour.Hue;

/**
 * The hue ring of some paints: for each 5° of OKLCh hue the highest chroma any mix reaches, over
 * all lightnesses and for light, middle and dark mixes apart.
 *
 * <p>Step {@code i} stands for hues from {@code 5i − 2.5} to {@code 5i + 2.5} degrees. 0 means that
 * no mix lies there. Counted on the fixed net of mixes that {@code docs/numbers.md} describes.
 */
public final class Ring {
  /** Number of steps round the circle. */
  public static final int STEPS = 72;

  /** Degrees from one step to the next. */
  public static final double STEP_DEG = 5;

  /** OKLCh lightness from which a mix counts as light. */
  public static final double LIGHT_FROM = 0.70;

  /** OKLCh lightness below which a mix counts as dark. */
  public static final double DARK_BELOW = 0.45;

  /** The parts a ring is told apart by. */
  public enum Part {
    ALL,
    LIGHT,
    MIDDLE,
    DARK
  }

  private final double[][] chroma;

  private Ring(double[][] chroma) {
    this.chroma = chroma;
  }

  /** The step that holds a hue in degrees. */
  public static int step(double hueDeg) {
    return (int) Math.round(Hue.normal(hueDeg) / STEP_DEG) % STEPS;
  }

  /** The highest chroma at a step, 0..71. */
  public double chroma(int step) {
    return chroma(Part.ALL, step);
  }

  /** The highest chroma at a step among light, middle or dark mixes. */
  public double chroma(Part part, int step) {
    return chroma[part.ordinal()][step];
  }

  /** A fresh array of the 72 chromas over all lightnesses. */
  public double[] toArray() {
    return chroma[Part.ALL.ordinal()].clone();
  }

  /** The sum of chroma over all steps: how much clean colour there is in all. */
  public double sum() {
    return Arrays.stream(chroma[Part.ALL.ordinal()]).sum();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Ring that && Arrays.deepEquals(chroma, that.chroma);
  }

  @Override
  public int hashCode() {
    return Arrays.deepHashCode(chroma);
  }

  /** Gathers mixes into a ring; one thread. */
  public static final class Gatherer extends RingTracer {
    private final double[][] highest;

    /** A gatherer of nothing yet. */
    public Gatherer() {
      highest = new double[Part.values().length][STEPS];
    }

    /** A gatherer that has already gathered {@code start}. */
    public Gatherer(Ring start) {
      highest = copy(start.chroma);
    }

    @Override
    protected void raise(int step, double l, double c) {
      Part part = l >= LIGHT_FROM ? Part.LIGHT : l < DARK_BELOW ? Part.DARK : Part.MIDDLE;
      raise(Part.ALL, step, c);
      raise(part, step, c);
    }

    private void raise(Part part, int step, double c) {
      double[] row = highest[part.ordinal()];
      row[step] = Math.max(row[step], c);
    }

    /** The ring of all that was gathered so far. */
    public Ring ring() {
      return new Ring(copy(highest));
    }

    private static double[][] copy(double[][] rows) {
      return Arrays.stream(rows).map(double[]::clone).toArray(double[][]::new);
    }
  }
}
