package org.panwright.swatch.sheet;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.panwright.colour.LinearSrgb;
import org.panwright.colour.Srgb;
import org.panwright.swatch.picture.Homography;
import org.panwright.swatch.picture.Point;

/**
 * A camera with its faults: tilt, vignetting, coloured light, blur, noise, eight bits, JPEG.
 *
 * @param width of the picture
 * @param height of the picture
 * @param corners where the paper's corners come to lie, as shares of the picture: upper left, upper
 *     right, lower right, lower left
 * @param exposure what white paper would reach in linear light at the middle
 * @param cast factors of red, green, blue
 * @param falloff how much darker the corners are, 0..1
 * @param noise standard deviation at white, in linear light
 * @param quality of the JPEG, 0..1
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
public record SimulatedCamera(
    int width,
    int height,
    List<Point> corners,
    double exposure,
    double[] cast,
    double falloff,
    double noise,
    double quality) {

  /** Square on, even daylight, a flat-bed scanner's JPEG. */
  public static SimulatedCamera scanner(int width, int height) {
    return new SimulatedCamera(
        width,
        height,
        List.of(
            new Point(0.01, 0.01),
            new Point(0.99, 0.01),
            new Point(0.99, 0.99),
            new Point(0.01, 0.99)),
        0.95,
        new double[] {1, 1, 1},
        0,
        0.004,
        0.92);
  }

  /** Held by hand under a warm lamp, tilted, dark towards the corners. */
  public static SimulatedCamera phone(int width, int height) {
    return new SimulatedCamera(
        width,
        height,
        List.of(
            new Point(0.10, 0.07),
            new Point(0.93, 0.11),
            new Point(0.97, 0.96),
            new Point(0.04, 0.90)),
        0.75,
        new double[] {1.12, 1, 0.72},
        0.35,
        0.012,
        0.85);
  }

  public SimulatedCamera withQuality(double changed) {
    return new SimulatedCamera(width, height, corners, exposure, cast, falloff, noise, changed);
  }

  public SimulatedCamera withExposure(double changed) {
    return new SimulatedCamera(width, height, corners, changed, cast, falloff, noise, quality);
  }

  public SimulatedCamera withNoise(double changed) {
    return new SimulatedCamera(width, height, corners, exposure, cast, falloff, changed, quality);
  }

  public SimulatedCamera withCast(double red, double green, double blue) {
    return new SimulatedCamera(
        width, height, corners, exposure, new double[] {red, green, blue}, falloff, noise, quality);
  }

  public SimulatedCamera withCorners(List<Point> changed) {
    return new SimulatedCamera(width, height, changed, exposure, cast, falloff, noise, quality);
  }

  /** What the light of a scene becomes. */
  public BufferedImage shoot(PaintedPage page) {
    Random random = new Random(20261125);
    List<Point> paper =
        List.of(
            new Point(0, 0),
            new Point(page.widthMm, 0),
            new Point(page.widthMm, page.heightMm),
            new Point(0, page.heightMm));
    List<Point> seen = corners.stream().map(c -> new Point(c.x() * width, c.y() * height)).toList();
    Homography back = Homography.of(seen, paper).orElseThrow();
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double[] sum = new double[3];
        for (int i = 0; i < 4; i++) {
          Point mm = back.map(new Point(x + 0.25 + 0.5 * (i & 1), y + 0.25 + 0.5 * (i >> 1)));
          LinearSrgb light = page.at(mm.x(), mm.y());
          sum[0] += light.red() / 4;
          sum[1] += light.green() / 4;
          sum[2] += light.blue() / 4;
        }
        double u = 2.0 * x / width - 1;
        double v = 2.0 * y / height - 1;
        double lit = exposure * (1 - falloff * (u * u + v * v) / 2) / 0.87;
        int rgb = 0;
        for (int c = 0; c < 3; c++) {
          double linear = sum[c] * lit * cast[c];
          double grain = noise * Math.sqrt(Math.max(0.02, linear)) * random.nextGaussian();
          double encoded = Srgb.encode(Math.max(0, Math.min(1, linear + grain)));
          rgb = (rgb << 8) | (int) Math.round(255 * Math.max(0, Math.min(1, encoded)));
        }
        image.setRGB(x, y, rgb);
      }
    }
    return image;
  }

  /** From millimetres on a page to pixels. */
  public Homography place(PaintedPage page) {
    return Homography.of(paper(page), seen()).orElseThrow();
  }

  private static List<Point> paper(PaintedPage page) {
    return List.of(
        new Point(0, 0),
        new Point(page.widthMm, 0),
        new Point(page.widthMm, page.heightMm),
        new Point(0, page.heightMm));
  }

  private List<Point> seen() {
    return corners.stream().map(c -> new Point(c.x() * width, c.y() * height)).toList();
  }

  /** The picture as a JPEG file. */
  public Path save(PaintedPage page, Path file) {
    return saveJpeg(shoot(page), file, quality);
  }

  public static Path saveJpeg(BufferedImage image, Path file, double quality) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(Files.newOutputStream(file))) {
      writer.setOutput(out);
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality((float) quality);
      writer.write(null, new IIOImage(image, null, null), param);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    } finally {
      writer.dispose();
    }
    return file;
  }
}
