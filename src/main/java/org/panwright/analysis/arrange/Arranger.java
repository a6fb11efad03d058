package org.panwright.analysis.arrange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.panwright.analysis.balance.HueGroup;
import org.panwright.analysis.balance.Looks;
import org.panwright.analysis.balance.PaintGroups;
import org.panwright.colour.Hue;
import org.panwright.colour.Oklch;
import org.panwright.kit.Box;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.Staining;

/**
 * Lays lineups into the wells of their boxes. Any thread.
 *
 * <p>The wells that are filled stay filled, and paints in dab places stay among those.
 */
public final class Arranger {
  /** Where the circle of hues is cut: between green yellows and yellow greens. */
  private static final double CUT_DEG = 120;

  private static final double EARTHS_FROM = 400;
  private static final double NEUTRALS_FROM = 600;

  /** The warmest hue, orange (common practice). */
  private static final double WARMEST_DEG = 60;

  private final PigmentLibrary library;

  /** An arranger who estimates paints without measured optics from {@code library}. */
  public Arranger(PigmentLibrary library) {
    this.library = library;
  }

  /**
   * A lineup laid anew.
   *
   * @param pinnedWells ids of wells that keep their paint
   * @param leftHanded whether the order runs as in a mirror
   * @param cancelled asked now and then
   * @throws java.util.concurrent.CancellationException as soon as {@code cancelled} answers true
   */
  public Arrangement arrange(
      Kit kit,
      Lineup lineup,
      WellOrder order,
      Set<String> pinnedWells,
      boolean leftHanded,
      BooleanSupplier cancelled) {
    Box box = kit.boxOf(lineup);
    List<Well> wells =
        WellLayout.order(box, leftHanded).stream()
            .filter(well -> lineup.in(well.id()).isPresent())
            .toList();
    if (wells.isEmpty()) {
      return new Arrangement(lineup.fillings(), 0, 0, 0);
    }
    return order == WellOrder.KIND_NEIGHBOURS
        ? kind(kit, lineup, wells, pinnedWells, cancelled)
        : chained(kit, lineup, order, wells, pinnedWells);
  }

  private Arrangement chained(
      Kit kit, Lineup lineup, WellOrder order, List<Well> wells, Set<String> pinnedWells) {
    Map<String, Filling> fillings = new LinkedHashMap<>();
    double before = 0;
    double cost = 0;
    double bound = 0;
    Map<String, Double> keys = keys(kit, lineup, order);
    for (boolean dabs : new boolean[] {false, true}) {
      List<Well> chain = wells.stream().filter(w -> WellLayout.isDab(w) == dabs).toList();
      double[] chainKeys =
          chain.stream()
              .mapToDouble(w -> keys.get(order == WellOrder.AS_THEY_ARE ? w.id() : in(lineup, w)))
              .toArray();
      boolean[] pinned = new boolean[chain.size()];
      int[] now = new int[chain.size()];
      for (int i = 0; i < pinned.length; i++) {
        pinned[i] = pinnedWells.contains(chain.get(i).id());
        now[i] = i;
      }
      ChainOrder.Laid laid = ChainOrder.lay(chainKeys, pinned);
      before += ChainOrder.cost(chainKeys, now);
      cost += laid.cost();
      bound += laid.bound();
      for (int i = 0; i < chain.size(); i++) {
        Well from = chain.get(laid.places().get(i));
        fillings.put(chain.get(i).id(), lineup.in(from.id()).orElseThrow());
      }
    }
    return new Arrangement(fillings, before, cost, bound);
  }

  private Arrangement kind(
      Kit kit,
      Lineup lineup,
      List<Well> wells,
      Set<String> pinnedWells,
      BooleanSupplier cancelled) {
    int size = wells.size();
    double[][] harm = harm(kit, lineup, wells);
    boolean[][] beside = new boolean[size][size];
    boolean[] pinned = new boolean[size];
    int[] kinds = new int[size];
    for (int i = 0; i < size; i++) {
      pinned[i] = pinnedWells.contains(wells.get(i).id());
      kinds[i] = WellLayout.isDab(wells.get(i)) ? 1 : 0;
      for (int j = 0; j < size; j++) {
        beside[i][j] = i != j && WellLayout.areNeighbours(wells.get(i), wells.get(j));
      }
    }
    NeighbourOrder laid = new NeighbourOrder(harm, beside, pinned, kinds, cancelled);
    int[] now = new int[size];
    java.util.Arrays.setAll(now, i -> i);
    double before = laid.cost(now);
    laid.run();
    Map<String, Filling> fillings = new LinkedHashMap<>();
    int[] places = laid.places();
    for (int i = 0; i < size; i++) {
      fillings.put(wells.get(i).id(), lineup.in(wells.get(places[i]).id()).orElseThrow());
    }
    return new Arrangement(fillings, before, laid.cost(), laid.bound());
  }

