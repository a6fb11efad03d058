package org.panwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
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
import org.panwright.analysis.subject.Match;
import org.panwright.analysis.subject.PaintedPhoto;
import org.panwright.analysis.subject.RecipeBook;
import org.panwright.colour.Lab;
import org.panwright.kit.Kit;
import org.panwright.mixing.OpticsTable;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;

/** A subject: recipes for twelve colours, and a photo of a megapixel as it could be painted. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 4, time = 2)
@Fork(1)
public class SubjectBenchmark {
  private static final int COLOURS = 12;
  private static final int WIDTH = 1000;

  /** Paints to mix from. */
  @Param({"12", "48"})
  public int paints;

  private final List<Lab> targets = new ArrayList<>();
  private Kit kit;
  private List<String> ids;
  private OpticsTable table;
  private int[] photo;

  /** Lays out paints, colours and a photo of even noise, the hardest to look up. */
  @Setup
  public void layOut() {
    kit = BenchKit.of(paints, paints);
    ids = kit.shelf().paints().stream().map(Paint::id).toList();
    table = OpticsTable.of(kit.shelf().paints(), new PigmentLibrary(List.of()), kit.paper());
    Random random = new Random(12);
    for (int i = 0; i < COLOURS; i++) {
      targets.add(
          new Lab(
              25 + 65 * random.nextDouble(),
              -40 + 80 * random.nextDouble(),
              -40 + 90 * random.nextDouble()));
    }
    photo = random.ints((long) WIDTH * WIDTH, 0, 1 << 24).toArray();
  }

  /** Twelve colours, the net of the paints mixed anew. */
  @Benchmark
  public List<Match> recipes() {
    RecipeBook book = new RecipeBook();
    List<Match> best = new ArrayList<>();
    for (Lab target : targets) {
      best.addAll(book.nearest(table, ids, kit.washes(), target, 1, () -> false));
    }
    return best;
  }

  /** From the click to the picture: reach, lookup and all pixels. */
  @Benchmark
  public int[] paintedMegapixel() {
    return PaintedPhoto.with(table, ids, kit.washes(), () -> false)
        .paint(photo, WIDTH, done -> {}, () -> false);
  }
}
