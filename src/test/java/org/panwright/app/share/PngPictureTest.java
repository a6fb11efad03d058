package org.panwright.app.share;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Read back chunk by chunk, as ISO/IEC 15948 (PNG), 5.3, lays them out. */
class PngPictureTest {
  private static final BufferedImage PICTURE =
      new BufferedImage(40, 30, BufferedImage.TYPE_INT_ARGB);

  private record Chunk(String type, ByteBuffer content) {}

  @Test
  void saysThreeHundredDotsPerInchBeforeThePicture() {
    PICTURE.setRGB(3, 4, 0xFF336699);
    List<Chunk> chunks = chunks(PngPicture.of(PICTURE, 300));
    List<String> types = chunks.stream().map(Chunk::type).toList();
    assertThat(types).startsWith("IHDR", "pHYs").endsWith("IEND");
    assertThat(types.indexOf("pHYs")).isLessThan(types.indexOf("IDAT"));
    ByteBuffer size = chunks.get(1).content();
    // 300 dots / 25.4 mm = 11811.02 dots / m
    assertThat(size.getInt()).isEqualTo(11811);
    assertThat(size.getInt()).isEqualTo(11811);
    assertThat(size.get()).as("unit: metre").isEqualTo((byte) 1);
  }

  @Test
  void thePictureItselfIsUnchanged() throws Exception {
    PICTURE.setRGB(3, 4, 0xFF336699);
    BufferedImage back = ImageIO.read(new ByteArrayInputStream(PngPicture.of(PICTURE, 300)));
    assertThat(back.getWidth()).isEqualTo(40);
    assertThat(back.getHeight()).isEqualTo(30);
    assertThat(back.getRGB(3, 4)).isEqualTo(0xFF336699);
    assertThat(back.getRGB(0, 0)).isZero();
  }

  private static List<Chunk> chunks(byte[] png) {
    ByteBuffer bytes = ByteBuffer.wrap(png);
    byte[] signature = new byte[8];
    bytes.get(signature);
    assertThat(signature).containsExactly(new int[] {0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
    List<Chunk> chunks = new ArrayList<>();
    while (bytes.hasRemaining()) {
      int length = bytes.getInt();
      byte[] typeAndContent = new byte[4 + length];
      bytes.get(typeAndContent);
      CRC32 check = new CRC32();
      check.update(typeAndContent);
      assertThat(bytes.getInt()).isEqualTo((int) check.getValue());
      byte[] content = new byte[length];
      System.arraycopy(typeAndContent, 4, content, 0, length);
      chunks.add(
          new Chunk(
              new String(typeAndContent, 0, 4, StandardCharsets.US_ASCII),
              ByteBuffer.wrap(content)));
    }
    return chunks;
  }
}
