package org.panwright.swatch.spot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.colour.Lab;
import org.panwright.paint.PaintedCoat;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.PictureFile;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.sheet.Card;
import org.panwright.swatch.sheet.HeldLightness;
import org.panwright.swatch.sheet.PatchReading;
import org.panwright.swatch.sheet.ReadingFault;
import org.panwright.swatch.sheet.ReadingFaultException;

/**
 * Flat fields side by side, 100 pixels wide: paper, a card, a coat, a line, a coat over it, each of
 * a known share of the light.
 */
class SpotsReadingTest {
  private static final Lab PAPER = new Lab(96, 0, 0);

  @TempDir Path folder;

  /**
   * By hand: a field of 0.5 beside paper of 0.4 sends back 0.9 · 0.5 / 0.4 = 1.125 of all light,
   * and L* of 1.125 is 116 · 1.125^(1/3) − 16 = 104.6; a field of no light has L* 0. Neither is a
   * coat.
   */
  @Test
  void aLightnessNoCoatCanHaveIsHeldAndTold() throws Exception {
    SpotsReading reading =
        SpotsReading.of(
            picture(0.4, 0.5, 0),
            List.of(spot(SpotKind.PAPER, 0), spot(SpotKind.FULL, 1), spot(SpotKind.FULL, 2)),
            PAPER,
            0.18);

    assertThat(reading.patches())
        .extracting(patch -> patch.orElseThrow().held())
        .containsExactly(HeldLightness.NOT_HELD, HeldLightness.TOO_LIGHT, HeldLightness.TOO_DARK);
    assertThat(lab(reading, 1).l()).isEqualTo(99.8);
    assertThat(lab(reading, 2).l()).isEqualTo(0.2);
  }

  @Test
  void aCardsLightnessIsThatOfItsReflectance() {
    // CIE 15: L* = 116 · 0.18^(1/3) − 16 = 49.50; 116 · 0.9^(1/3) − 16 = 96.00 (by hand).
    assertThat(Card.lightnessOf(0.18)).isCloseTo(49.50, within(0.01));
    assertThat(Card.lightnessOf(0.90)).isCloseTo(96.00, within(0.01));
  }

  @Test
  void theLightIsTakenOutByThePaper() throws Exception {
    // The light is half as strong as it might be: all fields are halved alike.
    Picture picture = picture(0.45, 0.09, 0.225);

    SpotsReading reading =
        SpotsReading.of(
            picture, List.of(spot(SpotKind.PAPER, 0), spot(SpotKind.FULL, 2)), PAPER, 0.18);

    // Half the paper's light: Y = 0.5 · Y(96), so L* = 116 (0.5 · 0.9)^(1/3) − 16 = 72.89.
    assertThat(lab(reading, 1).l()).isCloseTo(72.89, within(0.3));
    assertThat(reading.measuredPaper()).isFalse();
  }

  @Test
  void aCardBesideThePaperTellsThePapersOwnColour() throws Exception {
    Picture picture = picture(0.4, 0.1, 0.2);

    SpotsReading reading =
        SpotsReading.of(
            picture,
            List.of(spot(SpotKind.PAPER, 0), spot(SpotKind.CARD, 1), spot(SpotKind.FULL, 2)),
            PAPER,
            0.18);

    // Four times as light as 18 %: Y = 0.72, L* = 116 · 0.72^(1/3) − 16 = 87.97.
    assertThat(reading.measuredPaper()).isTrue();
    assertThat(reading.paper().l()).isCloseTo(87.97, within(0.4));
    // The coat is twice the card: Y = 0.36, L* = 116 · 0.36^(1/3) − 16 = 66.52.
    assertThat(lab(reading, 2).l()).isCloseTo(66.52, within(0.4));
  }

  @Test
  void aCardAloneTakesThePlaceOfPaper() throws Exception {
    Picture picture = picture(0.4, 0.1, 0.2);

    SpotsReading reading =
        SpotsReading.of(
            picture, List.of(spot(SpotKind.CARD, 1), spot(SpotKind.FULL, 2)), PAPER, 0.18);

    assertThat(lab(reading, 1).l()).isCloseTo(66.52, within(0.4));
    assertThat(reading.paper()).isEqualTo(PAPER);
    assertThat(reading.measuredPaper()).isFalse();
  }