  /**
   * How a strong stainer fouls a light, weak neighbour:
   *
   * <pre>
   * harm(a, b) = foul(a → b) + foul(b → a)
   * foul(a → b) = stain(a) · max(0, ln(tintLoad(b) / tintLoad(a))) · max(0, L*(b) − L*(a)) / 100
   * </pre>
   */
  private double[][] harm(Kit kit, Lineup lineup, List<Well> wells) {
    List<Paint> paints =
        wells.stream().map(w -> kit.shelf().find(in(lineup, w)).orElseThrow()).toList();
    List<Paint> each = paints.stream().distinct().toList();
    OpticsTable table = OpticsTable.of(each, library, kit.paper());
    Mixer mixer = new Mixer(table);
    int size = paints.size();
    double[] light = new double[size];
    double[] load = new double[size];
    double[] stain = new double[size];
    for (int i = 0; i < size; i++) {
      light[i] = mixer.lab(Recipe.of(paints.get(i).id()), 1).l();
      load[i] = table.tintLoad(table.indexOf(paints.get(i).id()));
      Staining staining = paints.get(i).handling().staining();
      stain[i] = staining.ordinal() / (double) (Staining.values().length - 1);
    }
    double[][] harm = new double[size][size];
    for (int a = 0; a < size; a++) {
      for (int b = 0; b < size; b++) {
        double foul =
            stain[a]
                * Math.max(0, Math.log(load[b] / load[a]))
                * Math.max(0, light[b] - light[a])
                / 100;
        harm[a][b] += foul;
        harm[b][a] += foul;
      }
    }
    return harm;
  }

  private Map<String, Double> keys(Kit kit, Lineup lineup, WellOrder order) {
    Box box = kit.boxOf(lineup);
    Map<String, Double> keys = new LinkedHashMap<>();
    if (order == WellOrder.AS_THEY_ARE) {
      for (int i = 0; i < box.wells().size(); i++) {
        keys.put(box.wells().get(i).id(), (double) i);
      }
      return keys;
    }
    List<Paint> paints =
        lineup.paintIds(box).stream().map(id -> kit.shelf().find(id).orElseThrow()).toList();
    OpticsTable table = OpticsTable.of(paints, library, kit.paper());
    Looks looks = new Looks(table, kit.washes());
    PaintGroups groups = new PaintGroups(library, looks);
    for (Paint paint : paints) {
      double light = looks.masstone(paint.id()).l();
      Oklch milk = looks.body(paint.id());
      keys.put(
          paint.id(),
          switch (order) {
            case HUE -> hueKey(groups.of(paint), milk, light);
            case WARM_TO_COOL ->
                -100 * milk.c() * Math.cos(Math.toRadians(milk.hueDeg() - WARMEST_DEG));
            default -> 100 - light;
          });
    }
    return keys;
  }

  /** Degrees from the cut downwards; earths and neutrals after them, light before dark. */
  private static double hueKey(HueGroup group, Oklch milk, double light) {
    if (group == HueGroup.EARTHS) {
      return EARTHS_FROM + 100 - light;
    }
    return group == HueGroup.NEUTRALS
        ? NEUTRALS_FROM + 100 - light
        : Hue.normal(CUT_DEG - milk.hueDeg());
  }

  private static String in(Lineup lineup, Well well) {
    return lineup.in(well.id()).orElseThrow().paintId();
  }

  /**
   * Paints put into the wells of an empty lineup: those kept where they are first, then pans and
   * dabs in counting order; what finds no dab place sits as a dab in a pan.
   *
   * @param kept the wells that keep their paint, by well id
   * @return the fillings; empty if there are more paints than wells
   */
  public static Optional<Map<String, Filling>> place(
      Box box, List<String> pans, List<String> dabs, Map<String, Filling> kept) {
    Map<String, Filling> fillings = new LinkedHashMap<>(kept);
    List<String> sitting = kept.values().stream().map(Filling::paintId).toList();
    List<Well> panWells = new ArrayList<>();
    List<Well> dabWells = new ArrayList<>();
    for (Well well : box.wells()) {
      if (!kept.containsKey(well.id())) {
        (WellLayout.isDab(well) ? dabWells : panWells).add(well);
      }
    }
    for (String paint : pans) {
      if (!sitting.contains(paint)) {
        if (panWells.isEmpty()) {
          return Optional.empty();
        }
        fillings.put(panWells.remove(0).id(), new Filling(paint, Fill.FULL));
      }
    }
    dabWells.addAll(panWells);
    for (String paint : dabs) {
      if (!sitting.contains(paint)) {
        if (dabWells.isEmpty()) {
          return Optional.empty();
        }
        fillings.put(dabWells.remove(0).id(), new Filling(paint, Fill.DAB));
      }
    }
    return Optional.of(fillings);
  }
}
