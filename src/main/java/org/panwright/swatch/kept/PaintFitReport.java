package org.panwright.swatch.kept;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.colour.Spectrum;
import org.panwright.paint.Optics;
import org.panwright.paint.PaintedCoat;

/**
 * What the coats kept with some paints say of them.
 *
 * @param optics by paint id, for load 1 = the masstone coat, each with its expected error
 * @param coats what the fit makes of each coat that was used
 * @param unused coats mixed with a paint that is not on the shelf any more
 * @param tooDark coats left out because no dry coat can be as dark
 * @param odd the coat that disagrees with the rest, if one does
 * @param doubted the coat whose noted load does, while another would not, if there is one
 */
public record PaintFitReport(
    Map<String, Optics> optics,
    List<CoatFit> coats,
    List<Unused> unused,
    List<PaintedCoat> tooDark,
    Optional<Odd> odd,
    Optional<OtherLoad> doubted) {
  public PaintFitReport {
    optics = Collections.unmodifiableMap(new LinkedHashMap<>(optics));
    coats = List.copyOf(coats);
    unused = List.copyOf(unused);
    tooDark = List.copyOf(tooDark);
  }

  /**
   * The gloss of the paints that were fitted; above 0 where a coat was darker than a matt one can
   * be.
   */
  public double gloss() {
    return optics.values().stream().mapToDouble(Optics::gloss).max().orElse(0);
  }

  /**
   * One coat painted and predicted.
   *
   * @param predicted the reflectance the new optics give it
   * @param ciede2000 how far that is from what was read, D65
   * @param load the whole load it was taken to have, as noted or as fitted
   */
  public record CoatFit(
      String paintId, PaintedCoat coat, Spectrum predicted, double ciede2000, double load) {}

  /** A coat that says nothing, as nobody knows what is in it. */
  public record Unused(String paintId, PaintedCoat coat) {}

  /**
   * A coat to look at again.
   *
   * @param foretold how far, in CIEDE2000, it is from what the other coats foretell
   */
  public record Odd(CoatFit coat, double foretold) {}

  /**
   * A coat that was noted with one load and looks like another.
   *
   * @param load the one that would fit
   * @param foretold how far, in CIEDE2000, the others foretell it off with the load noted
   */
  public record OtherLoad(CoatFit coat, double load, double foretold) {}
}
