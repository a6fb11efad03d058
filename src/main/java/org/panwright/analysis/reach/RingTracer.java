package org.panwright.analysis.reach;

/**
 * Draws mixes on the ring: each colour at its own hue, and the straight line in Oklab between
 * neighbouring mixes at every step's hue it crosses.
 *
 * <p>A painter can mix and thin without steps, so between two neighbours of the net lies a curve.
 * The line stands for it: from neighbours A and B, at the hue with unit vector u,
 *
 * <pre>
 * t = (u × A) / (u × A − u × B),   chroma = u · (A + t (B − A)),   0 ≤ t ≤ 1
 * </pre>
 *
 * <p>Without it a pair that crosses 120° in eight steps would leave holes that no painter has.
 */
public abstract class RingTracer implements Net.Sink {
  private static final double[] COS = new double[Ring.STEPS];
  private static final double[] SIN = new double[Ring.STEPS];

  static {
    for (int step = 0; step < Ring.STEPS; step++) {
      COS[step] = Math.cos(Math.toRadians(step * Ring.STEP_DEG));
      SIN[step] = Math.sin(Math.toRadians(step * Ring.STEP_DEG));
    }
  }

  private final double[] hues = new double[Net.PATH * Net.WASHES];

  /** Some mix has chroma {@code c} and Oklab lightness {@code l} at a step. */
  protected abstract void raise(int step, double l, double c);

  @Override
  public void single(int paint, double[] colours) {
    trace(colours, 1);
  }

  @Override
  public void pair(int first, int second, double[] colours) {
    trace(colours, Net.PATH);
  }

  @Override
  public void triad(int first, int second, int third, double[] colours) {
    for (int at = 0; at < colours.length; at += Net.COLOUR) {
      point(colours, at);
    }
  }

  /** Points and lines of a path of mixes in all washes. */
  void trace(double[] colours, int mixes) {
    for (int mix = 0; mix < mixes; mix++) {
      for (int wash = 0; wash < Net.WASHES; wash++) {
        int place = mix * Net.WASHES + wash;
        int at = place * Net.COLOUR;
        hues[place] = point(colours, at);
        if (mix > 0) {
          line(colours, at - Net.MIX, hues[place - Net.WASHES], at, hues[place]);
        }
        if (wash > 0) {
          line(colours, at - Net.COLOUR, hues[place - 1], at, hues[place]);
        }
      }
    }
  }

  private double point(double[] colours, int at) {
    double a = colours[at + 4];
    double b = colours[at + 5];
    double hue = QuickColour.hueSteps(a, b);
    int nearest = (int) (hue + 0.5);
    raise(nearest == Ring.STEPS ? 0 : nearest, colours[at + 3], Math.sqrt(a * a + b * b));
    return hue;
  }

  private void line(double[] colours, int from, double fromHue, int to, double toHue) {
    double way = toHue - fromHue;
    if (way > Ring.STEPS / 2.0) {
      way -= Ring.STEPS;
    } else if (way < -Ring.STEPS / 2.0) {
      way += Ring.STEPS;
    }
    double low = way < 0 ? fromHue + way : fromHue;
    double high = way < 0 ? fromHue : fromHue + way;
    for (int step = (int) Math.ceil(low); step <= high; step++) {
      cross(colours, from, to, Math.floorMod(step, Ring.STEPS));
    }
  }

  private void cross(double[] colours, int from, int to, int step) {
    double cos = COS[step];
    double sin = SIN[step];
    double a1 = colours[from + 4];
    double b1 = colours[from + 5];
    double a2 = colours[to + 4];
    double b2 = colours[to + 5];
    double before = cos * b1 - sin * a1;
    double after = cos * b2 - sin * a2;
    if (before == after) {
      return;
    }
    double t = before / (before - after);
    double c = cos * (a1 + t * (a2 - a1)) + sin * (b1 + t * (b2 - b1));
    if (c > 0) {
      raise(step, colours[from + 3] + t * (colours[to + 3] - colours[from + 3]), c);
    }
  }
}
