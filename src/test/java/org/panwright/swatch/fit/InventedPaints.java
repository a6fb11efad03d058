package org.panwright.swatch.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.panwright.colour.Spectrum;
import org.panwright.mixing.Surface;
import org.panwright.paint.Paper;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.coat.Swatch;

/** Four invented paints with known K and S, and coats of them painted by {@link HyperbolicCoat}. */
public final class InventedPaints {
  /** K and S of each paint. */
  public static final Map<String, Spectrum[]> PAINTS =
      Map.of(
          "yellow", paint(nm -> 0.02 + 6 / (1 + Math.exp((nm - 495) / 9)), 0.25, 0.3),
          "blue", paint(nm -> 0.05 + 5 * bell(nm, 620, 70), 0.12, 0.8),
          "white", paint(nm -> 0.01 + 0.2 * bell(nm, 370, 30), 2.5, 0.2),
          "black", paint(nm -> 9.0, 0.2, 0.4));

  private InventedPaints() {}

  /** A coat of some paints on white paper, painted and read without error. */
  public static Swatch coat(Surface surface, List<PaintLoad> paints) {
    StringBuilder name = new StringBuilder();
    paints.forEach(share -> name.append(share.paint()).append(' ').append(share.load()));
    return new Swatch(name.toString(), paints, read(surface, paints), paper());
  }

  /** The reading of such a coat. */
  public static Reading read(Surface surface, List<PaintLoad> paints) {
    List<HyperbolicCoat.Layer> layers = new ArrayList<>();
    for (PaintLoad share : paints) {
      Spectrum[] optics = PAINTS.get(share.paint());
      layers.add(new HyperbolicCoat.Layer(optics[0], optics[1], share.load()));
    }
    return new Reading.OfSpectrum(HyperbolicCoat.seen(layers, Paper.WHITE.reflectance(), surface));
  }

  /** The four swatches of each paint, and its full coat over a black line. */
  public static List<Swatch> fourAndOneOnBlack(Surface surface) {
    List<Swatch> swatches = new ArrayList<>(fourEach(surface));
    for (String paint : List.of("yellow", "blue", "white", "black")) {
      swatches.add(onBlack(surface, paint, 1));
    }
    return swatches;
  }

  /** A coat over a black line. */
  public static Swatch onBlack(Surface surface, String paint, double load) {
    Spectrum line = Spectrum.flat(0.045);
    Spectrum[] optics = PAINTS.get(paint);
    Spectrum seen =
        HyperbolicCoat.seen(
            List.of(new HyperbolicCoat.Layer(optics[0], optics[1], load)), line, surface);
    return new Swatch(
        paint + " on black",
        List.of(new PaintLoad(paint, load)),
        new Reading.OfSpectrum(seen),
        new Reading.OfSpectrum(line));
  }

  public static Reading paper() {
    return new Reading.OfSpectrum(Paper.WHITE.reflectance());
  }

  /** Four swatches of each paint: two loads, a tint, a tone. */
  public static List<Swatch> fourEach(Surface surface) {
    List<Swatch> swatches = new ArrayList<>();
    for (String paint : List.of("yellow", "blue", "white", "black")) {
      swatches.add(coat(surface, List.of(new PaintLoad(paint, 1))));
      swatches.add(coat(surface, List.of(new PaintLoad(paint, 0.25))));
      for (String other : List.of("white", "black")) {
        if (paint.equals("yellow") || paint.equals("blue")) {
          swatches.add(
              coat(surface, List.of(new PaintLoad(paint, 0.5), new PaintLoad(other, 0.5))));
        }
      }
    }
    return swatches;
  }

  private static Spectrum[] paint(java.util.function.DoubleUnaryOperator k, double s, double fall) {
    return new Spectrum[] {
      Spectrum.ofWavelengths(k), Spectrum.ofWavelengths(nm -> s * Math.pow(nm / 550, -fall))
    };
  }

  private static double bell(double nm, double centre, double width) {
    double u = (nm - centre) / width;
    return Math.exp(-u * u);
  }
}
