package org.panwright.analysis.choose;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.panwright.analysis.balance.HueGroup;
import org.panwright.analysis.balance.Looks;
import org.panwright.analysis.balance.PaintGroups;
import org.panwright.kit.Kit;
import org.panwright.mixing.OpticsTable;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;

/**
 * Proposes lineups from a shelf. Any thread.
 *
 * <p>A choice is a pure function of the kit and the conditions; neither time nor the machine has a
 * part in it.
 */
public final class Chooser {
  /** The most paints looked at; of larger shelves those most unlike each other. */
  public static final int MOST_CONSIDERED = 48;

  /** How many lineups are proposed. */
  public static final int PROPOSALS = 3;

  private final PigmentLibrary library;

  /** How far a choice has come: a share 0..1 and the best paints so far. */
  public record Progress(double share, List<String> best, double worth) {
    public Progress {
      best = List.copyOf(best);
    }
  }

  /** A chooser who estimates paints without measured optics from {@code library}. */
  public Chooser(PigmentLibrary library) {
    this.library = library;
  }

  /**
   * The lineups proposed.
   *
   * @param cancelled asked now and then
   * @param progress told now and then, on the caller's thread
   * @throws java.util.concurrent.CancellationException as soon as {@code cancelled} answers true
   * @throws IllegalArgumentException if the conditions name a paint the shelf does not have
   */
  public Choice choose(
      Kit kit, Conditions conditions, BooleanSupplier cancelled, Consumer<Progress> progress) {
    conditions.must().forEach(id -> requireKnown(kit, id));
    conditions.never().forEach(id -> requireKnown(kit, id));
    Candidates candidates = new Candidates(kit, library, conditions);
    List<Paint> allowed = candidates.paints();
    Map<String, HueGroup> groups = groups(kit, allowed, conditions);
    List<Contradiction> contradictions = candidates.contradictions(groups);
    if (!contradictions.isEmpty()) {
      return new Choice(List.of(), 0, allowed.size(), 0, 0, contradictions);
    }
    int most = Math.max(MOST_CONSIDERED, conditions.places());
    List<Paint> considered =
        new FarApart(kit, library).of(allowed, conditions, groups, Math.min(63, most));
    return new ChoiceRun(kit, library, conditions, considered, groups, cancelled, progress)
        .choice(allowed.size());
  }

  private static void requireKnown(Kit kit, String paintId) {
    if (kit.shelf().find(paintId).isEmpty()) {
      throw new IllegalArgumentException("the shelf has no paint " + paintId);
    }
  }

  private Map<String, HueGroup> groups(Kit kit, List<Paint> paints, Conditions conditions) {
    Map<String, HueGroup> groups = new HashMap<>();
    if (conditions.mostOfAGroup().isPresent()) {
      OpticsTable table = OpticsTable.of(paints, library, kit.paper());
      PaintGroups filed = new PaintGroups(library, new Looks(table, kit.washes()));
      paints.forEach(paint -> groups.put(paint.id(), filed.of(paint)));
    }
    return groups;
  }
}
