package org.panwright.swatch.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.paint.Optics;
import org.panwright.paint.Paper;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.PictureFile;
import org.panwright.swatch.picture.Point;
import org.panwright.words.PictureWords;

/**
 * Pictures nothing can be read off, each told in its own sentence, and rows painted in the wrong
 * place.
 */
class UnreadableSheetTest {
  private static final Lab PAPER = Light.D65.lab(PaintedPage.PAPER);
  private static final int WIDTH = 700;
  private static final int HEIGHT = 990;

  @TempDir Path folder;

  @Test
  void cornersInOneLineSpanNothing() throws Exception {
    assertThat(refused(coloured(), corners(10, 10, 10, 300, 10, 600, 10, 900)))
        .contains("in one line");
  }

  @Test
  void cornerBesideThePictureIsTold() throws Exception {
    assertThat(refused(coloured(), corners(10, 10, WIDTH + 5, 10, 690, 980, 10, 980)))
        .contains("outside the picture");
  }

  @Test
  void sheetOfTooFewPixelsIsTold() throws Exception {
    assertThat(refused(coloured(), corners(10, 10, 110, 10, 110, 150, 10, 150)))
        .contains("pixels to a millimetre, too few");
  }

  /** Where every place has a colour of its own there is nothing to take for paper. */
  @Test
  void pictureWithoutBarePaperIsTold() throws Exception {
    assertThat(refused(coloured(), corners(10, 10, 690, 10, 690, 980, 10, 980)))
        .contains("No bare paper");
  }

  /**
   * One even wash of ultramarine agrees with itself everywhere, yet no lamp makes paper so blue.
   */
  @Test
  void pictureAllOfOnePaintIsNotTakenForPaper() throws Exception {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        image.setRGB(x, y, 0x2e34d0);
      }
    }
    Path file = folder.resolve("wash.png");
    ImageIO.write(image, "png", file.toFile());

    assertThat(
            refused(
                PictureFile.read(file, share -> {}, () -> false),
                corners(10, 10, 690, 10, 690, 980, 10, 980)))
        .contains("strongly coloured");
  }

  @Test
  void sheetNobodyPaintedIsTold() throws Exception {
    Picture picture = taken(Sheets.blank(SheetFormat.A4));
    FoundSheet sheet = SheetFinder.find(picture).orElseThrow();

    assertThat(refused(picture, sheet.corners())).contains("look like bare paper");
  }

  @Test
  void rowsPaintedInEachOthersPlaceAreNamed() throws Exception {
    List<String> paints = new ArrayList<>(InventedShelf.OPTICS.keySet());
    Picture right = taken(Sheets.painted(SheetFormat.A4));
    assertThat(swapped(right)).isEmpty();

    Collections.swap(paints, 3, 5);
    Picture wrong = taken(Sheets.painted(SheetFormat.A4, paints));
    assertThat(swapped(wrong))
        .hasValueSatisfying(
            found -> {
              assertThat(found.first()).isEqualTo(3);
              assertThat(found.second()).isEqualTo(5);
            });
  }

  private Optional<SwappedRows> swapped(Picture picture) throws Exception {
    FoundSheet sheet = SheetFinder.find(picture).orElseThrow();
    SheetReading reading = SheetReading.of(picture, sheet, PAPER, Optional.empty());
    List<Optics> all = List.copyOf(InventedShelf.OPTICS.values());
    List<Optics> known = reading.rows().stream().map(row -> all.get(row.row())).toList();
    return RowCheck.swapped(reading.rows(), known, Paper.WHITE);
  }

  private static String refused(Picture picture, List<Point> corners) {
    FoundSheet sheet = new FoundSheet(SheetFormat.A4, corners, Optional.empty());
    ReadingFaultException refusal =
        catchThrowableOfType(
            ReadingFaultException.class,
            () -> SheetReading.of(picture, sheet, PAPER, Optional.empty()));
    return PictureWords.sentence(refusal.fault());
  }

  private Picture taken(PaintedPage page) throws Exception {
    Path file = SimulatedCamera.scanner(1300, 1840).save(page, folder.resolve("sheet.jpg"));
    return PictureFile.read(file, share -> {}, () -> false);
  }

  /** Strong colours at random, in spots of 8 pixels. */
  private Picture coloured() throws Exception {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    int[] colours = new Random(5).ints(200 * 200, 0, 1 << 24).toArray();
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        image.setRGB(x, y, colours[y / 8 * 200 + x / 8]);
      }
    }
    Path file = folder.resolve("coloured.png");
    ImageIO.write(image, "png", file.toFile());
    return PictureFile.read(file, share -> {}, () -> false);
  }

  private static List<Point> corners(double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    return points;
  }
}
