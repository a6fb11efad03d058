package org.panwright.swatch.check;

import java.util.Comparator;
import java.util.List;
import org.panwright.colour.GamutFit;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Srgb;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.coat.Swatch;
import org.panwright.swatch.coat.SwatchSet;
import org.panwright.swatch.fit.FitReport;

/**
 * What mixing colours on a screen predicts: the mean of the paints' sRGB numbers, weighted by their
 * amounts. It is here to be measured against, not to be used: blue and yellow average to grey.
 */
public final class ScreenAverage {
  private final List<Swatch> singles;

  private final FitReport report;
  private final Reading paper;

  /**
   * An average over the coats of single paints in {@code set}.
   *
   * @param report the fit of the set, asked for the colour of paints that have no coat of their own
   * @param paper beneath them
   */
  public ScreenAverage(SwatchSet set, FitReport report, Reading paper) {
    singles = set.swatches().stream().filter(Swatch::isSingle).toList();
    this.report = report;
    this.paper = paper;
  }

  /** The average, each paint's colour taken from its coat whose load is nearest. */
  public Lab of(List<PaintLoad> paints) {
    double red = 0;
    double green = 0;
    double blue = 0;
    double total = paints.stream().mapToDouble(PaintLoad::load).sum();
    for (PaintLoad share : paints) {
      Srgb colour = nearest(share);
      double weight = share.load() / total;
      red += weight * colour.red();
      green += weight * colour.green();
      blue += weight * colour.blue();
    }
    return new Srgb(red, green, blue).toXyzD65().toLab(Light.D65.white());
  }

  private Srgb nearest(PaintLoad share) {
    Lab lab =
        singles.stream()
            .filter(s -> s.paints().get(0).paint().equals(share.paint()))
            .min(Comparator.comparingDouble(s -> Math.abs(s.totalLoad() - share.load())))
            .map(s -> s.reading().lab())
            .orElseGet(() -> Light.D65.lab(report.predict(List.of(share), paper)));
    return GamutFit.ofXyzD65(lab.toXyz(Light.D65.white())).shown();
  }
}
