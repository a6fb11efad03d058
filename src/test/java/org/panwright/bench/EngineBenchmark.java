package org.panwright.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.panwright.colour.Light;
import org.panwright.kit.Kit;
import org.panwright.mixing.BatchMixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Ratio;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.WashStrengths;

/** Coats a second of the batch mixer, 36 bands each, XYZ and CIELAB included. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class EngineBenchmark {
  private static final int PAINTS = 20;
  private static final double[] LOADS =
      WashStrengths.USUAL.loads().stream().mapToDouble(Double::doubleValue).toArray();
  private static final int COATS = PAINTS * 7 * 5;

  private BatchMixer mixer;
  private final double[] lab = new double[3];
  private int first;

  /** Lays out the optics. */
  @Setup
  public void layOut() {
    Kit kit = BenchKit.of(PAINTS, PAINTS);
    OpticsTable table =
        OpticsTable.of(kit.shelf().paints(), new PigmentLibrary(List.of()), kit.paper());
    mixer = new BatchMixer(table, Light.D65);
  }

  /** One paint with all others, in seven ratios, each a fresh mix for each of five washes. */
  @Benchmark
  @OperationsPerInvocation(COATS)
  public double freshMixes() {
    double sum = 0;
    first = (first + 1) % PAINTS;
    for (int second = 0; second < PAINTS; second++) {
      for (Ratio ratio : Ratio.GRID) {
        for (double load : LOADS) {
          stir(second, ratio);
          mixer.writeLab(load, lab, 0);
          sum += lab[0];
        }
      }
    }
    return sum;
  }

  /** The same coats where five washes share a mix, as in the mix grid. */
  @Benchmark
  @OperationsPerInvocation(COATS)
  public double washesOfMixes() {
    double sum = 0;
    first = (first + 1) % PAINTS;
    for (int second = 0; second < PAINTS; second++) {
      for (Ratio ratio : Ratio.GRID) {
        stir(second, ratio);
        for (double load : LOADS) {
          mixer.writeLab(load, lab, 0);
          sum += lab[0];
        }
      }
    }
    return sum;
  }

  private void stir(int second, Ratio ratio) {
    mixer.clear();
    mixer.add(first, ratio.firstShare());
    mixer.add(second, 1 - ratio.firstShare());
  }
}
