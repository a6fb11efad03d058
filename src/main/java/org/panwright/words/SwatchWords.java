package org.panwright.words;

import java.util.Locale;
import java.util.Optional;
import org.panwright.mixing.Surface;
import org.panwright.swatch.fit.FitRefusal;
import org.panwright.swatch.kept.PaintFitReport;
import org.panwright.swatch.table.TableFault;

/** What is said about swatches and the files their readings come in. */
public final class SwatchWords {
  /**
   * From here a full-strength coat throws back a tenth less than paper: about 1 L* in the darks.
   */
  private static final double NOTABLE_GLOSS = 0.1;

  private SwatchWords() {}

  /** What is wrong with a file of readings, and what to do. */
  public static String sentence(String file, TableFault fault) {
    if (fault instanceof TableFault.NoTable) {
      return file + " holds no table of readings. Choose a file with one row for each coat.";
    }
    if (fault instanceof TableFault.NoColumn none) {
      return "%s has no column “%s”. Add it to the line that names the columns."
          .formatted(file, none.column());
    }
    if (fault instanceof TableFault.ColumnTwice twice) {
      return "%s has the column “%s” twice. Remove or rename one of them."
          .formatted(file, twice.column());
    }
    if (fault instanceof TableFault.WrongCellCount wrong) {
      return "%s, line %d: %d cells where there are %d columns. Fill in what is missing."
          .formatted(file, wrong.line(), wrong.found(), wrong.expected());
    }
    if (fault instanceof TableFault.EmptyCell empty) {
      return "%s, line %d, column %s: the cell is empty. Fill it in or leave the row out."
          .formatted(file, empty.line(), empty.column());
    }
    if (fault instanceof TableFault.NotANumber not) {
      return "%s, line %d, column %s: “%s” is no number. Correct it or leave the row out."
          .formatted(file, not.line(), not.column(), not.found());
    }
    if (fault instanceof TableFault.OutOfRange out) {
      return "%s, line %d, column %s: %s is %s. Correct it or leave the row out."
          .formatted(file, out.line(), out.column(), number(out.found()), range(out));
    }
    if (fault instanceof TableFault.NoReadings) {
      return file
          + " has neither reflectances (columns such as R380, R390 …, or a line for each"
          + " wavelength) nor the columns LAB_L, LAB_A, LAB_B, nor XYZ_X, XYZ_Y, XYZ_Z. Export the"
          + " readings with one of them.";
    }
    if (fault instanceof TableFault.BandsMissing missing) {
      return "%s covers %s–%s nm. Readings from 400 to 700 nm are needed: export the whole range."
          .formatted(file, number(missing.firstNm()), number(missing.lastNm()));
    }
    if (fault instanceof TableFault.BandsTooWide wide) {
      return "%s has nothing between %s and %s nm. Export the readings in steps of 20 nm or less."
          .formatted(file, number(wide.fromNm()), number(wide.toNm()));
    }
    if (fault instanceof TableFault.BandsOutOfOrder order) {
      return "%s: the column %s does not follow in wavelength. Put the wavelengths in rising or falling order."
          .formatted(file, order.column());
    }
    if (fault instanceof TableFault.LineOutOfOrder order) {
      return "%s, line %d: %s does not follow in wavelength. Put the wavelengths in rising or falling order."
          .formatted(file, order.line(), order.found());
    }
    if (fault instanceof TableFault.NoPaper) {
      return file
          + " has no row of bare paper. Add a row with a sample name and readings but no paint.";
    }
    if (fault instanceof TableFault.PaperTwice twice) {
      return "%s, line %d: a second row without a paint. Only the bare paper has none; name the paint."
          .formatted(file, twice.line());
    }
    if (fault instanceof TableFault.PaintTwice twice) {
      return "%s, line %d: the paint “%s” is named twice. Add its amounts into one."
          .formatted(file, twice.line(), twice.paint());
    }
    if (fault instanceof TableFault.AmountWithoutPaint amount) {
      return "%s, line %d, column %s: an amount without a paint. Name the paint or empty the cell."
          .formatted(file, amount.line(), amount.column());
    }
    if (fault instanceof TableFault.NotText) {
      return file + " is no text. Choose a table saved as text, with the ending .csv.";
    }
    if (fault instanceof TableFault.CutShort cut) {
      return "%s ends at line %d within its table. Export it again.".formatted(file, cut.line());
    }
    if (fault instanceof TableFault.CountWrong count) {
      return "%s, line %d: %s says %s, but there are %d. Something was lost or added; export it again."
          .formatted(file, count.line(), count.keyword(), count.said(), count.found());
    }
    throw new IllegalArgumentException("no words for " + fault);
  }

  /** Why swatches cannot be turned into a paint's colours, and what to do. */
  public static String sentence(String file, FitRefusal refusal) {
    if (refusal instanceof FitRefusal.NoSwatches) {
      return file + " holds no painted coat, only paper. Add the readings of the coats.";
    }
    if (refusal instanceof FitRefusal.AllAlike) {
      return file + ": all coats have the same colour. Check that different patches were read.";
    }
    if (refusal instanceof FitRefusal.NoMark mark) {
      return "%s: the coats of %s look like the paper beneath. Read them again, or paint them stronger."
          .formatted(file, mark.paint());
    }
    if (refusal instanceof FitRefusal.NoPaper paper) {
      return "%s: the bare paper is dark (L* %s). Swatches must lie on white paper; check the row without a paint."
          .formatted(file, number(paper.lightest()));
    }
    if (refusal instanceof FitRefusal.LoadsOutOfScale loads) {
      return "%s: the amounts of paint (about %s) are out of scale. Give them in millilitres, or as parts of a full coat."
          .formatted(file, number(loads.usual()));
    }
    if (refusal instanceof FitRefusal.LighterThanGround lighter) {
      return "%s: the coat %s is lighter than the bare paper beside it. Read both again."
          .formatted(file, lighter.name());
    }
    throw new IllegalArgumentException("no words for " + refusal);
  }

  /** What a fit did about its darkest coats; empty if nothing of note had to be done. */
  public static Optional<String> darks(PaintFitReport report) {
    boolean shiny = report.gloss() >= NOTABLE_GLOSS;
    if (!shiny && report.tooDark().isEmpty()) {
      return Optional.empty();
    }
    String sheen =
        !shiny
            ? ""
            : String.format(
                Locale.ROOT,
                "The darkest swatch is as dark as a matt coat can be (L* %.1f) or darker, so the"
                    + " paints are taken to dry with a sheen: the face of a full-strength coat"
                    + " throws back %.1f %% of the light, not %.0f %%.",
                Surface.DRY.darkestL(),
                100 * Surface.DRY.smoothed(report.gloss()).seen(),
                100 * Surface.DRY.seen());
    int dark = report.tooDark().size();
    String leftOut =
        dark == 0
            ? ""
            : (dark == 1 ? "1 swatch is" : dark + " swatches are")
                + " darker than any dry coat can be and left out; kept as read. A picture cut off"
                + " in the darks does that: read it again, exposed a little longer.";
    return Optional.of((sheen + " " + leftOut).strip());
  }

  private static String range(TableFault.OutOfRange out) {
    if (out.found() < out.low() || Double.isInfinite(out.high())) {
      return out.low() == 0 && Double.isInfinite(out.high())
          ? "not above 0"
          : "below " + number(out.low());
    }
    return "above " + number(out.high());
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.4g", value)
        .replaceFirst("(\\.\\d*?)0+($|e)", "$1$2")
        .replaceFirst("\\.($|e)", "$1");
  }
}
