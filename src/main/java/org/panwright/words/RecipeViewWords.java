package org.panwright.words;

import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.colour.Oklch;

/** What is said around recipes for a colour. */
public final class RecipeViewWords {
  public static final String TITLE = "How to mix it";
  public static final String MENU = "Mix a colour…";
  public static final String BACK = "Back to findings";
  public static final String CLOSE = "Close";
  public static final String OTHER_WAYS = "Other ways to this colour";
  public static final String MIX_IT = "Mix its colour from the box";
  public static final String TYPED = "The colour typed in";
  public static final String GREY = "A middle grey; type a colour or click one";
  public static final String TYPE = "Colour";
  public static final String TYPE_PROMPT = "#8fa3b0, or L* a* b*";
  public static final String NO_COLOUR =
      "Type six hexadecimal digits like #8fa3b0, or L*, a* and b* like 66 -4 -9 (L* from 0 to"
          + " 100).";
  public static final String FROM_BOX = "From this box";
  public static final String FROM_SHELF = "Nearer with what is on your shelf";
  public static final String NOTHING = "There is no paint in this box to mix it from.";
  public static final String MARK = "Mark in the box";
  public static final String UNMARK = "Take the marks away";
  public static final String TARGET = "wanted";
  public static final String MIX = "mixed";

  private RecipeViewWords() {}

  /** How far to trust the recipes. */
  public static String expect(double error) {
    return "Nearness is as predicted; the mix on paper may be off by about ±%.0f. Try the first two before you rely on one."
        .formatted(error);
  }

  /** The colour of a paint that is to be mixed. */
  public static String creamOf(String paint) {
    return WordParts.shortened(paint) + ", a cream wash";
  }

  /** A place of the hue circle. */
  public static String hue(Oklch colour) {
    return WordParts.sentence(ColourWords.describe(colour)).replaceAll("\\.$", "");
  }

  /** A colour in words and figures. */
  public static String figures(Lab lab) {
    Oklch oklch = Oklab.ofD65(lab.toXyz(Light.D65.white())).toOklch();
    return "%s · L* %.0f  a* %.0f  b* %.0f"
        .formatted(ColourWords.describe(oklch), lab.l(), lab.a(), lab.b());
  }
}
