package org.panwright.analysis.mud;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.mixing.MixGrid;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Ratio;
import org.panwright.paint.Wash;

/**
 * Where a lineup's pairs lose chroma, useful greys kept apart.
 *
 * <p>Measured in the wash {@link #WASH}. Pairs in which one paint is itself a neutral (C* below
 * {@value #COLOURED_FROM}) lose nothing that was there and are left out.
 *
 * @param muddy pairs that are no greys, worst first
 * @param greys pairs that reach a grey or dark, darkest first
 * @param byPaint mean loss of each paint over its muddy pairs, by id, in grid order; paints without
 *     such a pair are missing
 */
public record Mud(List<PairMud> muddy, List<PairMud> greys, Map<String, Double> byPaint) {
  /** The wash pairs are compared in. */
  public static final Wash WASH = Wash.MILK;

  private static final double COLOURED_FROM = 12;

  public Mud {
    muddy = List.copyOf(muddy);
    greys = List.copyOf(greys);
    byPaint = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(byPaint));
  }

  /** The mud of a grid's pairs. */
  public static Mud of(OpticsTable table, MixGrid grid) {
    List<PairMud> muddy = new ArrayList<>();
    List<PairMud> greys = new ArrayList<>();
    for (int row = 0; row < grid.size(); row++) {
      for (int column = row + 1; column < grid.size(); column++) {
        between(table, grid, row, column).ifPresent(p -> (p.isGrey() ? greys : muddy).add(p));
      }
    }
    muddy.sort(Comparator.comparingDouble(PairMud::loss).reversed());
    greys.sort(Comparator.comparingDouble(PairMud::greyestL));
    return new Mud(muddy, greys, byPaint(table, grid, muddy));
  }

  /** What mixing two paints of a grid does to chroma; empty if one of them is a neutral. */
  public static Optional<PairMud> between(OpticsTable table, MixGrid grid, int row, int column) {
    return isColoured(grid, row) && isColoured(grid, column)
        ? Optional.of(pair(table, grid, row, column))
        : Optional.empty();
  }

  private static boolean isColoured(MixGrid grid, int row) {
    return grid.lab(row, row, Ratio.EVEN, WASH).chroma() >= COLOURED_FROM;
  }

  /**
   * The loss of a pair.
   *
   * <pre>
   * expected(r) = s C_first + (1 − s) C_second      s = the first paint's share of parts
   * loss        = mean over r of max(0, 1 − C_mix(r) / expected(r))       C = OKLCh chroma
   * </pre>
   *
   * <p>The expected chroma is that of walking along the hue circle from one paint to the other.
   */
  private static PairMud pair(OpticsTable table, MixGrid grid, int row, int column) {
    double first = oklchChroma(grid.lab(row, row, Ratio.EVEN, WASH));
    double second = oklchChroma(grid.lab(column, column, Ratio.EVEN, WASH));
    double loss = 0;
    int greyest = 0;
    Lab greyestLab = grid.lab(row, column, 0, WASH);
    for (int i = 0; i < Ratio.GRID.size(); i++) {
      Lab mix = grid.lab(row, column, i, WASH);
      double share = Ratio.GRID.get(i).firstShare();
      double expected = share * first + (1 - share) * second;
      loss += Math.max(0, 1 - oklchChroma(mix) / expected) / Ratio.GRID.size();
      if (mix.chroma() < greyestLab.chroma()) {
        greyest = i;
        greyestLab = mix;
      }
    }
    return new PairMud(
        table.ids().get(grid.paint(row)),
        table.ids().get(grid.paint(column)),
        loss,
        Ratio.GRID.get(greyest),
        greyestLab.chroma(),
        greyestLab.l());
  }

  private static double oklchChroma(Lab lab) {
    return Oklab.ofD65(lab.toXyz(Light.D65.white())).toOklch().c();
  }

  private static Map<String, Double> byPaint(OpticsTable table, MixGrid grid, List<PairMud> muddy) {
    Map<String, Double> byPaint = new LinkedHashMap<>();
    for (int row = 0; row < grid.size(); row++) {
      String id = table.ids().get(grid.paint(row));
      OptionalDouble mean =
          muddy.stream()
              .filter(p -> p.firstPaintId().equals(id) || p.secondPaintId().equals(id))
              .mapToDouble(PairMud::loss)
              .average();
      if (mean.isPresent()) {
        byPaint.put(id, mean.getAsDouble());
      }
    }
    return byPaint;
  }
}
