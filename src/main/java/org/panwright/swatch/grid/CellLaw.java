package org.panwright.swatch.grid;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.mixing.Film;
import org.panwright.mixing.GoldenSection;
import org.panwright.mixing.TintLoad;
import org.panwright.paint.Optics;
import org.panwright.paint.Paper;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;
import org.panwright.swatch.coat.PaintLoad;

/**
 * What cells look like by the optics of their paints.
 *
 * <p>How thick a hand lays a cell is anybody's guess, so the load is free between a quarter and
 * four times the meant one: that which comes nearest to what is seen, found by golden section over
 * ln load (J. Kiefer, Proceedings of the American Mathematical Society 4, 1953). What then remains
 * is a matter of hue and mixture. Nor is "equal strength" by eye exact: where asked for, the parts
 * may be off by up to a factor of 2.5, at a price in the search of 2 (ln factor)² in CIEDE2000.
 */
final class CellLaw {
  private static final double FREEDOM = 4;

  /** Of ln load: 0.06 per cent more paint is the same coat. */
  private static final double CLOSE = 6e-4;

  private static final double[] MEANT = {0};
  private static final double[] BY_EYE = {0, -0.3, 0.3, -0.6, 0.6, -0.9, 0.9};
  private static final double PRICE = 2;

  private final Map<String, Optics> optics;
  private final Map<String, Double> tintLoads = new LinkedHashMap<>();
  private final Paper paper;
  private final WashStrengths washes;

  CellLaw(Map<String, Optics> optics, Paper paper, WashStrengths washes) {
    this.optics = optics;
    this.paper = paper;
    this.washes = washes;
    optics.forEach((id, known) -> tintLoads.put(id, TintLoad.of(known, paper)));
  }

  /**
   * A cell by the law.
   *
   * @param content with the parts as painted, as far as they can be told
   * @param load all paint per area
   * @param lab what it looks like
   * @param distance CIEDE2000 from what is seen
   */
  record Foretold(CellContent content, double load, Lab lab, double distance) {}

  /** The nearest coat whose parts are as meant. */
  Foretold nearest(CellContent content, Lab seen) {
    return nearest(content, seen, MEANT);
  }

  /** The nearest coat whose parts are as near to the meant ones as an eye judges strength. */
  Foretold nearestByEye(CellContent content, Lab seen) {
    return nearest(content, seen, content.second().isPresent() ? BY_EYE : MEANT);
  }

  private Foretold nearest(CellContent content, Lab seen, double[] offsets) {
    Foretold best = null;
    double least = Double.POSITIVE_INFINITY;
    for (double offset : offsets) {
      Foretold found = nearestLoad(content.withParts(Math.exp(offset)), seen);
      double cost = found.distance() + PRICE * offset * offset;
      if (cost < least) {
        least = cost;
        best = found;
      }
    }
    return best;
  }

  private Foretold nearestLoad(CellContent content, Lab seen) {
    Film one = film(content, 1);
    DoubleUnaryOperator distance = ln -> Difference.ciede2000(lab(one, Math.exp(ln)), seen);
    double meant = meantLoad(content.wash());
    double low = Math.log(meant / FREEDOM);
    double high = Math.log(meant * FREEDOM);
    double load = Math.exp(GoldenSection.least(low, high, CLOSE, distance));
    Lab lab = lab(one, load);
    return new Foretold(content, load, lab, Difference.ciede2000(lab, seen));
  }

  /** A cell whose parts are as meant, at a load somebody knows. */
  Foretold at(CellContent content, double load, Lab seen) {
    Lab lab = lab(film(content, 1), load);
    return new Foretold(content, load, lab, Difference.ciede2000(lab, seen));
  }

  /** All paint per area a wash is meant to have. */
  double meantLoad(Wash wash) {
    return washes.load(wash);
  }

  /** The paints of a cell of a whole load, by volume. */
  List<PaintLoad> loads(CellContent content, double load) {
    if (content.second().isEmpty()) {
      return List.of(new PaintLoad(content.first(), load));
    }
    double share = secondShare(content);
    return List.of(
        new PaintLoad(content.first(), load * (1 - share)),
        new PaintLoad(content.second().get(), load * share));
  }

  /**
   * The second paint's share by volume.
   *
   * <pre>share = t₂ / (parts · t₁ + t₂),  t = tint load</pre>
   */
  double secondShare(CellContent content) {
    if (content.second().isEmpty()) {
      return 0;
    }
    double first = content.firstParts() * tintLoads.get(content.first());
    double second = tintLoads.get(content.second().get());
    return second / (first + second);
  }

  private Film film(CellContent content, double load) {
    Film film = Film.NONE;
    for (PaintLoad share : loads(content, load)) {
      film = film.plus(optics.get(share.paint()), share.load());
    }
    return film;
  }

  private Lab lab(Film one, double load) {
    return Light.D65.lab(one.times(load).dry(paper));
  }
}
