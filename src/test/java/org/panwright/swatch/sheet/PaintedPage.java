package org.panwright.swatch.sheet;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.panwright.colour.Light;
import org.panwright.colour.LinearSrgb;
import org.panwright.colour.Spectrum;
import org.panwright.paint.Paper;
import org.panwright.print.Mark;
import org.panwright.print.Papers;
import org.panwright.print.PdfWriter;
import org.panwright.print.Sheet;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.picture.Zone;

/**
 * A printed page with paint on it, as a map of what light each place sends back: the page rendered
 * from its PDF by PDFBox, its outlined patches filled with coats of invented paints.
 */
public final class PaintedPage {
  public static final Spectrum PAPER = Paper.WHITE.reflectance();
  public static final Spectrum INK = Spectrum.flat(0.045);
  static final double WASH = 0.25;

  private static final double PX_PER_MM = 6;
  private static final double MM_PER_INCH = 25.4;

  final double widthMm;
  final double heightMm;
  private final int width;
  private final int height;
  private final float[] ink;
  private final List<Coat> coats = new ArrayList<>();

  /** One coat: where it lies, and its light over paper and over ink. */
  private record Coat(Zone zone, LinearSrgb onPaper, LinearSrgb onInk) {}

  public PaintedPage(Papers papers, int page) {
    Sheet sheet = papers.sheets().get(page);
    widthMm = sheet.widthMm();
    heightMm = sheet.heightMm();
    try (PDDocument document = Loader.loadPDF(PdfWriter.write(papers))) {
      BufferedImage print =
          new PDFRenderer(document)
              .renderImageWithDPI(page, (float) (PX_PER_MM * MM_PER_INCH), ImageType.GRAY);
      width = print.getWidth();
      height = print.getHeight();
      ink = new float[width * height];
      for (int i = 0; i < ink.length; i++) {
        ink[i] = 1 - print.getRaster().getSample(i % width, i / width, 0) / 255f;
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The outlines of the patches on a page, in the order they are printed. */
  public static List<Zone> outlines(Sheet sheet) {
    return sheet.singleMarks().stream()
        .filter(mark -> mark instanceof Mark.Rectangle)
        .map(Mark::bounds)
        .map(a -> new Zone(a.xMm(), a.yMm(), a.widthMm(), a.heightMm()))
        .toList();
  }

  /** Paints a zone, not quite to its edges. */
  public void paint(Zone zone, List<PaintLoad> paints) {
    Zone painted =
        new Zone(zone.x() + 0.4, zone.y() + 0.3, zone.width() - 0.6, zone.height() - 0.5);
    coats.add(
        new Coat(
            painted,
            light(InventedShelf.coat(paints, PAPER)),
            light(InventedShelf.coat(paints, INK))));
  }

  /** A drop, as light as paper, or a blot of ink. */
  public void spot(Zone zone, double reflectance) {
    LinearSrgb light = light(Spectrum.flat(reflectance));
    coats.add(new Coat(zone, light, light));
  }

  /** What a place sends back under D65, linear sRGB, negative where sRGB cannot hold it. */
  LinearSrgb at(double xMm, double yMm) {
    int x = (int) Math.floor(xMm * PX_PER_MM);
    int y = (int) Math.floor(yMm * PX_PER_MM);
    if (x < 0 || y < 0 || x >= width || y >= height) {
      return TABLE;
    }
    double share = ink[y * width + x];
    LinearSrgb light = mix(LIGHT_PAPER, LIGHT_INK, share);
    for (Coat coat : coats) {
      Zone z = coat.zone();
      if (xMm >= z.x() && xMm < z.right() && yMm >= z.y() && yMm < z.bottom()) {
        double edge =
            Math.min(
                Math.min(xMm - z.x(), z.right() - xMm), Math.min(yMm - z.y(), z.bottom() - yMm));
        double rim = edge < 0.7 ? 0.85 : 1;
        light = times(mix(coat.onPaper(), coat.onInk(), share), rim * grain(x, y));
      }
    }
    return light;
  }

  /** Paint is never quite even: ±3 %, in spots of half a millimetre. */
  private static double grain(int x, int y) {
    long hash = (x / 3) * 73856093L ^ (y / 3) * 19349663L;
    hash = hash * 6364136223846793005L + 1442695040888963407L;
    return 1 + 0.06 * (((hash >>> 33) & 0xffff) / 65535.0 - 0.5);
  }

  static final LinearSrgb LIGHT_PAPER = light(PAPER);
  private static final LinearSrgb LIGHT_INK = light(INK);
  private static final LinearSrgb TABLE = new LinearSrgb(0.09, 0.08, 0.075);

  static LinearSrgb light(Spectrum reflectance) {
    return LinearSrgb.ofXyzD65(Light.D65.xyz(reflectance));
  }

  private static LinearSrgb mix(LinearSrgb a, LinearSrgb b, double share) {
    return new LinearSrgb(
        a.red() + share * (b.red() - a.red()),
        a.green() + share * (b.green() - a.green()),
        a.blue() + share * (b.blue() - a.blue()));
  }

  private static LinearSrgb times(LinearSrgb light, double factor) {
    return new LinearSrgb(light.red() * factor, light.green() * factor, light.blue() * factor);
  }

  /** All coats of the invented paints on a sheet whose rows hold them in order. */
  public static List<List<PaintLoad>> four(String paint) {
    List<List<PaintLoad>> four = new ArrayList<>();
    four.add(List.of(new PaintLoad(paint, 1)));
    four.add(List.of(new PaintLoad(paint, WASH)));
    for (String other : List.of("white", "black")) {
      four.add(half(paint, other).orElse(List.of()));
    }
    return four;
  }

  private static Optional<List<PaintLoad>> half(String paint, String other) {
    return paint.equals(other)
        ? Optional.empty()
        : Optional.of(List.of(new PaintLoad(paint, 0.5), new PaintLoad(other, 0.5)));
  }
}
