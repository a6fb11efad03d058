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
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
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
    byte[] exif = exif(orientation, true);
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

  /**
   * The same in a JPEG, as cameras write it: an APP1 segment before the others, here in the other
   * byte order. One corner is white; a corner is eight pixels wide, the block of a JPEG.
   */
  @ParameterizedTest(name = "orientation {0}: the stored upper left corner is seen at {1}, {2}")
  @CsvSource({
    "1,0,0,24,16", "2,2,0,24,16", "3,2,1,24,16", "4,0,1,24,16",
    "5,0,0,16,24", "6,1,0,16,24", "7,1,2,16,24", "8,0,2,16,24"
  })
  void theCamerasOrientationIsRespectedInAJpeg(int orientation, int x, int y, int width, int height)
      throws Exception {
    BufferedImage image = new BufferedImage(24, 16, BufferedImage.TYPE_INT_RGB);
    IntStream.range(0, 64).forEach(i -> image.setRGB(i % 8, i / 8, 0xffffff));
    byte[] plain = Files.readAllBytes(jpeg(image));
    byte[] exif = exif(orientation, false);
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    whole.write(plain, 0, 2);
    whole.write(bytes(0xff, 0xe1, 0, 2 + 6 + exif.length, 'E', 'x', 'i', 'f', 0, 0));
    whole.write(exif);
    whole.write(plain, 2, plain.length - 2);

    Picture picture = read(save(whole.toByteArray()));

    assertThat(picture.width()).isEqualTo(width);
    assertThat(picture.height()).isEqualTo(height);
    assertThat(picture.lightness(8 * x + 4, 8 * y + 4)).isGreaterThan(0.9);
    assertThat(picture.lightness(width - 5 - 8 * x, height - 5 - 8 * y)).isLessThan(0.1);
  }

  /** A TIFF block of one entry, tag 274, kind SHORT (TIFF 6.0, section 8). */
  private static byte[] exif(int orientation, boolean bigEnd) {
    ByteBuffer block =
        ByteBuffer.allocate(26).order(bigEnd ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
    block.put(bytes(bigEnd ? 'M' : 'I', bigEnd ? 'M' : 'I'));
    block.putShort((short) 42).putInt(8).putShort((short) 1);
    block.putShort((short) 0x0112).putShort((short) 3).putInt(1);
    block.putShort((short) orientation);
    return block.array();
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
    byte[] bytes =
        bytes(
            0xff, 0xd8, 0xff, 0xc0, 0, 20, 8, 0, 8, 0, 8, 4, 1, 0x11, 0, 2, 0x11, 0, 3, 0x11, 0, 4,
            0x11, 0, 0xff, 0xda, 0, 14, 4, 1, 0, 2, 0, 3, 0, 4, 0, 0, 63, 0, 0xff, 0xd9);

    assertThat(sentence(save(bytes))).contains("CMYK").contains("Save it as RGB");
  }

  /**
   * ITU-T T.81: a progressive frame keeps two bytes a coefficient. 12000 x 8333 in blocks of 8 x 8
   * is 1500 x 1042 blocks of 128 bytes a component: 190.8 MB; three of them at full resolution are
   * 572 MB; with two at half of it both ways (750 x 521) 286 MB, which is borne.
   */
  @Test
  void aProgressiveJpegThatWouldTakeTooMuchMemoryIsRefusedByItsHeader() throws Exception {
    assertThat(sentence(save(progressive(0x11))))
        .contains("progressive JPEG of 12000 by 8333 pixels")
        .contains("takes 572 MB of memory to open; up to 320 MB are given")
        .contains("Save it as a baseline");
    assertThat(refused(save(progressive(0x22)))).isEqualTo(new PictureFault.Broken());
  }

  @Test
  void aJpegOfEndlessStepsIsRefused() throws Exception {
    byte[] one = progressive(0x22);
    ByteArrayOutputStream many = new ByteArrayOutputStream();
    many.write(one, 0, one.length - 2);
    for (int i = 0; i < 150; i++) {
      many.write(new byte[] {(byte) 0xff, (byte) 0xda, 0, 8, 1, 1, 0, 0, 63, 0});
    }
    many.write(new byte[] {(byte) 0xff, (byte) 0xd9});

    assertThat(sentence(save(many.toByteArray()))).contains("rare kind of JPEG (over 100 scans)");
  }

  @Test
  void aProgressiveJpegIsReadAsAnyOther() throws Exception {
    BufferedImage image = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
    IntStream.range(0, 1200).forEach(i -> image.setRGB(i % 40, i / 40, 0x336699));
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ImageWriteParam steps = writer.getDefaultWriteParam();
    steps.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
    Path file = folder.resolve("steps.jpg");
    try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), steps);
    }

    assertThat(read(file).encoded(20, 15, 2)).isCloseTo(0x99 / 255.0, within(0.02));
  }

  /** Start of image, a progressive frame of 12000 x 8333 (T.81, B.2.2), one empty scan, the end. */
  private static byte[] progressive(int samplingOfLightness) {
    return bytes(
        0xff,
        0xd8,
        0xff,
        0xc2,
        0,
        17,
        8,
        0x20,
        0x8d,
        0x2e,
        0xe0,
        3,
        1,
        samplingOfLightness,
        0,
        2,
        0x11,
        0,
        3,
        0x11,
        0,
        0xff,
        0xda,
        0,
        12,
        3,
        1,
        0,
        2,
        0,
        3,
        0,
        0,
        63,
        0,
        0xff,
        0xd9);
  }

  private static byte[] bytes(int... values) {
    byte[] bytes = new byte[values.length];
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] = (byte) values[i];
    }
    return bytes;
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
