package org.panwright.app;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.Polygon;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Random;
import javax.imageio.ImageIO;

/**
 * A harbour that never was, painted by rule with the grain and the uneven light of a photo:
 * something to open in the subject view without anybody's picture. Always the same.
 */
final class InventedPhoto {
  /** The name of its file says what it is wherever the program shows it. */
  static final String FILE = "invented-harbour.png";

  private static final int WIDTH = 1200;
  private static final int HEIGHT = 800;
  private static final int HORIZON = 330;
  private static final double GRAIN = 5;

  private final Random chance = new Random(1);
  private final BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
  private final Graphics2D pen = image.createGraphics();

  private InventedPhoto() {}

  /** Writes it into a folder. */
  static Path in(Path folder) throws IOException {
    InventedPhoto photo = new InventedPhoto();
    photo.paint();
    Path file = folder.resolve(FILE);
    ImageIO.write(photo.image, "png", file.toFile());
    return file;
  }

  private void paint() {
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    fill(new Color(146, 176, 206), 0, new Color(228, 214, 194), HORIZON);
    clouds();
    area(
        new Color(120, 136, 142),
        0,
        300,
        260,
        262,
        520,
        296,
        820,
        280,
        1200,
        312,
        1200,
        340,
        0,
        340);
    fill(new Color(112, 142, 144), HORIZON, new Color(40, 74, 90), HEIGHT);
    ripples();
    bank();
    quay();
    boat(430, 470, new Color(146, 66, 44), new Color(228, 220, 202));
    boat(760, 560, new Color(36, 84, 132), new Color(212, 208, 196));
    pen.dispose();
    grain();
  }

  private void fill(Color upper, int top, Color lower, int bottom) {
    pen.setPaint(new GradientPaint(0, top, upper, 0, bottom, lower));
    pen.fillRect(0, top, WIDTH, bottom - top);
  }

  private void area(Color colour, int... points) {
    Polygon shape = new Polygon();
    for (int i = 0; i < points.length; i += 2) {
      shape.addPoint(points[i], points[i + 1]);
    }
    pen.setPaint(colour);
    pen.fill(shape);
  }

  private void clouds() {
    for (int i = 0; i < 260; i++) {
      int width = 60 + chance.nextInt(160);
      pen.setPaint(new Color(246, 240, 232, 10 + chance.nextInt(16)));
      pen.fillOval(chance.nextInt(WIDTH), 40 + chance.nextInt(180), width, width / 5);
    }
  }

  private void ripples() {
    for (int i = 0; i < 5200; i++) {
      int y = HORIZON + chance.nextInt(HEIGHT - HORIZON);
      int length = 4 + (y - HORIZON) / 8;
      boolean isLight = chance.nextInt(3) == 0;
      pen.setPaint(isLight ? new Color(196, 206, 200, 70) : new Color(22, 52, 68, 60));
      pen.fillRect(chance.nextInt(WIDTH), y, length, 1 + (y - HORIZON) / 200);
    }
  }

  /** Grass and gorse in flower on the left. */
  private void bank() {
    area(new Color(96, 108, 58), 0, 380, 180, 410, 330, 520, 250, 640, 0, 760);
    for (int i = 0; i < 9000; i++) {
      int x = chance.nextInt(320);
      int y = 400 + chance.nextInt(330);
      if (image.getRGB(x, y) == new Color(96, 108, 58).getRGB()) {
        int flower = chance.nextInt(7);
        pen.setPaint(
            flower == 0
                ? new Color(226, 182, 38)
                : new Color(58 + chance.nextInt(60), 78 + chance.nextInt(56), 30));
        pen.fillOval(x, y, 5 + flower / 2, 4);
      }
    }
  }

  /** A wall of granite on the right, tarred at the water. */
  private void quay() {
    area(new Color(134, 126, 116), 1200, 300, 960, 360, 940, 700, 1200, 800);
    for (int row = 0; row < 12; row++) {
      for (int column = 0; column < 5; column++) {
        int tone = chance.nextInt(34) - 17;
        pen.setPaint(new Color(134 + tone, 126 + tone, 114 + tone));
        pen.fillRect(962 + column * 50 + row % 2 * 14, 368 + row * 26, 46, 22);
      }
    }
    area(new Color(44, 40, 38), 944, 650, 1200, 720, 1200, 800, 940, 700);
  }

  private void boat(int x, int y, Color hull, Color cabin) {
    area(cabin, x + 70, y - 40, x + 150, y - 40, x + 160, y, x + 60, y);
    area(hull, x, y - 6, x + 230, y - 16, x + 200, y + 46, x + 24, y + 46);
    area(new Color(48, 42, 40), x + 20, y + 36, x + 206, y + 36, x + 198, y + 52, x + 28, y + 52);
    area(
        new Color(92, 70, 50),
        x + 108,
        y - 190,
        x + 113,
        y - 190,
        x + 113,
        y - 40,
        x + 108,
        y - 40);
    for (int i = 0; i < 90; i++) {
      int down = chance.nextInt(70);
      pen.setPaint(new Color(hull.getRed(), hull.getGreen(), hull.getBlue(), 70));
      pen.fillRect(x + 20 + chance.nextInt(170), y + 54 + down, 30, 2);
    }
  }

  private void grain() {
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        double light = chance.nextGaussian() * GRAIN - 18 * Math.pow((x - 600) / 600.0, 2);
        image.setRGB(x, y, lit(image.getRGB(x, y), light));
      }
    }
  }

  private static int lit(int rgb, double light) {
    int lit = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      int part = (int) Math.round((rgb >> shift & 255) + light);
      lit |= Math.max(0, Math.min(255, part)) << shift;
    }
    return lit;
  }
}
