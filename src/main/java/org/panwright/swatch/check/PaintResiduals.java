package org.panwright.swatch.check;

import java.util.Comparator;
import java.util.List;
import org.panwright.swatch.fit.FitReport;
import org.panwright.swatch.fit.SwatchResidual;

/**
 * How well the coats of one paint come out of a fit; a mixed coat counts with each of its paints.
 *
 * @param paint as the file names it
 * @param coats how many hold it
 * @param median of their CIEDE2000
 * @param farthest the coat that comes out worst
 * @param expectedError the CIEDE2000 to expect of coats of this paint that were never painted
 */
public record PaintResiduals(
    String paint, int coats, double median, SwatchResidual farthest, double expectedError) {
  /** Of all paints of a fit, in its order. */
  public static List<PaintResiduals> of(FitReport report) {
    return report.optics().keySet().stream().map(paint -> of(report, paint)).toList();
  }

  private static PaintResiduals of(FitReport report, String paint) {
    List<SwatchResidual> own =
        report.residuals().stream()
            .filter(residual -> residual.swatch().holds(paint))
            .sorted(Comparator.comparingDouble(SwatchResidual::ciede2000))
            .toList();
    FitReport part = new FitReport(report.optics(), report.surface(), own);
    return new PaintResiduals(
        paint,
        own.size(),
        part.medianError(),
        own.get(own.size() - 1),
        report.optics().get(paint).expectedError());
  }
}
