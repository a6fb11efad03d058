package org.panwright.swatch.picture;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Iterator;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.event.IIOReadProgressListener;
import javax.imageio.stream.ImageInputStream;

/** Decodes the pixels of a picture whose header was found good. */
final class Decoder {
  private Decoder() {}

  static Picture decode(
      PictureHeader header, ImageInputStream in, DoubleConsumer progress, BooleanSupplier stopped)
      throws IOException, PictureFaultException {
    Iterator<ImageReader> readers =
        ImageIO.getImageReadersByFormatName(header.jpeg() ? "jpeg" : "png");
    ImageReader reader = readers.next();
    int step =
        (int)
            Math.ceil(
                Math.sqrt((double) header.width() * header.height() / PictureFile.KEPT_PIXELS));
    try (in) {
      reader.setInput(in, true, true);
      reader.addIIOReadProgressListener(new Watch(progress, stopped));
      ImageReadParam param = reader.getDefaultReadParam();
      param.setSourceSubsampling(step, step, 0, 0);
      BufferedImage image = reader.read(0, param);
      if (stopped.getAsBoolean()) {
        throw new CancellationException();
      }
      if (image.getRaster().getNumBands() < 3
          && image.getColorModel().getNumColorComponents() < 3) {
        throw new PictureFaultException(new PictureFault.Grey());
      }
      return PictureFile.picture(header, image, step);
    } catch (IIOException | IllegalArgumentException | IndexOutOfBoundsException broken) {
      throw new PictureFaultException(new PictureFault.Broken());
    } finally {
      reader.dispose();
    }
  }

  private record Watch(DoubleConsumer progress, BooleanSupplier stopped)
      implements IIOReadProgressListener {
    @Override
    public void imageProgress(ImageReader source, float percentageDone) {
      progress.accept(percentageDone / 100.0);
      if (stopped.getAsBoolean()) {
        source.abort();
      }
    }

    @Override
    public void sequenceStarted(ImageReader source, int minIndex) {}

    @Override
    public void sequenceComplete(ImageReader source) {}

    @Override
    public void imageStarted(ImageReader source, int imageIndex) {}

    @Override
    public void imageComplete(ImageReader source) {}

    @Override
    public void thumbnailStarted(ImageReader source, int imageIndex, int thumbnailIndex) {}

    @Override
    public void thumbnailProgress(ImageReader source, float percentageDone) {}

    @Override
    public void thumbnailComplete(ImageReader source) {}

    @Override
    public void readAborted(ImageReader source) {}
  }
}
