package org.panwright.app.fx;

import java.util.regex.Pattern;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Labels that hold whole sentences. */
public final class Sentence {
  private static final String NO_BREAK = "\u00a0";
  private static final Pattern BETWEEN =
      Pattern.compile("(?<=\\d) (?=(%|°|nm|mm|cm|ml|g)(?!\\p{L}))|(?<=ΔE00|L\\*|±) (?=\\d)");

  private Sentence() {}

  /** A figure stays on one line with its unit or with the sign it belongs to. */
  static String unbroken(String text) {
    return BETWEEN.matcher(text).replaceAll(NO_BREAK);
  }

  /**
   * A label that wraps and keeps the height its lines need, however little room there is.
   *
   * @param styles its style classes
   */
  public static Label of(String text, String... styles) {
    Label label = new Label(unbroken(text));
    label.getStyleClass().addAll(styles);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }

  /**
   * Such a label that takes no room while it says nothing.
   *
   * @param styles its style classes
   */
  public static Label whileSaid(String... styles) {
    Label label = of("", styles);
    label.visibleProperty().bind(label.textProperty().isNotEmpty());
    label.managedProperty().bind(label.visibleProperty());
    return label;
  }
}
