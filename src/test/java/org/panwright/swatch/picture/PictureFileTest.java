package org.panwright.swatch.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.CancellationException;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.colour.LinearSrgb;
import org.panwright.colour.Srgb;
import org.panwright.words.PictureWords;

/** Pictures of all kinds, good and bad. Files are made here or written by the JDK's own codecs. */
class PictureFileTest {
  @TempDir Path folder;

  @Test
  void aPngIsReadPixelForPixel() throws Exception {
    BufferedImage image = new BufferedImage(3, 2, BufferedImage.TYPE_INT_RGB);
    image.setRGB(2, 1, 0x336699);

    Picture picture = read(png(image));

    assertThat(picture.width()).isEqualTo(3);
    assertThat(picture.height()).isEqualTo(2);
    LinearSrgb light = picture.linear(2, 1);
    assertThat(light.red()).isCloseTo(Srgb.decode(0x33 / 255.0), within(1e-4));
    assertThat(light.green()).isCloseTo(Srgb.decode(0x66 / 255.0), within(1e-4));
    assertThat(light.blue()).isCloseTo(Srgb.decode(0x99 / 255.0), within(1e-4));
  }

  @Test
  void sixteenBitsAreKept() throws Exception {
    ByteArrayOutputStream rows = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(rows);
    out.writeByte(0);
    for (int sample : new int[] {0x8001, 0x1234, 0xfedc}) {
      out.writeShort(sample);
    }
    Path file = chunks(header(1, 1, 16, 2), chunk("IDAT", deflated(rows.toByteArray())));

    Picture picture = read(file);

    assertThat(picture.encoded(0, 0, 0)).isEqualTo(0x8001 / 65535.0);
    assertThat(picture.encoded(0, 0, 1)).isEqualTo(0x1234 / 65535.0);
    assertThat(picture.encoded(0, 0, 2)).isEqualTo(0xfedc / 65535.0);
  }

  /** Half of black over white is middle grey; the share is told. */
  @Test
  void transparentPixelsLieOnWhite() throws Exception {
    BufferedImage image = new BufferedImage(2, 1, BufferedImage.TYPE_INT_ARGB);
    image.setRGB(0, 0, 0x80000000);
    image.setRGB(1, 0, 0xffffffff);

    Picture picture = read(png(image));

    assertThat(picture.encoded(0, 0, 0)).isCloseTo(0.498, within(0.002));
    assertThat(picture.transparent()).isEqualTo(0.5);
  }

  /** CIPA DC-008: 1 upright, 3 upside down, 6 lies with its top to the right, 8 to the left. */
  @ParameterizedTest(name = "orientation {0}: the stored upper left pixel is seen at {1}, {2}")
  @CsvSource({
    "1,0,0,3,2", "2,2,0,3,2", "3,2,1,3,2", "4,0,1,3,2",
    "5,0,0,2,3", "6,1,0,2,3", "7,1,2,2,3", "8,0,2,2,3"
  })
  void theCamerasOrientationIsRespected(int orientation, int x, int y, int width, int height)
      throws Exception {
    BufferedImage image = new BufferedImage(3, 2, BufferedImage.TYPE_INT_RGB);
    image.setRGB(0, 0, 0xffffff);
    byte[] plain = Files.readAllBytes(png(image));
    byte[] exif = {
      'M',
      'M',
      0,
      42,
      0,
      0,
      0,
      8,
      0,
      1,
      0x01,
      0x12,
      0,
      3,
      0,
      0,
      0,
      1,
      0,
      (byte) orientation,
      0,
      0,
      0,
      0,
      0,
      0
    };
    int afterHeader = 33;
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    whole.write(plain, 0, afterHeader);
    whole.write(chunk("eXIf", exif));
    whole.write(plain, afterHeader, plain.length - afterHeader);

    Picture picture = read(save(whole.toByteArray()));

    assertThat(picture.width()).isEqualTo(width);
    assertThat(picture.height()).isEqualTo(height);
    assertThat(picture.lightness(x, y)).isEqualTo(1);
  }

