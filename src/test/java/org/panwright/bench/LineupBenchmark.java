package org.panwright.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
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
import org.panwright.analysis.judge.Judge;
import org.panwright.analysis.judge.Judgement;
import org.panwright.kit.Kit;
import org.panwright.mixing.MixGrid;
import org.panwright.mixing.OpticsTable;
import org.panwright.paint.PigmentLibrary;

/** What a painter waits for after a drop: the mix grid, and the whole judgement of a lineup. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class LineupBenchmark {
  /** Paints on the shelf, all of them in the box. */
  @Param({"20", "48"})
  public int paints;

  private Kit kit;
  private Judge judge;
  private OpticsTable table;
  private int[] all;

  /** Lays out the kit. */
  @Setup
  public void layOut() {
    PigmentLibrary library = new PigmentLibrary(List.of());
    kit = BenchKit.of(paints, paints);
    judge = new Judge(library);
    table = OpticsTable.of(kit.shelf().paints(), library, kit.paper());
    all = IntStream.range(0, paints).toArray();
  }

  /** All pairs × 7 ratios × 5 washes. */
  @Benchmark
  public MixGrid mixGrid() {
    return MixGrid.of(table, all, kit.washes(), () -> false);
  }

  /** The optics of the shelf laid out anew, as after an edit of a paint. */
  @Benchmark
  public OpticsTable opticsTable() {
    return OpticsTable.of(kit.shelf().paints(), new PigmentLibrary(List.of()), kit.paper());
  }

  /** Grid, rings and findings: from the drop of a paint to the finished picture. */
  @Benchmark
  public Judgement judgement() {
    return judge.judge(kit, BenchKit.LINEUP, () -> false);
  }
}
