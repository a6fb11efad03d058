package org.panwright.print;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.panwright.analysis.fill.FillPlan;
import org.panwright.analysis.fill.PaintDemand;
import org.panwright.analysis.fill.PlannedWell;
import org.panwright.analysis.fill.Sharing;
import org.panwright.analysis.fill.TubeDraw;
import org.panwright.kit.Kit;
import org.panwright.words.FillCommandWords;
import org.panwright.words.FillWords;
import org.panwright.words.PaperWords;

/**
 * What the painter chooses about a printed fill plan: each well with a box to tick for each layer,
 * what the tubes give, what to buy.
 *
 * @param paper what it is printed on
 * @param everyBox whether every other box of the kit is filled too, for its first lineup
 */
public record FillPlanOptions(PaperFormat paper, boolean everyBox) implements PaperOrder {
  /** Of the one lineup, on A4. */
  public static final FillPlanOptions USUAL = new FillPlanOptions(PaperFormat.A4, false);

  public FillPlanOptions {
    Objects.requireNonNull(paper, "paper");
  }

  @Override
  public PaperKind kind() {
    return PaperKind.FILL_PLAN;
  }

  @Override
  public FillPlanOptions withPaper(PaperFormat changed) {
    return new FillPlanOptions(changed, everyBox);
  }

  /** The same for every box of the kit, or for the lineup's alone. */
  public FillPlanOptions withEveryBox(boolean changed) {
    return new FillPlanOptions(paper, changed);
  }

  @Override
  public Made make(Occasion occasion) {
    if (occasion.paints().isEmpty()) {
      return Made.nothing(PaperWords.NO_PAINTS);
    }
    Kit kit = occasion.kit();
    FillPlan plan = FillPlan.of(kit, lineups(occasion), Sharing.EVENLY);
    ListPaper list = new ListPaper(paper);
    FillWords.summary(plan, kit).forEach(list::sentence);
    String heading = "";
    for (PlannedWell well : plan.wells()) {
      String of =
          FillCommandWords.heading(
              FillWords.lineup(well.lineupId(), kit), FillWords.box(well.boxId(), kit));
      if (!of.equals(heading)) {
        list.heading(of);
        heading = of;
      }
      list.line(well.layers().poursMl().size(), false, FillWords.line(well, kit));
    }
    if (!plan.toFill().isEmpty()) {
      list.sentence(PaperWords.LAYERS);
      list.sentence(FillWords.HOW);
    }
    List<TubeDraw> drawn = plan.tubes().stream().filter(tube -> tube.usedMl() > 0).toList();
    if (!drawn.isEmpty()) {
      list.heading(FillCommandWords.TUBES);
      drawn.forEach(tube -> list.line(0, false, FillWords.line(tube, kit)));
    }
    List<PaintDemand> missing = plan.runningShort();
    if (!missing.isEmpty()) {
      list.heading(FillCommandWords.TO_BUY);
      missing.forEach(demand -> list.line(1, false, FillWords.shortage(demand, kit)));
    }
    list.sentence(FillWords.USUAL);
    String title =
        PaperWords.title(kind().name(), everyBox ? kit.name() : occasion.lineup().name());
    return Made.of(list.papers(title, List.of()));
  }

  /** The lineup, and for every other box its first one. */
  private List<String> lineups(Occasion occasion) {
    Map<String, String> byBox = new LinkedHashMap<>();
    byBox.put(occasion.lineup().boxId(), occasion.lineupId());
    if (everyBox) {
      occasion.kit().lineups().forEach(other -> byBox.putIfAbsent(other.boxId(), other.id()));
    }
    return List.copyOf(byBox.values());
  }
}
