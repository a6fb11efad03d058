package org.panwright.app.subject;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.app.subject.PhotoSource.UnreadablePhotoException;

class PhotoFileTest {
  @TempDir Path folder;

  @Test
  void aSmallPhotoComesPixelByPixel() throws Exception {
    Photo photo = read(write("small.png", 3, 2));
    assertThat(photo.width()).isEqualTo(3);
    assertThat(photo.rgb())
        .containsExactly(0xff000000, 0xff200000, 0xff400000, 0xff002000, 0xff202000, 0xff402000);
  }

  @Test
  void aLargePhotoIsThinnedOut() throws Exception {
    Photo photo = read(write("large.png", 2400, 1200));
    assertThat(photo.rgb().length).isBetween(PhotoFile.SHOWN_PIXELS / 4, PhotoFile.SHOWN_PIXELS);
    assertThat(photo.name()).isEqualTo("large.png");
  }

  @Test
  void aBrokenPhotoIsNamed() throws Exception {
    Path file = write("cut.png", 50, 50);
    byte[] whole = Files.readAllBytes(file);
    Files.write(file, java.util.Arrays.copyOf(whole, whole.length / 2));
    assertThatThrownBy(() -> read(file))
        .isInstanceOf(UnreadablePhotoException.class)
        .hasMessageContaining("cut.png")
        .hasMessageEndingWith(".");
  }

  @Test
  void aGreyPhotoIsToldWithoutSpeakingOfSheets() throws Exception {
    Path file = folder.resolve("fog.png");
    ImageIO.write(new BufferedImage(20, 20, BufferedImage.TYPE_BYTE_GRAY), "png", file.toFile());
    assertThatThrownBy(() -> read(file))
        .isInstanceOf(UnreadablePhotoException.class)
        .hasMessage("fog.png is grey: it holds no colours to mix. Choose a photo in colour.");
  }

  @Test
  void aTextIsNoPhoto() throws Exception {
    Path file = Files.writeString(folder.resolve("letter.png"), "Dear aunt, the sea was grey.");
    assertThatThrownBy(() -> read(file))
        .isInstanceOf(UnreadablePhotoException.class)
        .hasMessageContaining("letter.png");
  }

  @Test
  void aMissingFileIsNamed() {
    assertThatThrownBy(() -> read(folder.resolve("gone.jpg")))
        .isInstanceOf(UnreadablePhotoException.class)
        .hasMessageContaining("gone.jpg");
  }

  private static Photo read(Path file) throws UnreadablePhotoException {
    return new PhotoFile().read(file, share -> {}, () -> false);
  }

  /** Red grows to the right, green downwards, by 32 a pixel, over and over. */
  private Path write(String name, int width, int height) throws Exception {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        image.setRGB(x, y, (32 * x & 255) << 16 | (32 * y & 255) << 8);
      }
    }
    Path file = folder.resolve(name);
    ImageIO.write(image, "png", file.toFile());
    return file;
  }
}
