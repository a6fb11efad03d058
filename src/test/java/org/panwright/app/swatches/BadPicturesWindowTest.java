package org.panwright.app.swatches;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.kit.Kit;
import org.panwright.swatch.sheet.SheetFormat;
import org.panwright.swatch.sheet.Sheets;
import org.panwright.swatch.sheet.SimulatedCamera;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** What the window says of pictures that are bad, and that it keeps what it had. */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class BadPicturesWindowTest {
  /** The signature of PNG and a header of so many pixels; what follows is never looked at. */
  private static final String PNG = "89504e470d0a1a0a 0000000d 49484452 %s 0802000000 00000000";

  private static final String TEXT = "00000000 49444154";

  @TempDir Path folder;
  private Desks desks;
  private SwatchesView view;

  @Start
  void start(Stage stage) {
    desks = new Desks(Desks.kit());
    view = desks.showSheets(stage);
  }

  @Test
  void aPoorPictureIsReadWithItsWarningsAndStaysWhenBadFilesFollow(FxRobot robot) throws Exception {
    Path poor =
        SimulatedCamera.scanner(700, 990)
            .withQuality(0.4)
            .save(
                Sheets.painted(SheetFormat.A4, List.of("white", "black")),
                folder.resolve("poor.jpg"));
    robot.interact(() -> view.open(poor, () -> {}));
    assertThat(warnings(robot))
        .anyMatch(said -> said.startsWith("Only 3.3 pixels to a millimetre"))
        .anyMatch(said -> said.startsWith("The JPEG is strongly compressed (quality 40 of 100)"));
    Optional<ShownPicture> shown = desks.pictures.pictureProperty().get();
    SheetState read = desks.sheet.stateProperty().get();
    Kit kit = desks.session.kit();

    for (Map.Entry<String, String> bad : badFiles().entrySet()) {
      robot.interact(() -> view.open(folder.resolve(bad.getKey()), () -> {}));

      assertThat(robot.lookup("#picture-problem").queryLabeled().isVisible()).isTrue();
      assertThat(robot.lookup("#picture-problem").queryLabeled().getText())
          .startsWith(bad.getKey())
          .contains(bad.getValue())
          .endsWith("What you see is still poor.jpg.");
      assertThat(desks.pictures.pictureProperty().get()).isSameAs(shown);
      assertThat(desks.sheet.stateProperty().get()).isEqualTo(read);
    }
    assertThat(desks.session.kit()).isSameAs(kit);

    robot.interact(() -> view.open(poor, () -> {}));
    assertThat(robot.lookup("#picture-problem").queryLabeled().isVisible()).isFalse();
  }

  /** Each file's name and a part of what has to be said of it. */
  private Map<String, String> badFiles() throws IOException {
    Map<String, String> files = new LinkedHashMap<>();
    put(files, "bomb.png", hex(PNG.formatted("0000ea60 0000ea60") + TEXT), "60000 by 60000 pixels");
    put(files, "none.png", hex(PNG.formatted("00000000 00000011") + TEXT), "nothing in it");
    put(
        files,
        "moving.png",
        hex(PNG.formatted("00000001 00000001") + "00000008 6163544c" + "00".repeat(12)),
        "holds several pictures or moves. Save the one to read by itself.");
    put(files, "moving.gif", "GIF89a".getBytes(StandardCharsets.US_ASCII), "is a GIF file. Save");
    put(
        files,
        "inks.jpg",
        hex(
            "ffd8 ffc0 0014 08 0008 0008 04 01 11 00 02 11 00 03 11 00 04 11 00"
                + "ffda 000e 04 01 00 02 00 03 00 04 00 00 3f 00 ffd9"),
        "holds printing inks (CMYK), not red, green and blue. Save it as RGB");
    put(
        files,
        "steps.jpg",
        hex(
            "ffd8 ffc2 0011 08 208d 2ee0 03 01 11 00 02 11 00 03 11 00"
                + "ffda 000c 03 01 00 02 00 03 00 00 3f 00 ffd9"),
        "Save it as a baseline (not progressive) JPEG");
    Path whole =
        SimulatedCamera.saveJpeg(
            new BufferedImage(60, 60, BufferedImage.TYPE_INT_RGB),
            folder.resolve("whole.jpg"),
            0.9);
    byte[] bytes = Files.readAllBytes(whole);
    put(files, "cut.jpg", Arrays.copyOf(bytes, bytes.length * 2 / 3), "is damaged or cut short");
    BufferedImage grey = new BufferedImage(60, 60, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 60; i++) {
      grey.setRGB(i, i, 0x010101 * 4 * i);
    }
    put(files, "grey.jpg", new byte[0], "is grey: it holds no colours to read");
    SimulatedCamera.saveJpeg(grey, folder.resolve("grey.jpg"), 0.9);
    files.put("gone.jpg", "cannot be opened. Check that it is still there");
    return files;
  }

  private void put(Map<String, String> files, String name, byte[] content, String told)
      throws IOException {
    Files.write(folder.resolve(name), content);
    files.put(name, told);
  }

  private static byte[] hex(String digits) {
    return HexFormat.of().parseHex(digits.replace(" ", ""));
  }

  private static List<String> warnings(FxRobot robot) {
    return robot.lookup(".warn").queryAllAs(Labeled.class).stream()
        .filter(Labeled::isVisible)
        .map(Labeled::getText)
        .toList();
  }
}
