package org.panwright.words;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.panwright.swatch.check.MixErrors;
import org.panwright.swatch.check.OddCoat;
import org.panwright.swatch.check.PaintResiduals;

/** What the comparison of predicted with measured mixes says. */
public final class MixCheckWords {
  private static final int LONGEST_NAME = 40;

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

  /** A paint whose name is written in several ways, the one it goes by first. */
  public static String onePaint(List<String> ways) {
    return "%s count as one paint, “%s”. If they are two, give them different names."
        .formatted(
            ways.stream().map(way -> "“" + way + "”").collect(Collectors.joining(" and ")),
            ways.get(0));
  }

  /** Coats to fit without an amount; of all coats or of some. */
  public static String unmeasured(String fit, int coats, boolean all) {
    return all
        ? "%s: no coat has an amount. Each is begun as 1, a usual coat; the amounts of the test count in those."
            .formatted(fit)
        : "%s: %s no amount. Each is begun as a usual coat, and its amount is fitted."
            .formatted(fit, coats == 1 ? "1 coat has" : coats + " coats have");
  }

  /** Coats to predict without an amount. */
  public static String untestedAmounts(String test, int coats) {
    return "%s: %s no amount and %s predicted as a usual coat of each paint."
        .formatted(
            test, coats == 1 ? "1 coat has" : coats + " coats have", coats == 1 ? "is" : "are");
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

  /** The mixes that are off most. */
  public static String farthest(String test, List<String> mixes) {
    return "Farthest off in %s: %s.".formatted(test, String.join(", ", mixes));
  }

  /** One of them. */
  public static String far(String sample, double ciede2000) {
    return String.format(Locale.ROOT, "%s %.1f", sample, ciede2000);
  }

  /** How well the coats of each paint fit together. */
  public static String fitted(String fit, List<PaintResiduals> paints) {
    int width = paints.stream().mapToInt(p -> p.paint().length()).max().orElse(0);
    String head = "The coats of %s beside the fit, CIEDE2000:\n".formatted(fit);
    return head
        + paints.stream()
            .map(paint -> "  " + fitted(paint, Math.min(width, LONGEST_NAME)))
            .collect(Collectors.joining("\n"));
  }

  private static String fitted(PaintResiduals paint, int width) {
    return String.format(
        Locale.ROOT,
        "%-" + width + "s  %s, median %.1f, largest %.1f (%s); to expect of other coats: %.1f",
        paint.paint(),
        paint.coats() == 1 ? "1 coat" : paint.coats() + " coats",
        paint.median(),
        paint.farthest().ciede2000(),
        paint.farthest().swatch().name(),
        paint.expectedError());
  }

  /** The coat that disagrees with the others. */
  public static String odd(OddCoat odd) {
    return String.format(
        Locale.ROOT,
        "Look at this coat again: %s. The others foretell another colour (CIEDE2000 %.0f away). It"
            + " may hold another paint or another amount than noted, be soiled, or be read at the"
            + " wrong place.",
        odd.swatch().name(),
        odd.foretold());
  }

  /** No coat does. */
  public static String noneOdd(String fit) {
    return "No coat of %s disagrees with the rest.".formatted(fit);
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
