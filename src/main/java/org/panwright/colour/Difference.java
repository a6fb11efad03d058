package org.panwright.colour;

/** Distances between two CIELAB colours seen under the same light. */
public final class Difference {
  private static final double POW_25_7 = 6103515625.0;

  private Difference() {}

  /** ΔE*ab of 1976: the straight distance in CIELAB (CIE 015). */
  public static double ab(Lab first, Lab second) {
    double dl = first.l() - second.l();
    double da = first.a() - second.a();
    double db = first.b() - second.b();
    return Math.sqrt(dl * dl + da * da + db * db);
  }

  /**
   * ΔE00, the CIEDE2000 difference with kL = kC = kH = 1 (ISO/CIE 11664-6; written from Sharma, Wu
   * and Dalal, Color Research and Application 30, 2005, whose symbols it keeps).
   *
   * <pre>
   * ΔE00² = (ΔL'/SL)² + (ΔC'/SC)² + (ΔH'/SH)² + RT (ΔC'/SC)(ΔH'/SH)
   * </pre>
   *
   * <p>Meant for differences up to about 5; above 10 it only ranks. It has small discontinuities
   * where hues lie opposite each other. Sharma's pair 1 gives 2.0425.
   */
  public static double ciede2000(Lab first, Lab second) {
    double meanC = (first.chroma() + second.chroma()) / 2;
    double meanC7 = Math.pow(meanC, 7);
    double g = 0.5 * (1 - Math.sqrt(meanC7 / (meanC7 + POW_25_7)));
    double a1 = (1 + g) * first.a();
    double a2 = (1 + g) * second.a();
    double c1 = Math.hypot(a1, first.b());
    double c2 = Math.hypot(a2, second.b());
    double h1 = Hue.degrees(first.b(), a1);
    double h2 = Hue.degrees(second.b(), a2);

    double dL = second.l() - first.l();
    double dC = c2 - c1;
    double dh = hueStep(c1 * c2, h1, h2);
    double dH = 2 * Math.sqrt(c1 * c2) * Math.sin(Math.toRadians(dh) / 2);

    double l = (first.l() + second.l()) / 2;
    double c = (c1 + c2) / 2;
    double h = meanHue(c1 * c2, h1, h2);
    double t =
        1
            - 0.17 * cosDeg(h - 30)
            + 0.24 * cosDeg(2 * h)
            + 0.32 * cosDeg(3 * h + 6)
            - 0.20 * cosDeg(4 * h - 63);
    double l50 = (l - 50) * (l - 50);
    double sL = 1 + 0.015 * l50 / Math.sqrt(20 + l50);
    double sC = 1 + 0.045 * c;
    double sH = 1 + 0.015 * c * t;
    double c7 = Math.pow(c, 7);
    double blueness = (h - 275) / 25;
    double rotation = 30 * Math.exp(-blueness * blueness);
    double rT = -2 * Math.sqrt(c7 / (c7 + POW_25_7)) * Math.sin(Math.toRadians(2 * rotation));
    double lightness = dL / sL;
    double chroma = dC / sC;
    double hue = dH / sH;
    return Math.sqrt(
        Math.max(0, lightness * lightness + chroma * chroma + hue * hue + rT * chroma * hue));
  }

  /** Δh' of equation 10: the signed short way, 0 if either colour is neutral. */
  private static double hueStep(double chromaProduct, double h1, double h2) {
    double step = h2 - h1;
    if (chromaProduct == 0) {
      return 0;
    }
    if (step > 180) {
      return step - 360;
    }
    return step < -180 ? step + 360 : step;
  }

  /** The mean hue of equation 14. */
  private static double meanHue(double chromaProduct, double h1, double h2) {
    double sum = h1 + h2;
    if (chromaProduct == 0) {
      return sum;
    }
    if (Math.abs(h1 - h2) <= 180) {
      return sum / 2;
    }
    return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
  }

  private static double cosDeg(double degrees) {
    return Math.cos(Math.toRadians(degrees));
  }
}
