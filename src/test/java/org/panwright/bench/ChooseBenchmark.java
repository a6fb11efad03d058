package org.panwright.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.panwright.analysis.arrange.Arrangement;
import org.panwright.analysis.arrange.Arranger;
import org.panwright.analysis.arrange.WellOrder;
import org.panwright.analysis.choose.Choice;
import org.panwright.analysis.choose.Chooser;
import org.panwright.analysis.choose.Conditions;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;

/** Proposing lineups, all three proposals with their reasons, and laying one into its wells. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class ChooseBenchmark {
  /** Paints chosen and paints on the shelf. */
  @Param({"12 of 20", "12 of 48"})
  public String lineup;

  private final Chooser chooser = new Chooser(new PigmentLibrary(List.of()));
  private final Arranger arranger = new Arranger(new PigmentLibrary(List.of()));
  private Kit kit;
  private int wells;

  /** Lays out the kit. */
  @Setup
  public void layOut() {
    String[] parts = lineup.split(" of ", 2);
    wells = Integer.parseInt(parts[0]);
    kit = BenchKit.of(Integer.parseInt(parts[1]), wells);
  }

  /** Three proposals. */
  @Benchmark
  public Choice choose() {
    return chooser.choose(kit, Conditions.of(wells, 0), () -> false, progress -> {});
  }

  /** The lineup of the kit so that stainers do no harm. */
  @Benchmark
  public Arrangement arrange() {
    return arranger.arrange(
        kit,
        kit.lineup(BenchKit.LINEUP).orElseThrow(),
        WellOrder.KIND_NEIGHBOURS,
        java.util.Set.of(),
        false,
        () -> false);
  }
}
