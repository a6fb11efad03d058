package org.panwright.words;

import java.util.List;
import java.util.Locale;
import org.panwright.swatch.MixErrors;

/** What the comparison of predicted with measured mixes says. */
public final class MixCheckWords {
  private MixCheckWords() {}

  /** A word that is no option. */
  public static String tooManyWords(String word) {
    return "mixcheck takes only options, not “%s”; mixcheck --help lists them.".formatted(word);
  }

  /** A value of --from that is neither of the two. */
  public static String unknownSource(String value) {
    return "--from is spectra or colour, not “%s”.".formatted(value);
  }

  /** There is no such file. */
  public static String noFile(String file) {
    return "There is no file %s. Check the name.".formatted(file);
  }

  /** The file cannot be read as text. */
  public static String unreadable(String file) {
    return "%s cannot be read as text. Export the readings as a text file in UTF-8."
        .formatted(file);
  }

  /** The file is larger than any table of readings. */
  public static String tooLarge(String file, long megabytes) {
    return "%s is larger than %d MB, which no table of swatches is. Check the file."
        .formatted(file, megabytes);
  }

  /** The test has no mixes. */
  public static String nothingToTest(String file) {
    return file + " holds no painted coat to predict.";
  }

  /** A paint of the test that was not fitted. */
  public static String paintNotFitted(String test, String sample, String paint, String fit) {
    return "%s: the coat %s holds %s, of which %s has no coat. Add its coats or leave this one out."
        .formatted(test, sample, paint, fit);
  }

  /** Coats of the test that cannot be predicted, while others can. */
  public static String leftOut(String test, int coats, String fit, List<String> paints) {
    return "%s: %s left out, as %s has no coat of %s."
        .formatted(test, coats == 1 ? "1 coat" : coats + " coats", fit, String.join(", ", paints));
  }

  /** The summary for reading. */
  public static String summary(MixErrors law, MixErrors average) {
    return """
    Mixes predicted: %d
    %s
    %s\
    """
        .formatted(law.n(), line("Panwright", law), line("Averaging sRGB", average));
  }

  private static String line(String name, MixErrors errors) {
    return String.format(
        Locale.ROOT,
        "%-15s CIEDE2000 median %.2f, nine tenths below %.2f, largest %.2f; ΔE*ab below 5: %.0f %%",
        name,
        errors.median(),
        errors.p90(),
        errors.max(),
        100 * errors.shareUnder5());
  }
}
