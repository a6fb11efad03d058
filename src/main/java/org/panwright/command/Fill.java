package org.panwright.command;

import java.io.PrintStream;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.panwright.analysis.fill.FillPlan;
import org.panwright.analysis.fill.PaintDemand;
import org.panwright.analysis.fill.PlannedWell;
import org.panwright.analysis.fill.Sharing;
import org.panwright.analysis.outing.NextOuting;
import org.panwright.analysis.outing.Refill;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.paint.PigmentLibrary;
import org.panwright.store.FileProblemException;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.words.CommandWords;
import org.panwright.words.FillCommandWords;
import org.panwright.words.FillWords;

/**
 * {@code fill KIT [--lineup NAME] [--in-order] [--json]}: how to fill the boxes, what runs short
 * and what to buy. Without a name it plans for the first lineup of every box.
 */
final class Fill implements Command {
  private static final String NAME = "fill";

  @Override
  public void run(List<String> words, PrintStream out, PrintStream err)
      throws BadUseException, FileProblemException {
    Arguments arguments = Arguments.of(NAME, words, Set.of("json", "in-order"), Set.of("lineup"));
    if (arguments.plain().size() != 1) {
      throw new BadUseException(FillCommandWords.wantsOneKit(NAME, arguments.plain().size()));
    }
    PigmentLibrary library = PigmentLibraryReader.read();
    Kit kit = OpenKit.at(arguments.plain().get(0), library, err);
    if (kit.lineups().isEmpty()) {
      throw new BadUseException(CommandWords.noLineup(kit.name()));
    }
    List<String> lineups =
        arguments.value("lineup").isPresent()
            ? List.of(NamedLineup.in(kit, arguments.value("lineup").get()).id())
            : firstOfEachBox(kit);
    Sharing sharing = arguments.has("in-order") ? Sharing.IN_ORDER : Sharing.EVENLY;
    FillPlan plan = FillPlan.of(kit, lineups, sharing);
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    Map<String, List<Refill>> refills = new LinkedHashMap<>();
    for (String id : lineups) {
      Map<String, Double> used =
          NextOuting.of(kit, id, today)
              .map(outing -> NextOuting.use(kit, outing, library, () -> false))
              .orElse(Map.of());
      refills.put(id, Refill.before(kit, kit.lineup(id).orElseThrow(), used));
    }
    out.println(
        arguments.has("json")
            ? Json.text(FillJson.of(kit, plan, refills, today))
            : text(kit, plan, refills));
  }

  static List<String> firstOfEachBox(Kit kit) {
    Map<String, String> first = new LinkedHashMap<>();
    for (Lineup lineup : kit.lineups()) {
      first.putIfAbsent(lineup.boxId(), lineup.id());
    }
    return List.copyOf(first.values());
  }

  private static String text(Kit kit, FillPlan plan, Map<String, List<Refill>> refills) {
    List<String> lines = new ArrayList<>(FillWords.summary(plan, kit));
    for (String id : plan.lineupIds()) {
      Lineup lineup = kit.lineup(id).orElseThrow();
      lines.add("");
      lines.add(FillCommandWords.heading(lineup.name(), kit.boxOf(lineup).name()));
      for (PlannedWell well : plan.wells()) {
        if (well.lineupId().equals(id)) {
          lines.add("  " + FillWords.line(well, kit));
        }
      }
    }
    add(
        lines,
        FillCommandWords.TUBES,
        plan.tubes().stream()
            .filter(tube -> tube.usedMl() > 0)
            .map(tube -> FillWords.line(tube, kit))
            .toList());
    add(
        lines,
        FillCommandWords.TO_BUY,
        plan.runningShort().stream().map(d -> FillWords.shortage(d, kit)).toList());
    add(
        lines,
        FillCommandWords.PRICES,
        plan.paints().stream()
            .filter(demand -> demand.fillCost().isPresent())
            .map(demand -> price(demand, kit))
            .toList());
    List<String> refillLines = new ArrayList<>();
    refills.forEach(
        (id, list) ->
            list.forEach(
                refill ->
                    refillLines.add(
                        FillWords.line(refill, kit.boxOf(kit.lineup(id).orElseThrow()), kit))));
    add(lines, FillCommandWords.REFILL, refillLines);
    lines.add("");
    lines.add(FillWords.USUAL);
    return String.join("\n", lines);
  }

  private static String price(PaintDemand demand, Kit kit) {
    return FillCommandWords.price(
        FillWords.paint(demand.paintId(), kit),
        FillWords.money(demand.fillCost().getAsDouble(), kit.stock().currency()));
  }

  private static void add(List<String> lines, String heading, List<String> entries) {
    if (!entries.isEmpty()) {
      lines.add("");
      lines.add(heading);
      entries.forEach(entry -> lines.add("  " + entry));
    }
  }
}
