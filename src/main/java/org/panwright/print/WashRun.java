package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import org.panwright.colour.GamutFit;
import org.panwright.colour.Srgb;
import org.panwright.mixing.Film;
import org.panwright.paint.Optics;
import org.panwright.paint.Paper;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

/**
 * A paint running from masstone into wash, dry, as printed.
 *
 * @param colours evenly spaced: butter first, then each wash in turn with {@link #BETWEEN} − 1
 *     colours between, tea last
 * @param exact whether print can show all of them
 */
public record WashRun(List<Srgb> colours, boolean exact) {
  /** Steps from one wash to the next. */
  public static final int BETWEEN = 8;

  public WashRun {
    colours = List.copyOf(colours);
  }

  /** The run of a paint on a paper; loads between two washes in geometric steps. */
  public static WashRun of(Optics optics, Paper paper, WashStrengths washes) {
    List<Srgb> colours = new ArrayList<>();
    boolean exact = true;
    int last = (Wash.values().length - 1) * BETWEEN;
    for (int step = 0; step <= last; step++) {
      double load = load(washes, step);
      GamutFit fit = PrintColour.of(Film.of(optics, load).dry(paper));
      colours.add(fit.shown());
      exact &= fit.exact();
    }
    return new WashRun(colours, exact);
  }

  private static double load(WashStrengths washes, int step) {
    int wash = Math.min(step / BETWEEN, Wash.values().length - 2);
    double from = washes.loads().get(wash);
    double to = washes.loads().get(wash + 1);
    return from * Math.pow(to / from, (step - wash * BETWEEN) / (double) BETWEEN);
  }
}