  /** The JDK's linear RGB profile has the primaries of sRGB and a gamma of 1. */
  @Test
  void anEmbeddedProfileSaysWhatTheSamplesStandFor() throws Exception {
    byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData();
    byte[] deflated = deflated(profile);
    byte[] content = new byte[deflated.length + 3];
    content[0] = 'p';
    System.arraycopy(deflated, 0, content, 3, deflated.length);
    byte[] row = {0, 51, 102, (byte) 204};
    Path file = chunks(header(1, 1, 8, 2), chunk("iCCP", content), chunk("IDAT", deflated(row)));

    LinearSrgb light = read(file).linear(0, 0);

    assertThat(light.red()).isCloseTo(0.2, within(0.004));
    assertThat(light.green()).isCloseTo(0.4, within(0.004));
    assertThat(light.blue()).isCloseTo(0.8, within(0.004));
  }

  @Test
  void aLargePictureIsThinnedOut() throws Exception {
    BufferedImage image = new BufferedImage(6000, 4000, BufferedImage.TYPE_3BYTE_BGR);

    Picture picture = read(png(image));

    assertThat(picture.step()).isEqualTo(2);
    assertThat(picture.width()).isEqualTo(3000);
  }

  @Test
  void aStoppedReadingEndsAtOnce() throws Exception {
    Path file = png(new BufferedImage(400, 400, BufferedImage.TYPE_INT_RGB));

    assertThatThrownBy(() -> PictureFile.read(file, share -> {}, () -> true))
        .isInstanceOf(CancellationException.class);
  }

  /** The header alone says so; the file holds no pixel. */
  @Test
  void aPictureThatClaimsTooMuchIsRefusedBeforeItIsDecoded() throws Exception {
    Path bomb = chunks(header(60_000, 60_000, 8, 2), chunk("IDAT", new byte[0]));

    assertThat(refused(bomb)).isEqualTo(new PictureFault.TooManyPixels(60_000, 60_000, 100));
    assertThat(PictureWords.sentence("bomb.png", refused(bomb)))
        .isEqualTo(
            "bomb.png says it is 60000 by 60000 pixels; up to 100 megapixels are read. Save it"
                + " smaller: 300 dots to the inch are plenty.");
  }

  @Test
  void aPictureWithoutPixelsIsRefused() throws Exception {
    Path none = chunks(header(0, 17, 8, 2), chunk("IDAT", new byte[0]));

    assertThat(refused(none)).isEqualTo(new PictureFault.NoPixels(0, 17));
    assertThat(sentence(none)).contains("nothing in it");
  }

  @Test
  void greyPicturesAreRefused() throws Exception {
    assertThat(sentence(png(new BufferedImage(4, 4, BufferedImage.TYPE_BYTE_GRAY))))
        .contains("is grey: it holds no colours to read");
    assertThat(sentence(jpeg(new BufferedImage(4, 4, BufferedImage.TYPE_BYTE_GRAY))))
        .contains("is grey");
  }

  @Test
  void movingPicturesAreRefused() throws Exception {
    Path moving = chunks(header(1, 1, 8, 2), chunk("acTL", new byte[8]));

    assertThat(sentence(moving)).contains("several pictures or moves");
  }

  @Test
  void aJpegFollowedByAnotherIsRefused() throws Exception {
    byte[] one = Files.readAllBytes(jpeg(new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB)));
    byte[] two = Arrays.copyOf(one, 2 * one.length);
    System.arraycopy(one, 0, two, one.length, one.length);

