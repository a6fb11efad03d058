package org.panwright.bench;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.PictureFaultException;
import org.panwright.swatch.picture.PictureFile;

/**
 * Measures the memory that reading a large picture takes: writes pictures of 100 megapixels with
 * the grain of a photo, then reads each in a process of its own with a heap of 200 MB and prints
 * what that process held at most, its heap and all of it (Linux: VmHWM of /proc/self/status).
 *
 * <p>Run with {@code -Xmx1200m} and a folder with 1 GB free.
 */
public final class PictureMemory {
  private static final int WIDTH = 12_000;
  private static final int HEIGHT = 8_333;
  private static final String HEAP = "-Xmx200m";

  private PictureMemory() {}

  /** A folder for the pictures; or {@code read} and a file, in the process measured. */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    if (arguments.length == 2) {
      read(Path.of(arguments[1]));
      return;
    }
    Path folder = Path.of(arguments[0]);
    List<Path> files = new ArrayList<>();
    BufferedImage image = grain();
    files.add(jpeg(image, folder.resolve("baseline-90.jpg"), 0.9f, false));
    files.add(jpeg(image, folder.resolve("progressive-90.jpg"), 0.9f, true));
    files.add(jpeg(image, folder.resolve("baseline-100.jpg"), 1, false));
    files.add(folder.resolve("plain.png"));
    ImageIO.write(image, "png", files.get(3).toFile());
    for (Path file : files) {
      inItsOwnProcess(file);
    }
  }

  private static void inItsOwnProcess(Path file) throws IOException, InterruptedException {
    List<String> command =
        List.of(
            ProcessHandle.current().info().command().orElse("java"),
            HEAP,
            "-cp",
            System.getProperty("java.class.path"),
            PictureMemory.class.getName(),
            "read",
            file.toString());
    new ProcessBuilder(command).inheritIO().start().waitFor();
  }

  private static void read(Path file) throws IOException {
    String outcome;
    long start = System.nanoTime();
    try {
      Picture picture = PictureFile.read(file, share -> {}, () -> false);
      outcome = "%d x %d kept".formatted(picture.width(), picture.height());
    } catch (PictureFaultException refused) {
      outcome = refused.fault().toString();
    }
    System.out.printf(
        "%-22s %5d MB  %5.1f s  heap used after %4d MB  process at most %5d MB  %s%n",
        file.getFileName(),
        Files.size(file) >> 20,
        (System.nanoTime() - start) / 1e9,
        (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) >> 20,
        mostResident(),
        outcome);
  }

  private static long mostResident() throws IOException {
    return Files.readAllLines(Path.of("/proc/self/status")).stream()
        .filter(line -> line.startsWith("VmHWM"))
        .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) >> 10)
        .findFirst()
        .orElse(-1);
  }

  /** Slow changes with noise of a few steps upon them, as a photo of paper has. */
  private static BufferedImage grain() {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
    byte[] samples = ((java.awt.image.DataBufferByte) image.getRaster().getDataBuffer()).getData();
    Random random = new Random(7);
    byte[] noise = new byte[1 << 20];
    random.nextBytes(noise);
    for (int i = 0; i < samples.length; i++) {
      int slow = 120 + (i / 3 % WIDTH) / 120;
      samples[i] = (byte) (slow + noise[(i * 31 + i / 977) & (noise.length - 1)] % 8);
    }
    return image;
  }

  private static Path jpeg(BufferedImage image, Path file, float quality, boolean progressive)
      throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ImageWriteParam param = writer.getDefaultWriteParam();
    param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    param.setCompressionQuality(quality);
    param.setProgressiveMode(
        progressive ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
    Files.deleteIfExists(file);
    try (ImageOutputStream out = ImageIO.createImageOutputStream(new File(file.toString()))) {
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), param);
    } finally {
      writer.dispose();
    }
    return file;
  }
}
