package org.panwright.app.swatches;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.picture.Zone;
import org.panwright.swatch.sheet.PaintedPage;
import org.panwright.swatch.sheet.PatchKind;
import org.panwright.swatch.sheet.ReadingFault;
import org.panwright.swatch.sheet.SheetFormat;
import org.panwright.swatch.sheet.SheetPlan;
import org.panwright.swatch.sheet.Sheets;
import org.panwright.swatch.sheet.SimulatedCamera;
import org.panwright.words.PictureWords;

/**
 * One painted sheet, taken badly in every way there is a warning for; each picture has one fault,
 * and exactly its sentence is said.
 */
class PictureWarningsTest {
  private static final SheetPlan PLAN = new SheetPlan(SheetFormat.A4);
  private static final SimulatedCamera GOOD = SimulatedCamera.scanner(900, 1270);

  @TempDir Path folder;
  private static PaintedPage page;
  private Desks desks;

  @BeforeAll
  static void paint() {
    page = painted();
  }

  @BeforeEach
  void open() {
    desks = new Desks(Desks.kit());
    desks.sheet.setChosen(true);
  }

  @Test
  void aGoodPictureIsNotRemarkedOn() {
    assertThat(remarks(GOOD)).isEmpty();
  }

  @Test
  void paperThatIsCutOffAtWhite() {
    assertThat(remarks(GOOD.withExposure(1.2)))
        .singleElement()
        .asString()
        .matches("\\d+ % of the bare paper is cut off at white: expose less\\.");
  }

  /** IEC 61966-2-1: a tenth of full light is encoded as 1.055 · 0.1^(1/2.4) − 0.055 = 89 of 255. */
  @Test
  void paperThatIsDark() {
    assertThat(remarks(GOOD.withExposure(0.1)))
        .singleElement()
        .asString()
        .matches("The paper is dark in the picture \\((88|89|90) of 255\\): expose more\\.");
  }

  /**
   * Noise of 0.12 √0.7 at paper of 0.7 is 14 % in each channel; Y adds them as 0.21, 0.72 and 0.07
   * (IEC 61966-2-1), so 14 · √(0.21² + 0.72² + 0.07²) = 11 %, less what the JPEG smooths.
   */
  @Test
  void noise() {
    assertThat(remarks(GOOD.withExposure(0.7).withNoise(0.12)))
        .singleElement()
        .asString()
        .matches("The picture is noisy \\((9|1[01]) % at the paper\\): take it in more light\\.");
  }

  /** CIELAB b* of linear sRGB (1, 1, 0.5) at L* 92 is about 21 by hand. */
  @Test
  void colouredLight() {
    assertThat(remarks(GOOD.withExposure(0.7).withCast(1, 1, 0.5)))
        .singleElement()
        .asString()
        .startsWith("The light is coloured (the paper has a chroma of ")
        .endsWith("the paper corrects it only in part; daylight is better.");
  }

  /** What the camera's own law of light, 1 − 0.75 r²/2, gives for the bare spots. */
  @Test
  void lightThatFallsOff() {
    SimulatedCamera camera = falling(0.75);
    double[] light =
        PLAN.paperSpots().stream()
            .map(zone -> camera.place(page).map(zone.middle()))
            .mapToDouble(
                p ->
                    1
                        - 0.75
                            * (Math.pow(2 * p.x() / 900 - 1, 2) + Math.pow(2 * p.y() / 1270 - 1, 2))
                            / 2)
            .sorted()
            .toArray();
    double ratio = light[light.length - 1] / light[0];

    String said = remarks(camera).get(0);

    assertThat(said).startsWith("The light falls off by a factor of ").endsWith("light it evenly.");
    assertThat(Double.parseDouble(said.replaceAll("[^\\d.]|\\.$", "")))
        .isCloseTo(ratio, within(0.15));
  }

  @Test
  void fewPixels() {
    assertThat(remarks(SimulatedCamera.scanner(700, 990)))
        .singleElement()
        .asString()
        .startsWith("Only 3.3 pixels to a millimetre");
  }

  @Test
  void aStronglyCompressedJpeg() {
    assertThat(remarks(GOOD.withQuality(0.4)))
        .singleElement()
        .asString()
        .isEqualTo("The JPEG is strongly compressed (quality 40 of 100): save it at 85 or more.");
  }

  /** A tenth of the picture's rows, all but the last of them under the sheet, half transparent. */
  @Test
  void transparency() throws Exception {
    BufferedImage plain = GOOD.shoot(page);
    BufferedImage clear =
        new BufferedImage(plain.getWidth(), plain.getHeight(), BufferedImage.TYPE_INT_ARGB);
    clear.createGraphics().drawImage(plain, 0, 0, null);
    for (int y = 0; y < clear.getHeight() / 10; y++) {
      for (int x = 0; x < clear.getWidth(); x++) {
        clear.setRGB(x, y, (plain.getRGB(x, y) & 0xffffff) | 0xfe000000);
      }
    }
    Path file = folder.resolve("clear.png");
    ImageIO.write(clear, "png", file.toFile());

    desks.pictures.open(file);

    assertThat(desks.sheet.stateProperty().get().remarks())
        .containsExactly("10 % of the picture is transparent and was laid on white.");
  }

