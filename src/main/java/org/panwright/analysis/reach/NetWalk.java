package org.panwright.analysis.reach;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.panwright.colour.Light;
import org.panwright.mixing.BatchMixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Ratio;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

/** Walks the {@link Net} of some paints of a table and gives each colour to a sink; one thread. */
public final class NetWalk {
  private final OpticsTable table;
  private final BooleanSupplier cancelled;
  private final BatchMixer mixer;
  private final double[] washes = new double[Net.WASHES];
  private final double[][] singles;
  private final double[] path = new double[Net.PATH * Net.MIX];
  private final double[] triad = new double[Net.TRIADS.size() * Net.MIX];

  /**
   * @param cancelled asked once for each paint of a walk
   */
  public NetWalk(OpticsTable table, WashStrengths strengths, BooleanSupplier cancelled) {
    this.table = table;
    this.cancelled = cancelled;
    mixer = new BatchMixer(table, Light.D65);
    singles = new double[table.size()][];
    for (Wash wash : Wash.values()) {
      washes[wash.ordinal()] = strengths.load(wash);
    }
  }

  /**
   * The whole net of {@code paints}.
   *
   * @throws CancellationException as soon as it is no longer wanted
   */
  public void all(int[] paints, Net.Sink sink) {
    for (int i = 0; i < paints.length; i++) {
      with(paints[i], paints, i + 1, sink);
    }
  }

  /**
   * Only those mixes of the net of {@code others} and {@code added} that hold {@code added}.
   *
   * @throws CancellationException as soon as it is no longer wanted
   */
  public void with(int added, int[] others, Net.Sink sink) {
    with(added, others, 0, sink);
  }

  /**
   * The net of {@code paints} without its mixes of three.
   *
   * @throws CancellationException as soon as it is no longer wanted
   */
  public void pairs(int[] paints, Net.Sink sink) {
    for (int i = 0; i < paints.length; i++) {
      requireWanted();
      sink.single(paints[i], single(paints[i]));
      for (int j = i + 1; j < paints.length; j++) {
        sink.pair(paints[i], paints[j], pair(paints[i], paints[j]));
      }
    }
  }

  private void with(int added, int[] others, int from, Net.Sink sink) {
    requireWanted();
    sink.single(added, single(added));
    for (int j = from; j < others.length; j++) {
      sink.pair(added, others[j], pair(added, others[j]));
      for (int k = j + 1; k < others.length; k++) {
        sink.triad(added, others[j], others[k], triad(added, others[j], others[k]));
      }
    }
  }

  private void requireWanted() {
    if (cancelled.getAsBoolean()) {
      throw new CancellationException("mixes no longer wanted");
    }
  }

  private double[] single(int paint) {
    if (singles[paint] == null) {
      double[] colours = new double[Net.MIX];
      mixer.clear();
      mixer.add(paint, 1);
      thin(colours, 0);
      singles[paint] = colours;
    }
    return singles[paint];
  }

  private double[] pair(int first, int second) {
    System.arraycopy(single(first), 0, path, 0, Net.MIX);
    System.arraycopy(single(second), 0, path, (Net.PATH - 1) * Net.MIX, Net.MIX);
    double firstTint = table.tintLoad(first);
    double secondTint = table.tintLoad(second);
    for (int i = 1; i < Net.PATH - 1; i++) {
      Ratio ratio = Ratio.GRID.get(i - 1);
      double a = ratio.first() * firstTint;
      double b = ratio.second() * secondTint;
      mixer.clear();
      mixer.add(first, a / (a + b));
      mixer.add(second, b / (a + b));
      thin(path, i * Net.MIX);
    }
    return path;
  }

  private double[] triad(int first, int second, int third) {
    double firstTint = table.tintLoad(first);
    double secondTint = table.tintLoad(second);
    double thirdTint = table.tintLoad(third);
    for (int i = 0; i < Net.TRIADS.size(); i++) {
      Net.Triad parts = Net.TRIADS.get(i);
      double a = parts.first() * firstTint;
      double b = parts.second() * secondTint;
      double c = parts.third() * thirdTint;
      double total = a + b + c;
      mixer.clear();
      mixer.add(first, a / total);
      mixer.add(second, b / total);
      mixer.add(third, c / total);
      thin(triad, i * Net.MIX);
    }
    return triad;
  }

  /** Writes the mixer's coat in all washes. */
  private void thin(double[] colours, int at) {
    for (int wash = 0; wash < washes.length; wash++) {
      int place = at + wash * Net.COLOUR;
      mixer.writeXyz(washes[wash], colours, place);
      QuickColour.convert(colours, place);
    }
  }
}
