package org.panwright.swatch.picture;

import java.awt.image.ColorModel;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;

/** The samples of decoded pixels on one scale, laid on white where they are not opaque. */
final class Samples {
  static final int FULL = 65535;

  private final Raster raster;
  private final ColorModel model;
  private final int[] raw;
  private final double[] toFull;

  Samples(Raster raster, ColorModel model) {
    this.raster = raster;
    this.model = model;
    raw = new int[raster.getNumBands()];
    toFull = new double[raster.getNumBands()];
    for (int band = 0; band < toFull.length; band++) {
      toFull[band] = FULL / (Math.pow(2, raster.getSampleModel().getSampleSize(band)) - 1);
    }
  }

  /** Fills in red, green, blue and opacity, 0..65535. */
  void at(int x, int y, int[] pixel) {
    raster.getPixel(x, y, raw);
    pixel[3] = FULL;
    if (model instanceof IndexColorModel palette) {
      pixel[0] = palette.getRed(raw[0]) * 257;
      pixel[1] = palette.getGreen(raw[0]) * 257;
      pixel[2] = palette.getBlue(raw[0]) * 257;
      pixel[3] = palette.getAlpha(raw[0]) * 257;
    } else {
      for (int band = 0; band < raw.length; band++) {
        pixel[band] = (int) Math.round(raw[band] * toFull[band]);
      }
    }
    if (pixel[3] < FULL) {
      for (int c = 0; c < 3; c++) {
        pixel[c] = FULL - (int) Math.round((double) (FULL - pixel[c]) * pixel[3] / FULL);
      }
    }
  }
}
