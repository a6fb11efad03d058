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
import org.panwright.analysis.judge.Judge;
import org.panwright.analysis.judge.Judgement;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;

/** Judging a lineup that is a part of the shelf: after a drop, and when nothing is remembered. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class JudgeBenchmark {
  /** Wells filled and paints on the shelf. */
  @Param({"12 of 20", "24 of 48"})
  public String lineup;

  private final PigmentLibrary library = new PigmentLibrary(List.of());
  private final Judge judge = new Judge(library);
  private Kit before;
  private Kit after;
  private boolean dropped;

  /** Lays out the kit, and the same with one paint exchanged for one of the shelf. */
  @Setup
  public void layOut() {
    String[] parts = lineup.split(" of ", 2);
    int wells = Integer.parseInt(parts[0]);
    before = BenchKit.of(Integer.parseInt(parts[1]), wells);
    after = new Edit.PlacePaint(BenchKit.LINEUP, "w0", "p" + wells).apply(before);
  }

  /** A paint dropped into a well: the optics of the shelf and its ring are remembered. */
  @Benchmark
  public Judgement afterADrop() {
    dropped = !dropped;
    return judge.judge(dropped ? after : before, BenchKit.LINEUP, () -> false);
  }

  /** The first look at a kit. */
  @Benchmark
  public Judgement afresh() {
    return new Judge(library).judge(before, BenchKit.LINEUP, () -> false);
  }
}