    assertThat(sentence(save(two))).contains("several pictures or moves");
  }

  /** Four channels in the frame header: ITU-T T.81, B.2.2. */
  @Test
  void cmykJpegsAreRefused() throws Exception {
    byte[] bytes = {
      (byte) 0xff,
      (byte) 0xd8,
      (byte) 0xff,
      (byte) 0xc0,
      0,
      20,
      8,
      0,
      8,
      0,
      8,
      4,
      1,
      0x11,
      0,
      2,
      0x11,
      0,
      3,
      0x11,
      0,
      4,
      0x11,
      0,
      (byte) 0xff,
      (byte) 0xda,
      0,
      14,
      4,
      1,
      0,
      2,
      0,
      3,
      0,
      4,
      0,
      0,
      63,
      0,
      (byte) 0xff,
      (byte) 0xd9
    };

    assertThat(sentence(save(bytes))).contains("CMYK").contains("Save it as RGB");
  }

  @ParameterizedTest(name = "a {0} cut to {1} %")
  @CsvSource({"png,60", "png,95", "jpeg,60", "jpeg,95", "jpeg,3"})
  void aFileCutShortIsRefused(String kind, int percent) throws Exception {
    BufferedImage image = new BufferedImage(60, 60, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 3600; i++) {
      image.setRGB(i % 60, i / 60, (i * 7919) & 0xffffff);
    }
    byte[] whole = Files.readAllBytes(kind.equals("png") ? png(image) : jpeg(image));

    Path cut = save(Arrays.copyOf(whole, whole.length * percent / 100));

    assertThat(sentence(cut)).contains("damaged or cut short");
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource({"GIF89a,is a GIF file", "'II*\0',is a TIFF file", "once upon a time,is no picture"})
  void otherFilesAreRefusedByName(String start, String told) throws Exception {
    assertThat(sentence(save(start.getBytes(StandardCharsets.ISO_8859_1)))).contains(told);
  }

  @Test
  void aMissingFileIsTold() {
    assertThat(sentence(folder.resolve("gone.png"))).contains("cannot be opened");
  }

  @ParameterizedTest(name = "quality {0}")
  @CsvSource({"0.3", "0.5", "0.75", "0.9"})
  void theQualityOfAJpegIsKnownByItsTables(double quality) throws Exception {
    Path file =
        org.panwright.swatch.sheet.SimulatedCamera.saveJpeg(
            new BufferedImage(16, 16, BufferedImage.TYPE_INT_RGB),
            folder.resolve("q.jpg"),
            quality);

    assertThat(read(file).quality()).isCloseTo((int) Math.round(100 * quality), within(3));
  }

  private Picture read(Path file) throws PictureFaultException {
    return PictureFile.read(file, share -> {}, () -> false);
  }

  private PictureFault refused(Path file) {
    return catchThrowableOfType(PictureFaultException.class, () -> read(file)).fault();
  }

  private String sentence(Path file) {
    return PictureWords.sentence(file.getFileName().toString(), refused(file));
  }

  private Path png(BufferedImage image) throws IOException {
    Path file = folder.resolve("made.png");
    ImageIO.write(image, "png", file.toFile());
    return file;
  }

  private Path jpeg(BufferedImage image) throws IOException {
    Path file = folder.resolve("made.jpg");
    ImageIO.write(image, "jpeg", file.toFile());
    return file;
  }

  private Path save(byte[] bytes) throws IOException {
    return Files.write(folder.resolve("saved.bin"), bytes);
  }

  private Path chunks(byte[]... chunks) throws IOException {
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    whole.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});
    for (byte[] chunk : chunks) {
      whole.write(chunk);
    }
    whole.write(chunk("IEND", new byte[0]));
    return save(whole.toByteArray());
  }

  private static byte[] header(int width, int height, int bits, int colours) throws IOException {
    ByteArrayOutputStream content = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(content);
    out.writeInt(width);
    out.writeInt(height);
    out.write(new byte[] {(byte) bits, (byte) colours, 0, 0, 0});
    return chunk("IHDR", content.toByteArray());
  }

  /** Length, type, content, and the CRC-32 of type and content. */
  private static byte[] chunk(String type, byte[] content) throws IOException {
    ByteArrayOutputStream chunk = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(chunk);
    out.writeInt(content.length);
    out.write(type.getBytes(StandardCharsets.US_ASCII));
    out.write(content);
    CRC32 crc = new CRC32();
    crc.update(type.getBytes(StandardCharsets.US_ASCII));
    crc.update(content);
    out.writeInt((int) crc.getValue());
    return chunk.toByteArray();
  }

  private static byte[] deflated(byte[] bytes) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (DeflaterOutputStream deflater = new DeflaterOutputStream(out)) {
      deflater.write(bytes);
    }
    return out.toByteArray();
  }
}
