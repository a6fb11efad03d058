package org.panwright.swatch.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.panwright.colour.Spectrum;
import org.panwright.mixing.Film;
import org.panwright.mixing.Surface;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.Pigment;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.swatch.coat.PaintLoad;

/** Paints with invented optics, which a reading is to bring back. */
public final class InventedShelf {
  public static final Map<String, Optics> OPTICS = optics();

  private static final Map<String, String> CODES =
      Map.of(
          "white", "PW6",
          "black", "PBk7",
          "yellow", "PY154",
          "orange red", "PO73",
          "rose", "PV19",
          "blue", "PB15:3",
          "green", "PG7",
          "earth", "PR101");

  private InventedShelf() {}

  /** What an eye, or a spectrometer, would see of a dry coat over a ground seen from outside. */
  public static Spectrum coat(List<PaintLoad> paints, Spectrum ground) {
    Film film = Film.NONE;
    for (PaintLoad share : paints) {
      film = film.plus(OPTICS.get(share.paint()), share.load());
    }
    return film.over(ground.map(Surface.DRY::inside)).map(Surface.DRY::outside);
  }

  private static Map<String, Optics> optics() {
    Map<String, Optics> optics = new LinkedHashMap<>();
    put(optics, "white", nm -> 0.004 + 0.3 * edge(nm, 400, -8), 2.6);
    put(optics, "black", nm -> 7, 0.12);
    put(optics, "yellow", nm -> 0.01 + 4.5 * edge(nm, 495, -9), 0.55);
    put(optics, "orange red", nm -> 0.02 + 5 * edge(nm, 585, -11), 0.35);
    put(optics, "rose", nm -> 0.03 + 4.2 * bell(nm, 535, 48) + 0.8 * edge(nm, 430, -15), 0.06);
    put(optics, "blue", nm -> 0.05 + 5.5 * bell(nm, 610, 70) + 0.5 * bell(nm, 700, 40), 0.08);
    put(optics, "green", nm -> 0.05 + 4 * bell(nm, 660, 70) + 3.2 * edge(nm, 450, -18), 0.1);
    put(optics, "earth", nm -> 0.25 + 3.2 * edge(nm, 565, -28), 0.3);
    return optics;
  }

  private static void put(
      Map<String, Optics> optics, String name, DoubleUnaryOperator k, double s) {
    optics.put(
        name,
        new Optics(
            Spectrum.ofWavelengths(k),
            Spectrum.ofWavelengths(nm -> s * Math.pow(nm / 550, -0.7)),
            OpticsSource.SPECTRA,
            1));
  }

  /** A step at {@code centre}; a negative width is high on the short side. */
  private static double edge(double nm, double centre, double width) {
    return 1 / (1 + Math.exp(-(nm - centre) / width));
  }

  private static double bell(double nm, double centre, double width) {
    double u = (nm - centre) / width;
    return Math.exp(-u * u);
  }

  /** The same as paints of a kit, to print a sheet for. */
  public static List<Paint> paints() {
    return OPTICS.keySet().stream().map(InventedShelf::paint).toList();
  }

  private static Paint paint(String name) {
    Pigment pigment =
        PigmentLibraryReader.read().find(PigmentName.of(CODES.get(name))).orElseThrow();
    return new Paint(
        name,
        name,
        "",
        List.of(new PigmentShare(pigment.name(), 1)),
        pigment.handling(),
        Ownership.OWNED,
        Optional.empty(),
        "");
  }
}
