package org.panwright.analysis.judge;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.panwright.analysis.balance.Balance;
import org.panwright.analysis.finding.StandIn;
import org.panwright.analysis.mud.Mud;
import org.panwright.analysis.reach.NetWalk;
import org.panwright.analysis.reach.Remembered;
import org.panwright.analysis.reach.Representatives;
import org.panwright.analysis.search.Case;
import org.panwright.analysis.search.StandInSearch;
import org.panwright.analysis.worth.LineupFigures;
import org.panwright.analysis.worth.ShelfFigures;
import org.panwright.colour.Lab;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.SubjectColour;
import org.panwright.mixing.MixGrid;
import org.panwright.mixing.OpticsTable;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.Paper;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.WashStrengths;

/**
 * Judges lineups; the door of this package. Any thread.
 *
 * <p>A judgement is a pure function of the kit and the lineup. The judge only remembers, by value,
 * the optics of the last few shelves and what they can mix.
 */
public final class Judge {
  private static final int SHELVES_REMEMBERED = 4;
  private static final int FIGURES_REMEMBERED = 8;

  private record TableKey(List<Paint> paints, Paper paper) {}

  private record ShelfKey(
      OpticsTable table, List<String> paintIds, List<String> members, WashStrengths washes) {}

  private final PigmentLibrary library;
  private final Remembered<TableKey, OpticsTable> tables = new Remembered<>(SHELVES_REMEMBERED);
  private final Remembered<ShelfKey, ShelfFigures> shelves = new Remembered<>(FIGURES_REMEMBERED);

  /** A judge who estimates paints without measured optics from {@code library}. */
  public Judge(PigmentLibrary library) {
    this.library = library;
  }

  /**
   * The judgement of one lineup of a kit.
   *
   * @param cancelled asked once for each paint of every walk over the mixes
   * @throws java.util.concurrent.CancellationException as soon as {@code cancelled} answers true
   */
  public Judgement judge(Kit kit, String lineupId, BooleanSupplier cancelled) {
    Lineup lineup = kit.lineup(lineupId).orElseThrow();
    List<Paint> paints = kit.shelf().paints();
    OpticsTable table =
        tables.get(
            new TableKey(paints, kit.paper()), () -> OpticsTable.of(paints, library, kit.paper()));
    List<String> own = lineup.paintIds(kit.boxOf(lineup));
    int[] members = table.indicesOf(own);
    NetWalk walk = new NetWalk(table, kit.washes(), cancelled);
    MixGrid grid = MixGrid.of(table, members, kit.washes(), cancelled);
    LineupFigures figures = LineupFigures.of(table, walk, members, kit, subjects(kit, lineupId));
    List<String> counted = counted(paints, own);
    ShelfFigures shelf =
        counted.size() == members.length
            ? new ShelfFigures(figures.ring(), figures.reach(), Set.copyOf(own))
            : shelves.get(
                new ShelfKey(table, counted, standing(counted, own), kit.washes()),
                () -> ShelfFigures.of(walk, table, kit.washes(), counted, own));
    Case open = new Case(kit, lineup, library, table, walk, figures, shelf);
    List<StandIn> standIns = StandInSearch.of(open, cancelled);
    Balance balance = open.balance();
    Mud mud = Mud.of(table, grid);
    Findings findings = Findings.of(open, standIns, balance, grid, mud);
    return new Judgement(
        kit,
        lineupId,
        table,
        grid,
        figures.ring(),
        shelf.ring(),
        figures.reach(),
        shelf.reach(),
        figures.darkest(),
        figures.earnings(),
        standIns,
        mud,
        balance,
        findings.told(),
        findings.muted());
  }

  /** The colours of all places the lineup is taken to, each once. */
  private static List<SubjectColour> subjects(Kit kit, String lineupId) {
    Map<Lab, SubjectColour> each = new LinkedHashMap<>();
    kit.outings().stream()
        .filter(outing -> outing.lineupId().equals(Optional.of(lineupId)))
        .flatMap(outing -> outing.subjects().stream())
        .forEach(subject -> each.putIfAbsent(subject.lab(), subject));
    return List.copyOf(each.values());
  }

  /** The lineup's paints if it matters to a shelf's figures which they are. */
  private static List<String> standing(List<String> counted, List<String> own) {
    return counted.size() <= Representatives.MOST ? List.of() : own;
  }

  /** The paints that count as the shelf: the owned ones and those in the lineup. */
  private static List<String> counted(List<Paint> paints, List<String> own) {
    return paints.stream()
        .filter(paint -> paint.ownership() == Ownership.OWNED || own.contains(paint.id()))
        .map(Paint::id)
        .toList();
  }
}
