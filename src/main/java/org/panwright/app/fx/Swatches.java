package org.panwright.app.fx;

import javafx.scene.paint.Color;
import org.panwright.colour.GamutFit;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Srgb;

/** Colours of the engine as JavaFX paints them. */
public final class Swatches {
  private Swatches() {}

  /** The screen colour for CIELAB under D65, and whether the screen can show it. */
  public static GamutFit fit(Lab lab) {
    return GamutFit.ofXyzD65(lab.toXyz(Light.D65.white()));
  }

  /** The JavaFX colour of an sRGB colour. */
  public static Color color(Srgb srgb) {
    return Color.color(srgb.red(), srgb.green(), srgb.blue());
  }

  /** The nearest showable JavaFX colour for CIELAB under D65. */
  public static Color color(Lab lab) {
    return color(fit(lab).shown());
  }
}