  @Test
  void paperThatPaintHasRunInto() {
    List<Zone> bare = PLAN.paperSpots();
    PaintedPage soiled = painted();
    for (int i = 0; i < bare.size(); i += 3) {
      soiled.spot(bare.get(i), 0.3);
    }

    desks.pictures.open(GOOD.save(soiled, folder.resolve("soiled.jpg")));

    assertThat(desks.sheet.stateProperty().get().remarks())
        .singleElement()
        .asString()
        .matches("3\\d % of the places that should be bare are not, and were left out\\.");
  }

  /** Two patches that send back a tenth more than all light, as glare does. */
  @Test
  void patchesLighterThanThePaper() {
    PaintedPage glaring = painted();
    glaring.spot(PLAN.onPaper(0, PatchKind.WASH), 1.1);
    glaring.spot(PLAN.onPaper(1, PatchKind.TINT), 1.1);

    desks.pictures.open(GOOD.withExposure(0.7).save(glaring, folder.resolve("glare.jpg")));

    assertThat(desks.sheet.stateProperty().get().remarks())
        .anyMatch(remark -> remark.startsWith("Look at this coat again: black"))
        .contains(
            "Lighter than the bare paper, and taken as white: Row 1, wash; Row 2, with white. Look"
                + " for glare or a scrap of other paper there.");
  }

  @Test
  void aHeadThatCannotBeRead() {
    PaintedPage covered = painted();
    PLAN.pageCells().forEach(cell -> covered.spot(cell, 0.87));

    desks.pictures.open(GOOD.save(covered, folder.resolve("covered.jpg")));

    assertThat(desks.sheet.stateProperty().get().remarks())
        .singleElement()
        .asString()
        .startsWith("The squares at the sheet's head cannot be read");
  }

  @Test
  void aPictureTooSmallToTellAPatchFromItsEdge() {
    assertFault(
        SimulatedCamera.scanner(240, 340),
        page,
        "pixels to a millimetre, too few to tell a patch from its edge");
  }

  @Test
  void aSheetNobodyPainted() {
    assertFault(GOOD, Sheets.blank(SheetFormat.A4), "All patches look like bare paper");
  }

  /** The whole sheet painted over, every place in a tone of its own. */
  @Test
  void aPictureWithoutAnyBarePaper() {
    PaintedPage full = painted();
    List<Zone> bare = PLAN.paperSpots();
    for (int i = 0; i < bare.size(); i++) {
      full.spot(bare.get(i), 0.03 + 0.8 * ((7 * i) % bare.size()) / bare.size());
    }

    assertFault(GOOD, full, "No bare paper can be made out between the patches");
  }

  @Test
  void cornersInOnePlace() {
    desks.pictures.open(GOOD.save(page, folder.resolve("sheet.jpg")));

    for (int corner = 0; corner < 4; corner++) {
      desks.sheet.corners().move(corner, new Point(200, 200));
    }

    assertThat(desks.sheet.stateProperty().get().fault()).contains(new ReadingFault.NoArea());
    assertThat(PictureWords.sentence(new ReadingFault.NoArea()))
        .contains("Drag each to its own corner");
  }

  /**
   * One pulled across the others: the sides cross, and the middle of the sheet lies at infinity.
   */
  @Test
  void cornersThatCross() {
    desks.pictures.open(GOOD.save(page, folder.resolve("sheet.jpg")));
    Point first = desks.sheet.corners().placesProperty().get().get(0);

    desks.sheet.corners().move(0, desks.sheet.corners().placesProperty().get().get(1));
    assertThat(desks.sheet.stateProperty().get().fault()).contains(new ReadingFault.NoArea());
    desks.sheet.corners().move(1, first);
    assertThat(desks.sheet.stateProperty().get().fault()).contains(new ReadingFault.NoArea());
  }

  /** Four times the same mud in every row: nothing can be learnt, and nothing is kept. */
  @Test
  void patchesThatAreAllAlike() {
    PaintedPage alike = Sheets.blank(SheetFormat.A4);
    PaintedPage.outlines(Sheets.papers(SheetFormat.A4).sheets().get(0))
        .forEach(outline -> alike.spot(outline, 0.2));

    desks.pictures.open(GOOD.save(alike, folder.resolve("alike.jpg")));

    SheetState state = desks.sheet.stateProperty().get();
    assertThat(state.refusal()).isPresent();
    assertThat(desks.sheet.canKeep()).isFalse();
  }

  private List<String> remarks(SimulatedCamera camera) {
    desks.pictures.open(camera.save(page, folder.resolve("sheet.jpg")));
    assertThat(desks.sheet.stateProperty().get().fault()).isEmpty();
    return desks.sheet.stateProperty().get().remarks();
  }

  private void assertFault(SimulatedCamera camera, PaintedPage taken, String told) {
    desks.pictures.open(camera.save(taken, folder.resolve("sheet.jpg")));
    SheetState state = desks.sheet.stateProperty().get();
    assertThat(state.fault()).isPresent();
    assertThat(PictureWords.sentence(state.fault().get())).contains(told);
    assertThat(state.rows()).isEmpty();
    assertThat(desks.sheet.canKeep()).isFalse();
  }

  private static SimulatedCamera falling(double falloff) {
    return new SimulatedCamera(
        GOOD.width(),
        GOOD.height(),
        GOOD.corners(),
        GOOD.exposure(),
        GOOD.cast(),
        falloff,
        GOOD.noise(),
        GOOD.quality());
  }

  private static PaintedPage painted() {
    return Sheets.painted(SheetFormat.A4, List.of("white", "black"));
  }
}
