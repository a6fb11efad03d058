package org.panwright.app.fx;

import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** Text cut to a width. */
public final class Fitted {
  private static final String ELLIPSIS = "…";

  private Fitted() {}

  /**
   * The text itself if it fits, else its beginning with an ellipsis; empty if not even that fits.
   */
  public static String text(String text, Font font, double width) {
    if (width(text, font) <= width) {
      return text;
    }
    int fits = 0;
    int tooLong = text.codePointCount(0, text.length());
    while (tooLong - fits > 1) {
      int middle = (fits + tooLong) / 2;
      if (width(beginning(text, middle) + ELLIPSIS, font) <= width) {
        fits = middle;
      } else {
        tooLong = middle;
      }
    }
    return fits == 0 ? "" : beginning(text, fits).stripTrailing() + ELLIPSIS;
  }

  /** The width of a text in pixels. */
  public static double width(String text, Font font) {
    Text measured = new Text(text);
    measured.setFont(font);
    return measured.getLayoutBounds().getWidth();
  }

  private static String beginning(String text, int codePoints) {
    return text.substring(0, text.offsetByCodePoints(0, codePoints));
  }
}
