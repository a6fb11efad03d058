package org.panwright.swatch.kept;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.panwright.colour.Spectrum;
import org.panwright.mixing.Surface;
import org.panwright.paint.Admixture;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Paint;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.Paper;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.Shelf;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.coat.Swatch;
import org.panwright.swatch.coat.SwatchSet;
import org.panwright.swatch.fit.FitReport;
import org.panwright.swatch.fit.KnownFace;
import org.panwright.swatch.fit.KnownPaint;

/**
 * The coats kept with some paints, made ready for a fit.
 *
 * @param coats those that can be used, in the order of the first swatches of {@code set}
 * @param unused those whose admixture nobody knows
 * @param tooDark those darker than any dry coat can be
 * @param set the swatches of {@code coats}, then such as stand for what is known of admixtures
 * @param measured optics of admixtures that were learnt before
 * @param pigments what is known of the paints, and of admixtures only named, from their pigments
 */
record KeptCoats(
    List<Kept> coats,
    List<PaintFitReport.Unused> unused,
    List<PaintedCoat> tooDark,
    SwatchSet set,
    Map<String, Optics> measured,
    Map<String, KnownPaint> pigments) {
  /** A black drawing ink or marker, dry: common practice, L* about 24. */
  private static final Spectrum BLACK_LINE = Spectrum.flat(0.04);

  private static final double USUAL_WASH = 0.25;
  private static final double USUAL_COAT = 0.5;

  /** A wash is half or twice as strong as another painter's. */
  private static final double DOUBT_OF_WASH = 0.5;

  private static final double DOUBT_OF_MIX = 0.25;
  private static final double DOUBT_OF_UNKNOWN = 0.7;

  /** One coat and the paint it is kept with. */
  record Kept(String paintId, PaintedCoat coat) {}

  static KeptCoats of(Shelf shelf, Set<String> paintIds, PigmentLibrary library, Paper paper) {
    List<Kept> coats = new ArrayList<>();
    List<PaintFitReport.Unused> unused = new ArrayList<>();
    List<PaintedCoat> tooDark = new ArrayList<>();
    List<Swatch> swatches = new ArrayList<>();
    Map<String, Optics> measured = new LinkedHashMap<>();
    Map<String, Optics> companions = new LinkedHashMap<>();
    Map<String, KnownPaint> pigments = new LinkedHashMap<>();
    for (Paint paint : shelf.paints()) {
      if (!paintIds.contains(paint.id())) {
        continue;
      }
      if (paint.pigments().stream().allMatch(p -> library.find(p.pigment()).isPresent())) {
        pigments.put(paint.id(), new KnownPaint(library.estimate(paint.pigments()), false));
      }
      for (PaintedCoat coat : paint.swatchbook().coats()) {
        Optional<Admixture> other = coat.mixedWith();
        Optional<Optics> known = other.flatMap(o -> Companions.optics(o, shelf, library));
        if (other.isPresent() && (known.isEmpty() || isItself(other.get(), paint))) {
          unused.add(new PaintFitReport.Unused(paint.id(), coat));
          continue;
        }
        Swatch swatch =
            new Swatch(
                paint.id() + "/" + coat.id(),
                loads(paint.id(), coat, presumedLoad(coat)),
                Reading.of(coat.dry()),
                ground(coat, paper),
                doubt(coat));
        if (KnownFace.isTooDark(swatch, paintIds)) {
          tooDark.add(coat);
          continue;
        }
        other
            .map(Companions::id)
            .filter(id -> !paintIds.contains(id))
            .ifPresent(id -> companions.put(id, known.orElseThrow()));
        coats.add(new Kept(paint.id(), coat));
        swatches.add(swatch);
      }
    }
    companions.forEach(
        (id, optics) -> {
          if (optics.source() == OpticsSource.PIGMENTS) {
            pigments.put(id, new KnownPaint(optics, true));
          } else {
            measured.put(id, optics);
            swatches.addAll(standIns(id, optics, paper));
          }
        });
    return new KeptCoats(coats, unused, tooDark, new SwatchSet(swatches), measured, pigments);
  }

  /** The same without the coats found to be too dark. */
  KeptCoats without(Predicate<Swatch> found) {
    List<Kept> left = new ArrayList<>();
    List<PaintedCoat> dark = new ArrayList<>(tooDark);
    List<Swatch> swatches = new ArrayList<>();
    for (int i = 0; i < coats.size(); i++) {
      Swatch swatch = set.swatches().get(i);
      if (found.test(swatch)) {
        dark.add(coats.get(i).coat());
      } else {
        left.add(coats.get(i));
        swatches.add(swatch);
      }
    }
    swatches.addAll(set.swatches().subList(coats.size(), set.swatches().size()));
    return new KeptCoats(left, unused, dark, new SwatchSet(swatches), measured, pigments);
  }

  private static boolean isItself(Admixture other, Paint paint) {
    return other.paintId().equals(paint.id());
  }

  /** The load as noted, or what its strength usually means. */
  static double presumedLoad(PaintedCoat coat) {
    return coat.load()
        .orElse(
            switch (coat.strength()) {
              case FULL -> 1;
              case WASH -> USUAL_WASH;
              case UNKNOWN -> USUAL_COAT;
            });
  }

  /**
   * How far the load of a coat may be off, in its logarithm. A load that was noted is believed: on
   * measured coats fitting it too did harm. The full strength coat of a paint defines its load 1.
   */
  static double doubt(PaintedCoat coat) {
    if (coat.load().isPresent()) {
      return 0;
    }
    return switch (coat.strength()) {
      case FULL -> coat.mixedWith().isPresent() ? DOUBT_OF_MIX : 0;
      case WASH -> DOUBT_OF_WASH;
      case UNKNOWN -> DOUBT_OF_UNKNOWN;
    };
  }

  /** The paints of a coat of a whole load. */
  static List<PaintLoad> loads(String paintId, PaintedCoat coat, double load) {
    if (coat.mixedWith().isEmpty()) {
      return List.of(new PaintLoad(paintId, load));
    }
    Admixture other = coat.mixedWith().get();
    return List.of(
        new PaintLoad(paintId, load * (1 - other.share())),
        new PaintLoad(Companions.id(other), load * other.share()));
  }

  /** What lies beneath a coat, as read or as it usually is. */
  static Reading ground(PaintedCoat coat, Paper paper) {
    return coat.ground()
        .map(Reading::of)
        .orElse(
            new Reading.OfSpectrum(
                coat.over() == PaintedCoat.Ground.PAPER ? paper.reflectance() : BLACK_LINE));
  }

  /** Coats painted from optics in the painter's own loads, which hold a fit to them. */
  private static List<Swatch> standIns(String id, Optics optics, Paper paper) {
    List<Swatch> coats = new ArrayList<>();
    for (Spectrum ground : List.of(paper.reflectance(), BLACK_LINE)) {
      for (double load : new double[] {1, USUAL_WASH}) {
        Reading below = new Reading.OfSpectrum(ground);
        List<PaintLoad> paint = List.of(new PaintLoad(id, load));
        Spectrum seen =
            new FitReport(Map.of(id, optics), Surface.DRY, List.of()).predict(paint, below);
        coats.add(
            new Swatch(
                id + " as known, " + load + " over " + ground.at(0),
                paint,
                new Reading.OfSpectrum(seen),
                below));
      }
    }
    return coats;
  }
}
