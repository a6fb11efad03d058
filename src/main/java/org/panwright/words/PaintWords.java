package org.panwright.words;

import org.panwright.paint.Granulation;
import org.panwright.paint.HueFamily;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Ownership;
import org.panwright.paint.Staining;
import org.panwright.paint.Transparency;
import org.panwright.paint.Wash;

/**
 * Labels for the properties of paints, and short marks for cards and lists.
 *
 * <p>A mark is one to three letters; it stands in for the label where there is no room and is
 * explained by the legend. Properties with nothing to say have an empty mark.
 */
public final class PaintWords {
  /** Explains the marks in one line. */
  public static final String LEGEND =
      "T transparent, ST semi-transparent, SO semi-opaque, O opaque; "
          + "S0–S3 staining from none to high; g, G granulates a little, strongly; "
          + "I–V lightfastness, I best, – not rated";

  /** Twice the error of an estimate from pigment names: no longer of the same kind. */
  private static final double ANOTHER = 18;

  private PaintWords() {}

  /** For example "semi-transparent". */
  public static String label(Transparency transparency) {
    return switch (transparency) {
      case TRANSPARENT -> "transparent";
      case SEMI_TRANSPARENT -> "semi-transparent";
      case SEMI_OPAQUE -> "semi-opaque";
      case OPAQUE -> "opaque";
    };
  }

  /** T, ST, SO or O. */
  public static String mark(Transparency transparency) {
    return switch (transparency) {
      case TRANSPARENT -> "T";
      case SEMI_TRANSPARENT -> "ST";
      case SEMI_OPAQUE -> "SO";
      case OPAQUE -> "O";
    };
  }

  /** For example "strongly staining". */
  public static String label(Staining staining) {
    return switch (staining) {
      case NONE -> "lifts clean";
      case LOW -> "slightly staining";
      case MEDIUM -> "staining";
      case HIGH -> "strongly staining";
    };
  }

  /** S0 to S3. */
  public static String mark(Staining staining) {
    return "S" + staining.ordinal();
  }

  /** For example "granulating". */
  public static String label(Granulation granulation) {
    return switch (granulation) {
      case NONE -> "even";
      case SLIGHT -> "slightly granulating";
      case STRONG -> "granulating";
    };
  }

  /** Empty, g or G. */
  public static String mark(Granulation granulation) {
    return switch (granulation) {
      case NONE -> "";
      case SLIGHT -> "g";
      case STRONG -> "G";
    };
  }

  /** For example "lightfastness II, very good". */
  public static String label(Lightfastness lightfastness) {
    return switch (lightfastness) {
      case I -> "lightfastness I, excellent";
      case II -> "lightfastness II, very good";
      case III -> "lightfastness III, fair: fades in daylight";
      case IV -> "lightfastness IV, poor: fades quickly";
      case V -> "lightfastness V, very poor: fades at once";
      case UNRATED -> "lightfastness not rated";
    };
  }

  /** I to V, or a dash where there is no rating. */
  public static String mark(Lightfastness lightfastness) {
    return lightfastness == Lightfastness.UNRATED ? "–" : lightfastness.name();
  }

  /** For example "earth yellow". */
  public static String label(HueFamily family) {
    return switch (family) {
      case YELLOW -> "yellow";
      case ORANGE -> "orange";
      case RED -> "red";
      case ROSE -> "rose";
      case VIOLET -> "violet";
      case BLUE -> "blue";
      case TURQUOISE -> "turquoise";
      case GREEN -> "green";
      case YELLOW_GREEN -> "yellow green";
      case EARTH_YELLOW -> "yellow earth";
      case EARTH_ORANGE -> "orange earth";
      case EARTH_RED -> "red earth";
      case BROWN -> "brown";
      case BLACK -> "black";
      case GREY -> "grey";
      case WHITE -> "white";
    };
  }

  /** For example "milk". */
  public static String label(Wash wash) {
    return switch (wash) {
      case BUTTER -> "butter";
      case CREAM -> "cream";
      case MILK -> "milk";
      case COFFEE -> "coffee";
      case TEA -> "tea";
    };
  }

  /** What a wash is, for example "milk: runs freely, a middle wash". */
  public static String explain(Wash wash) {
    return switch (wash) {
      case BUTTER -> "butter: straight from the pan, hardly any water";
      case CREAM -> "cream: thick, moves slowly";
      case MILK -> "milk: runs freely, a middle wash";
      case COFFEE -> "coffee: a light wash";
      case TEA -> "tea: a faint wash";
    };
  }

  /** The badge that says where a paint's colour comes from. */
  public static String badge(OpticsSource source) {
    return switch (source) {
      case SPECTRA -> "measured";
      case SWATCHES -> "your swatches";
      case PIGMENTS -> "estimate";
    };
  }

  /**
   * The badge in a sentence with the error to expect.
   *
   * @param expectedError CIEDE2000
   */
  public static String explain(OpticsSource source, double expectedError) {
    String from =
        switch (source) {
          case SPECTRA -> "From measured spectra";
          case SWATCHES -> "Read from your own swatches";
          case PIGMENTS -> "Estimated from its pigment names, not from your tube";
        };
    return from + ". Expect " + error(expectedError) + ".";
  }

  /** An expected error in the painter's terms, for example "a colour near it (ΔE00 about 5)". */
  public static String error(double expectedError) {
    String near =
        expectedError < 3
            ? "the same colour to the eye"
            : expectedError < 6
                ? "a colour near it"
                : expectedError < ANOTHER ? "a colour of the same kind" : "another colour";
    return "%s (ΔE00 about %.0f)".formatted(near, expectedError);
  }

  /** For example "owned". */
  public static String label(Ownership ownership) {
    return switch (ownership) {
      case OWNED -> "owned";
      case TRIED -> "tried";
      case WISHED -> "wished for";
    };
  }
}
