package org.panwright.analysis.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.panwright.analysis.finding.DriesGrey;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.NoDark;
import org.panwright.analysis.mud.Dark;
import org.panwright.analysis.mud.DarkestMix;
import org.panwright.colour.Lab;
import org.panwright.mixing.MixGrid;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.Ratio;
import org.panwright.mixing.Recipe;
import org.panwright.mixing.WetLook;
import org.panwright.paint.Paint;
import org.panwright.paint.Wash;

/** Judges a lineup's darks: whether it has one that stays, and which mixes only look like one. */
public final class DarkSearch {
  private static final int DECEIVERS_NAMED = 3;

  private DarkSearch() {}

  static List<Finding> of(Case open, MixGrid grid) {
    Optional<Dark> darkest = open.darkest();
    if (darkest.isEmpty()) {
      return List.of();
    }
    return darkest.get().isReal() ? deceivers(open, grid, darkest.get()) : none(open, darkest);
  }

  /** Neutral singles and pairs of the strongest wash that are real darks only while wet. */
  private static List<Finding> deceivers(Case open, MixGrid grid, Dark stays) {
    WetLook look = WetLook.of(new Mixer(open.table()), open.kit().shelf());
    List<Dark> found = new ArrayList<>();
    for (int row = 0; row < grid.size(); row++) {
      for (int column = row; column < grid.size(); column++) {
        deceiver(open, look, grid, row, column).ifPresent(found::add);
      }
    }
    if (found.isEmpty()) {
      return List.of();
    }
    found.sort(Comparator.comparingDouble(Dark::wetL));
    return List.of(
        new DriesGrey(
            found.stream().limit(DECEIVERS_NAMED).toList(), found.size(), stays, Optional.empty()));
  }

  /** The ratio of a pair that looks darkest wet among those that dry to a grey. */
  public static Optional<Dark> deceiver(
      Case open, WetLook look, MixGrid grid, int row, int column) {
    double strongest = open.kit().washes().load(Wash.BUTTER);
    Dark best = null;
    for (int i = 0; i < Ratio.GRID.size(); i++) {
      Lab dry = grid.lab(row, column, i, Wash.BUTTER);
      boolean single = row == column;
      if (dry.chroma() < DriesGrey.NEUTRAL_BELOW
          && dry.l() >= DriesGrey.GREY_FROM
          && (best == null || dry.l() < best.dryL())
          && (!single || i == Ratio.EVEN)) {
        Recipe recipe = recipe(open, grid, row, column, i);
        double wetL = look.lab(recipe, strongest).l();
        Dark dark = new Dark(recipe, Wash.BUTTER, dry.l(), wetL);
        best = dark.fadesOnDrying() ? dark : best;
      }
    }
    return Optional.ofNullable(best);
  }

  private static Recipe recipe(Case open, MixGrid grid, int row, int column, int ratio) {
    String first = open.table().ids().get(grid.paint(row));
    String second = open.table().ids().get(grid.paint(column));
    Ratio parts = Ratio.GRID.get(ratio);
    return row == column
        ? Recipe.of(first)
        : Recipe.of(first, parts.first(), second, parts.second());
  }

  private static List<Finding> none(Case open, Optional<Dark> darkest) {
    String suggested = null;
    double lowest = Dark.REAL_BELOW;
    for (Paint paint : open.atHand()) {
      DarkestMix with = new DarkestMix();
      open.walk().with(open.table().indexOf(paint.id()), open.members(), with);
      if (with.lowest() < lowest) {
        lowest = with.lowest();
        suggested = paint.id();
      }
    }
    if (suggested == null) {
      double dryL = darkest.get().dryL();
      return List.of(
          new NoDark(darkest.get(), Optional.empty(), dryL, Optional.empty(), Optional.empty()));
    }
    Exchange exchange = Exchange.bringing(open, suggested);
    return List.of(
        new NoDark(
            darkest.get(), Optional.of(suggested), lowest, exchange.leavingId(), exchange.edit()));
  }
}
