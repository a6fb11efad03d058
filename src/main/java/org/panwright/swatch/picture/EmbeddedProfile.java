package org.panwright.swatch.picture;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.color.ICC_ProfileRGB;
import java.util.function.DoubleUnaryOperator;
import org.panwright.colour.LinearSrgb;

/** An ICC profile found in a picture. */
final class EmbeddedProfile {
  private static final int[] CURVES = {
    ICC_Profile.icSigRedTRCTag, ICC_Profile.icSigGreenTRCTag, ICC_Profile.icSigBlueTRCTag
  };

  private EmbeddedProfile() {}

  /**
   * What the file's samples stand for.
   *
   * @param profile the profile's bytes; none means sRGB
   * @throws PictureFaultException if the profile is broken or not for red, green and blue
   */
  static FileColours colours(byte[] profile) throws PictureFaultException {
    if (profile.length == 0) {
      return CurvedColours.SRGB;
    }
    try {
      ICC_Profile icc = ICC_Profile.getInstance(profile);
      if (icc.getColorSpaceType() == ColorSpace.TYPE_CMYK) {
        throw new PictureFaultException(new PictureFault.Cmyk());
      }
      if (icc.getColorSpaceType() == ColorSpace.TYPE_GRAY) {
        throw new PictureFaultException(new PictureFault.Grey());
      }
      if (icc.getColorSpaceType() != ColorSpace.TYPE_RGB) {
        throw new PictureFaultException(new PictureFault.Broken());
      }
      return icc instanceof ICC_ProfileRGB rgb
          ? curved(rgb)
          : new TabledColours(new ICC_ColorSpace(icc));
    } catch (IllegalArgumentException | java.awt.color.CMMException broken) {
      throw new PictureFaultException(new PictureFault.Broken());
    }
  }

  private static FileColours curved(ICC_ProfileRGB profile) {
    DoubleUnaryOperator[] curves = new DoubleUnaryOperator[3];
    float[][] toPcs = profile.getMatrix();
    double[][] matrix = new double[3][3];
    for (int c = 0; c < 3; c++) {
      curves[c] = ToneCurve.read(profile.getData(CURVES[c]));
      LinearSrgb primary = TabledColours.ofPcs(new float[] {toPcs[0][c], toPcs[1][c], toPcs[2][c]});
      matrix[0][c] = primary.red();
      matrix[1][c] = primary.green();
      matrix[2][c] = primary.blue();
    }
    return new CurvedColours(curves, matrix);
  }
}