  @Test
  void withoutPaperAndCardNothingCanBeRead() throws Exception {
    Picture picture = picture(0.4, 0.1, 0.2);
    List<Spot> coats = List.of(spot(SpotKind.FULL, 2));

    assertThat(SpotsReading.canRead(coats)).isFalse();
    assertThatThrownBy(() -> SpotsReading.of(picture, coats, PAPER, 0.18))
        .isInstanceOf(ReadingFaultException.class)
        .extracting(thrown -> ((ReadingFaultException) thrown).fault())
        .isEqualTo(new ReadingFault.NoBarePaper());
  }

  @Test
  void aSpotOutsideThePictureHasNoColour() throws Exception {
    Spot outside = spot(SpotKind.FULL, 2).at(new Point(1, 1)).withSide(60);

    SpotsReading reading =
        SpotsReading.of(
            picture(0.4, 0.1, 0.2), List.of(spot(SpotKind.PAPER, 0), outside), PAPER, 0.18);

    assertThat(reading.patches().get(1)).isEmpty();
  }

  @Test
  void spotsBecomeCoatsOfTheirPaints() throws Exception {
    List<Spot> spots =
        List.of(
            spot(SpotKind.PAPER, 0),
            spot(SpotKind.CARD, 1),
            spot(SpotKind.FULL, 2).withPaint(Optional.of("blue")),
            spot(SpotKind.WITH_WHITE, 2).withPaint(Optional.of("blue")),
            spot(SpotKind.WITH_WHITE, 2).withPaint(Optional.of("white")),
            spot(SpotKind.OVER_LINE, 3).withPaint(Optional.of("blue")),
            spot(SpotKind.BARE_LINE, 1),
            spot(SpotKind.FULL, 2));
    SpotsReading reading = SpotsReading.of(picture(0.4, 0.1, 0.2), spots, PAPER, 0.18);

    Map<String, List<PaintedCoat>> coats =
        new SpotCoats(reading, Optional.of("white"), Optional.empty())
            .of(LocalDate.EPOCH, "garden.jpg");

    // White with white is no mixture, and a spot without a paint is nobody's.
    assertThat(coats).containsOnlyKeys("blue");
    List<PaintedCoat> blue = coats.get("blue");
    assertThat(blue).hasSize(3).allMatch(coat -> coat.source().equals("garden.jpg"));
    assertThat(blue.get(0).ground().orElseThrow().lab()).isEqualTo(reading.paper());
    assertThat(blue.get(1).mixedWith().orElseThrow().paintId()).isEqualTo("white");
    assertThat(blue.get(2).over()).isEqualTo(PaintedCoat.Ground.BLACK_LINE);
    assertThat(blue.get(2).ground().orElseThrow().lab()).isEqualTo(lab(reading, 6));
    assertThat(blue).extracting(PaintedCoat::id).doesNotHaveDuplicates();
  }

  private static Lab lab(SpotsReading reading, int spot) {
    return reading.patches().get(spot).map(PatchReading::lab).orElseThrow();
  }

  private static Spot spot(SpotKind kind, int field) {
    return new Spot(kind, Optional.empty(), new Point(50 + 100 * field, 50), 40);
  }

  /**
   * Fields that send back these shares of the light, grey, as sRGB encodes them (IEC 61966-2-1).
   */
  private Picture picture(double... shares) throws Exception {
    BufferedImage image = new BufferedImage(400, 100, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    for (int i = 0; i < shares.length; i++) {
      float encoded = (float) Math.max(0, 1.055 * Math.pow(shares[i], 1 / 2.4) - 0.055);
      pen.setColor(new Color(encoded, encoded, encoded));
      pen.fillRect(100 * i, 0, 100, 100);
    }
    pen.fillRect(300, 0, 100, 100);
    pen.dispose();
    return PictureFile.read(write(image), share -> {}, () -> false);
  }

  private Path write(BufferedImage image) throws IOException {
    Path file = folder.resolve("fields.png");
    ImageIO.write(image, "png", file.toFile());
    return file;
  }
}
