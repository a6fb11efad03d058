package org.panwright.app;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import org.panwright.colour.GamutFit;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;
import org.panwright.colour.Srgb;
import org.panwright.mixing.Film;
import org.panwright.mixing.Surface;
import org.panwright.paint.Paper;
import org.panwright.print.Area;
import org.panwright.print.Mark;
import org.panwright.print.Sheet;
import org.panwright.print.Typeface;
import org.panwright.swatch.picture.Homography;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.picture.Zone;

/**
 * A printed page with paint on it, as a camera held by hand sees it: made up for the pictures of
 * the guide, where no painter's photo is at hand.
 */
final class StagedPaper {
  private static final double PX_PER_MM = 6;
  private static final int WIDTH = 1500;
  private static final double GRAIN = 0.03;
  private static final int RIM = 2;
  private static final int DARK = 100;
  private static final Spectrum INK = Spectrum.flat(0.04);
  private static final Color TABLE = new Color(92, 88, 84);
  private static final Color PAPER = color(Paper.WHITE.reflectance());

  private final Sheet sheet;
  private final BufferedImage flat;
  private final Graphics2D pen;
  private final Random random = new Random(20261129);

  StagedPaper(Sheet sheet) {
    this.sheet = sheet;
    flat =
        new BufferedImage(
            (int) (sheet.widthMm() * PX_PER_MM),
            (int) (sheet.heightMm() * PX_PER_MM),
            BufferedImage.TYPE_INT_RGB);
    pen = flat.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setColor(PAPER);
    pen.fillRect(0, 0, flat.getWidth(), flat.getHeight());
    pen.scale(PX_PER_MM, PX_PER_MM);
    sheet.singleMarks().forEach(this::print);
  }

  /** The outlined fields to paint in, in the order they are printed, in millimetres. */
  static List<Zone> fields(Sheet sheet) {
    return sheet.singleMarks().stream()
        .filter(Mark.Rectangle.class::isInstance)
        .map(Mark::bounds)
        .map(area -> new Zone(area.xMm(), area.yMm(), area.widthMm(), area.heightMm()))
        .toList();
  }

  private void print(Mark mark) {
    if (mark instanceof Mark.Swatch swatch) {
      pen.setColor(printed(swatch.run().get(0)));
      pen.fill(shape(swatch.area()));
    } else if (mark instanceof Mark.Rectangle rectangle) {
      pen.setColor(printed(rectangle.ink()));
      pen.setStroke(new BasicStroke(0.15f));
      pen.draw(shape(rectangle.area()));
    } else if (mark instanceof Mark.Text text) {
      pen.setColor(Color.DARK_GRAY);
      pen.setFont(font(text));
      AffineTransform level = pen.getTransform();
      pen.translate(text.xMm(), text.baselineMm());
      pen.rotate(text.upwards() ? -Math.PI / 2 : 0);
      pen.drawString(text.text(), 0, 0);
      pen.setTransform(level);
    }
  }

  private static Font font(Mark.Text text) {
    try (InputStream file = text.face().open()) {
      double mm = text.sizePt() * Typeface.MM_PER_PT;
      return Font.createFont(Font.TRUETYPE_FONT, file).deriveFont((float) mm);
    } catch (IOException | FontFormatException missing) {
      throw new IllegalStateException("a typeface of the papers cannot be read", missing);
    }
  }

  private static Rectangle2D shape(Area area) {
    return new Rectangle2D.Double(area.xMm(), area.yMm(), area.widthMm(), area.heightMm());
  }

  /** As it lies on the paper: a printer's black turns back some light too. */
  private static Color printed(Srgb srgb) {
    return srgb.red() + srgb.green() + srgb.blue() == 0 ? color(INK) : color(srgb);
  }

  private static Color color(Srgb srgb) {
    return new Color((float) srgb.red(), (float) srgb.green(), (float) srgb.blue());
  }

  /** Lays a dry coat in a zone, with the grain of a brush; ink beneath it shows through. */
  void paint(Zone zone, Film coat) {
    Color onPaper = color(coat.dry(Paper.WHITE));
    Color onInk = color(coat.seen(INK, Surface.DRY));
    for (int y = pixel(zone.y()) + RIM; y < pixel(zone.bottom()) - RIM; y++) {
      for (int x = pixel(zone.x()) + RIM; x < pixel(zone.right()) - RIM; x++) {
        boolean ink = new Color(flat.getRGB(x, y)).getGreen() < DARK;
        double grain = 1 + GRAIN * (random.nextDouble() - 0.5);
        flat.setRGB(x, y, times(ink ? onInk : onPaper, grain).getRGB());
      }
    }
  }

  private static int pixel(double mm) {
    return (int) Math.round(mm * PX_PER_MM);
  }

  private static Color color(Spectrum light) {
    return color(GamutFit.ofXyzD65(Light.D65.xyz(light)).shown());
  }

  private static Color times(Color colour, double factor) {
    return new Color(
        (int) Math.min(255, colour.getRed() * factor),
        (int) Math.min(255, colour.getGreen() * factor),
        (int) Math.min(255, colour.getBlue() * factor));
  }

  /** Where a zone of the page comes to lie in the photo, clockwise from its upper left. */
  List<Point> seen(Zone zone) {
    return place().map(zone);
  }

  /** The photo as a file. */
  Path photograph(Path file) {
    int height = height();
    Homography back = Homography.of(corners(height), page()).orElseThrow();
    BufferedImage photo = new BufferedImage(WIDTH, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < WIDTH; x++) {
        Point mm = back.map(new Point(x + 0.5, y + 0.5));
        int px = (int) Math.floor(mm.x() * PX_PER_MM);
        int py = (int) Math.floor(mm.y() * PX_PER_MM);
        boolean onPage = px >= 0 && py >= 0 && px < flat.getWidth() && py < flat.getHeight();
        double u = 2.0 * x / WIDTH - 1;
        double v = 2.0 * y / height - 1;
        double light = 0.97 - 0.05 * (u * u + v * v);
        photo.setRGB(x, y, times(onPage ? new Color(flat.getRGB(px, py)) : TABLE, light).getRGB());
      }
    }
    try {
      ImageIO.write(photo, "png", file.toFile());
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
    return file;
  }

  private Homography place() {
    return Homography.of(page(), corners(height())).orElseThrow();
  }

  private int height() {
    return (int) (WIDTH * sheet.heightMm() / sheet.widthMm());
  }

  private List<Point> page() {
    return List.of(
        new Point(0, 0),
        new Point(sheet.widthMm(), 0),
        new Point(sheet.widthMm(), sheet.heightMm()),
        new Point(0, sheet.heightMm()));
  }

  private static List<Point> corners(double height) {
    return List.of(
        new Point(0.05 * WIDTH, 0.04 * height),
        new Point(0.96 * WIDTH, 0.05 * height),
        new Point(0.98 * WIDTH, 0.97 * height),
        new Point(0.03 * WIDTH, 0.96 * height));
  }
}
