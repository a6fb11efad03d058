package org.panwright.words;

import java.util.List;
import java.util.Locale;
import org.panwright.colour.Lab;
import org.panwright.colour.Oklch;
import org.panwright.mixing.Ratio;
import org.panwright.mixing.Trust;

/** What the view of one mix says. */
public final class MixWords {
  public static final String BACK = "Back to findings";
  public static final String DRY = "dry";
  public static final String WET = "wet";
  public static final String RATIOS = "Strength parts";
  public static final String WASHES = "Wash";
  public static final String RECIPE = "Recipe";
  public static final String REFLECTANCE = "Reflectance, dry";

  private MixWords() {}

  /** The heading of a pair. */
  public static String pair(String first, String second) {
    return first + " with " + second;
  }

  /** A ratio as painters write it. */
  public static String ratio(int first, int second) {
    return first + ":" + second;
  }

  /** How a mix looks whose colour the screen cannot show. */
  public static String beyondScreen(String look) {
    return look + " (purer than the screen can show)";
  }

  /** How a paint alone is laid. */
  public static String alone(String wash) {
    return "One paint, " + wash + ".";
  }

  /**
   * The recipe in strength parts and in volume of paint.
   *
   * @param firstVolume the first paint's share by volume, 0..1
   */
  public static String recipe(
      String first, String second, Ratio ratio, double firstVolume, String wash) {
    return "%d %s %s to %d %s by strength, %s. By volume of tube paint: %s."
        .formatted(
            ratio.first(),
            ratio.first() == 1 ? "part" : "parts",
            first,
            ratio.second(),
            second,
            wash,
            volumes(first, second, firstVolume));
  }

  /** The smaller share as 1, the larger to a sensible figure. */
  private static String volumes(String first, String second, double firstVolume) {
    double secondVolume = 1 - firstVolume;
    return firstVolume >= secondVolume
        ? "%s %s to 1 %s".formatted(figure(firstVolume / secondVolume), first, second)
        : "1 %s to %s %s".formatted(first, figure(secondVolume / firstVolume), second);
  }

  private static String figure(double ratio) {
    if (ratio >= 9.95) {
      return "%.0f".formatted(ratio);
    }
    String text = "%.1f".formatted(ratio);
    return text.endsWith("0") ? text.substring(0, text.length() - 2) : text;
  }

  /** The colour in figures. */
  public static String figures(Lab lab, Oklch oklch) {
    return String.format(
        Locale.ROOT,
        "L* %.0f  a* %.0f  b* %.0f   chroma %.2f, hue %.0f° (dry, D65)",
        lab.l() + 0.0,
        Math.rint(lab.a()) + 0.0,
        Math.rint(lab.b()) + 0.0,
        oklch.c(),
        oklch.hueDeg());
  }

  /** How far the colour can be trusted. */
  public static String trust(double expectedError, List<String> sources) {
    return "%s. Expect it to be off by about %.0f (ΔE00); under 3 looks the same, over 10 clearly different."
        .formatted(capital(String.join(" and ", sources)), expectedError);
  }

  /** The same as short as a list wants it, for example "est. ±9". */
  public static String badge(Trust trust) {
    return ShelfWords.badge(trust.source(), trust.error());
  }

  /** How a mix looks and how far to trust that, for example "dull green, est. ±9". */
  public static String looks(String looks, Trust trust) {
    return looks + ", " + badge(trust);
  }

  private static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
