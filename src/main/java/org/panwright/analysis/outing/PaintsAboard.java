package org.panwright.analysis.outing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.panwright.analysis.subject.Match;
import org.panwright.analysis.subject.Recipes;
import org.panwright.kit.Box;
import org.panwright.kit.FilledWell;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Outing;
import org.panwright.kit.PanKind;
import org.panwright.kit.Stock;
import org.panwright.kit.SubjectColour;
import org.panwright.kit.Well;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Portion;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;

/**
 * The paints that go on an outing, and how the paint used spreads over them.
 *
 * <p>Evenly means equal strength parts, so that a strong paint lasts longer than a weak one: a
 * paint's share by volume goes with its tint load. Where the outing names subject colours, half of
 * the paint goes evenly and half into the best recipes for those colours.
 */
final class PaintsAboard {
  /** The half of the paint that goes into what the place looks like: an assumption of ours. */
  private static final double FOR_SUBJECTS = 0.5;

  private final Kit kit;
  private final Outing outing;
  private final Optional<Lineup> lineup;
  private final List<Paint> paints;
  private final PigmentLibrary library;

  private PaintsAboard(
      Kit kit, Outing outing, Optional<Lineup> lineup, List<Paint> paints, PigmentLibrary library) {
    this.kit = kit;
    this.outing = outing;
    this.lineup = lineup;
    this.paints = paints;
    this.library = library;
  }

  static PaintsAboard of(Kit kit, Outing outing, PigmentLibrary library) {
    Optional<Lineup> lineup = outing.lineupId().flatMap(kit::lineup);
    List<Paint> paints =
        lineup.stream()
            .flatMap(l -> l.paintIds(kit.boxOf(l)).stream())
            .map(id -> kit.shelf().find(id).orElseThrow())
            .toList();
    return new PaintsAboard(kit, outing, lineup, paints, library);
  }

  /** In the order of the wells, each once. */
  List<Paint> paints() {
    return paints;
  }

  /** What is used of each when {@code totalMl} is used of all. */
  List<PaintUse> uses(double totalMl, BooleanSupplier cancelled) {
    if (paints.isEmpty()) {
      return List.of();
    }
    List<String> ids = paints.stream().map(Paint::id).toList();
    OpticsTable table =
        OpticsTable.of(ids, paints.stream().map(p -> p.optics(library)).toList(), kit.paper());
    double[] shares = shares(table, ids, cancelled);
    List<PaintUse> uses = new ArrayList<>();
    for (int i = 0; i < shares.length; i++) {
      uses.add(new PaintUse(ids.get(i), totalMl * shares[i], aboardMl(ids.get(i))));
    }
    return uses;
  }

  private double[] shares(OpticsTable table, List<String> ids, BooleanSupplier cancelled) {
    double[] even = new double[ids.size()];
    for (int i = 0; i < even.length; i++) {
      even[i] = table.tintLoad(i);
    }
    scaleToOne(even);
    if (outing.subjects().isEmpty()) {
      return even;
    }
    double[] subjects = subjectVolumes(table, ids, cancelled);
    scaleToOne(subjects);
    for (int i = 0; i < even.length; i++) {
      even[i] = (1 - FOR_SUBJECTS) * even[i] + FOR_SUBJECTS * subjects[i];
    }
    return even;
  }

  /** Paint for an area of each subject colour, as large as its share of the photo. */
  private double[] subjectVolumes(OpticsTable table, List<String> ids, BooleanSupplier cancelled) {
    boolean measured = outing.subjects().stream().anyMatch(subject -> subject.share() > 0);
    Recipes recipes = Recipes.of(table, ids, kit.washes(), cancelled);
    double[] volumes = new double[ids.size()];
    for (SubjectColour subject : outing.subjects()) {
      double area = measured ? subject.share() : 1;
      for (Match match : recipes.nearest(subject.lab(), 1)) {
        add(volumes, table, match, area);
      }
    }
    return volumes;
  }

  private static void add(double[] volumes, OpticsTable table, Match match, double area) {
    double parts = 0;
    for (Portion portion : match.recipe().portions()) {
      parts += portion.parts() * table.tintLoad(table.indexOf(portion.paintId()));
    }
    for (Portion portion : match.recipe().portions()) {
      int paint = table.indexOf(portion.paintId());
      volumes[paint] += area * match.load() * portion.parts() * table.tintLoad(paint) / parts;
    }
  }

  private static void scaleToOne(double[] shares) {
    double sum = 0;
    for (double share : shares) {
      sum += share;
    }
    for (int i = 0; i < shares.length; i++) {
      shares[i] /= sum;
    }
  }

  private double aboardMl(String paintId) {
    double ml = 0;
    for (Lineup carried : lineup.stream().toList()) {
      Box box = kit.boxOf(carried);
      for (Well well : box.wells()) {
        ml +=
            carried
                .in(well.id())
                .filter(filling -> filling.paintId().equals(paintId))
                .map(filling -> contentMl(box, well, filling))
                .orElse(0.0);
      }
    }
    return ml;
  }

  /**
   * What is known to be left in the well, else what such a pan usually holds.
   *
   * <p>Common practice: a full pan holds 3–4 ml, a half pan 1.5–2.5 ml, a dab 0.1–0.3 ml of paint.
   */
  private double contentMl(Box box, Well well, Filling filling) {
    Stock stock = kit.stock();
    double dab = stock.practice().dabMl();
    return stock
        .in(box.id(), well.id())
        .filter(filled -> filled.paintId().equals(filling.paintId()))
        .map(FilledWell::leftMl)
        .orElseGet(
            () -> {
              double full = stock.panFor(well).map(PanKind::brimMl).orElse(dab);
              return switch (filling.fill()) {
                case FULL -> full;
                case HALF -> full / 2;
                case DAB -> dab;
              };
            });
  }
}
