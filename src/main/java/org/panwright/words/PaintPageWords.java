package org.panwright.words;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.panwright.mixing.Surface;
import org.panwright.paint.Admixture;
import org.panwright.paint.DryingShift;
import org.panwright.paint.OpticsOrigin;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.PaintedCoat.Ground;
import org.panwright.swatch.file.ReadRow;
import org.panwright.swatch.file.ReadingField;
import org.panwright.swatch.file.ReadingMapping;
import org.panwright.swatch.file.ReadingPlan;
import org.panwright.swatch.fit.FitRefusal;
import org.panwright.swatch.kept.PaintFitReport;
import org.panwright.swatch.table.RawTable;
import org.panwright.swatch.table.TableFault;

/** What is said on the page of a paint. */
public final class PaintPageWords {
  public static final String VIEW = "Paint";
  public static final String OPEN_PAGE = "Open its page";
  public static final String CHOOSE = "Paint";
  public static final String EMPTY_SHELF =
      "No paint is on the shelf yet. Choose Shelf, New paint… to put one there.";
  public static final String SWATCHES = "Your swatches";
  public static final String NO_SWATCHES =
      "No swatch is kept yet. Paint it at full strength, as a wash and 1:1 with white, let it dry,"
          + " then read the sheet, type the colours here or load a file of an instrument.";
  public static final String SIDES = "Left as painted, right as predicted from the colours in use.";
  public static final String TYPE = "Type a swatch…";
  public static final String LOAD = "Load a file…";
  public static final String LEARN = "Learn from swatches";
  public static final String LEARNING = "Learning from the swatches…";
  public static final String REMOVE = "Remove";
  public static final String CURVES = "Reflectance";
  public static final String ABSORPTION = "Absorption K and scattering S of a full coat";
  public static final String RESIDUALS = "Difference of each swatch from its prediction, ΔE00";
  public static final String HISTORY = "Where its colour comes from";
  public static final String IN_USE = "in use";
  public static final String GO_BACK = "Go back to this";
  public static final String FULL = "full strength";
  public static final String WASH = "milk wash";
  public static final String ON_BLACK = "over black";
  public static final String WASH_ON_BLACK = "wash over black";
  public static final String TYPED_SOURCE = "typed by hand";
  public static final String TYPE_TITLE = "A swatch of this paint";
  public static final String WHAT = "What it is";
  public static final String COLOUR = "Colour";
  public static final String COLOUR_HINT = "L* a* b* such as 42 18 -50, or #2b3f8f";
  public static final String COLOUR_WRONG =
      "Type L* (0–100), a* and b* with blanks between them, or # and six digits 0–f.";
  public static final String LOAD_FIELD = "Load, if you know it";
  public static final String LOAD_HINT = "1 is full strength; 0.25 a quarter of that paint";
  public static final String LOAD_WRONG =
      "Type a number above 0 and up to 20, or nothing if you do not know.";
  public static final String KEEP = "Keep it";
  public static final String LOAD_TITLE = "Readings in this file";
  public static final String LOAD_FILE = "Load readings";
  public static final String FILE_KIND = "Files of readings (CGATS text, CSV)";
  public static final String SCALE = "Unit";
  public static final String LIGHT = "Light";
  public static final String FIRST_NM = "First, nm";
  public static final String LAST_NM = "Last, nm";
  public static final String ROWS = "What each row is";
  public static final String KEEP_READ = "Keep these";

  private static final int FIRST_ROWS = 12;
  private static final int FIRST_CELLS = 12;

  private PaintPageWords() {}

  /** The sorts of coats, in a list to choose from, by the name of the sort. */
  public static String role(String name) {
    return switch (name) {
      case "FULL" -> "full strength";
      case "WASH" -> "a wash";
      case "TINT" -> "1:1 with white";
      case "TONE" -> "1:1 with black";
      case "ON_BLACK" -> "full strength over a black line";
      case "COAT" -> "a coat of unknown strength";
      case "PAPER" -> "the bare paper";
      default -> "leave out";
    };
  }

  /** What a coat is, for example "wash over paper, scan.png". */
  public static String coat(PaintedCoat coat) {
    return coat(coat, Optional.empty());
  }

  /**
   * The same.
   *
   * @param other the name of a paint of the shelf mixed into it, if one is
   */
  private static String coat(PaintedCoat coat, Optional<String> other) {
    String strength =
        switch (coat.strength()) {
          case FULL -> "full strength";
          case WASH -> "wash";
          case UNKNOWN -> "coat";
        };
    String load =
        coat.load().isPresent()
            ? String.format(Locale.ROOT, " of load %.2g", coat.load().getAsDouble())
            : "";
    String mixed = coat.mixedWith().map(part -> with(part, other)).orElse("");
    String ground = coat.over() == Ground.BLACK_LINE ? " over a black line" : "";
    return strength + load + mixed + ground;
  }

  private static String with(Admixture other, Optional<String> name) {
    String what =
        switch (other.kind()) {
          case WHITE -> "white";
          case BLACK -> "black";
          case PAINT -> name.orElse("another paint");
        };
    return other.share() == 0.5
        ? " 1:1 with " + what
        : String.format(Locale.ROOT, " with %.0f %% %s", 100 * other.share(), what);
  }

  /** How far to trust a paint's colour, and how it dries if that was read. */
  public static String trust(String expectation, Optional<DryingShift> shift) {
    return expectation
        + shift
            .map(
                s ->
                    String.format(
                        Locale.ROOT,
                        " Wet it reads L* %+.0f, a* %+.0f, b* %+.0f beside dry.",
                        s.lightness(),
                        s.a(),
                        s.b()))
            .orElse("");
  }

  /** How a paint dries that is taken to have a sheen; empty for a matt one. */
  public static String sheen(double gloss) {
    return gloss == 0
        ? ""
        : String.format(
            Locale.ROOT,
            "Taken to dry with a sheen, as a swatch learnt from was darker than a matt coat: at"
                + " full strength its face throws back %.1f %% of the light, a matt one %.0f %%.",
            100 * Surface.DRY.smoothed(gloss).seen(),
            100 * Surface.DRY.seen());
  }

  /** Where and when a coat was read. */
  public static String read(PaintedCoat coat) {
    String date = coat.date().map(LocalDate::toString).orElse("");
    return coat.source().isEmpty() || date.isEmpty()
        ? coat.source() + date
        : coat.source() + ", " + date;
  }

  /** How far a coat is from its prediction. */
  public static String difference(double ciede2000) {
    return String.format(Locale.ROOT, "ΔE00 %.1f", ciede2000);
  }

  /** A coat of which nobody knows what is in it. */
  public static String unknownPartner() {
    return "The paint mixed into it is not on the shelf any more.";
  }

  /** Coats were kept. */
  public static String kept(int coats) {
    return coats(coats) + " kept. Choose “" + LEARN + "” to predict from them.";
  }

  /** For example "3 swatches". */
  public static String coats(int coats) {
    return coats == 1 ? "1 swatch" : coats + " swatches";
  }

  /**
   * What was learnt, the coat or load to look at again, and what cannot be shown as it was read.
   */
  public static String learnt(PaintFitReport report) {
    double worst =
        report.coats().stream().mapToDouble(PaintFitReport.CoatFit::ciede2000).max().orElse(0);
    String text =
        String.format(
            Locale.ROOT,
            "Learnt from %s; the farthest is off by ΔE00 %.1f.",
            coats(report.coats().size()),
            worst);
    String odd =
        report
            .odd()
            .filter(o -> report.doubted().filter(d -> d.coat().equals(o.coat())).isEmpty())
            .map(o -> " " + odd(o))
            .orElse("");
    String load = report.doubted().map(d -> " " + doubted(d)).orElse("");
    String unused =
        report.unused().isEmpty()
            ? ""
            : " %s left out: the paint mixed into it is not on the shelf."
                .formatted(coats(report.unused().size()));
    String dark = SwatchWords.darks(report).map(told -> " " + told).orElse("");
    return text + odd + load + unused + dark;
  }

  /** A coat that disagrees with the others: which, by how much, what it may be. */
  public static String odd(PaintFitReport.Odd odd) {
    return oddCoat(coat(odd.coat().coat()), odd);
  }

  /**
   * The same where coats of several paints are on view.
   *
   * @param names the name of a paint of the shelf by its id
   */
  public static String odd(PaintFitReport.Odd odd, Function<String, Optional<String>> names) {
    PaintedCoat coat = odd.coat().coat();
    Optional<String> other =
        coat.mixedWith()
            .filter(part -> part.kind() == Admixture.Kind.PAINT)
            .map(Admixture::paintId)
            .flatMap(names);
    String paint = names.apply(odd.coat().paintId()).map(name -> name + ", ").orElse("");
    return oddCoat(paint + coat(coat, other), odd);
  }

  private static String oddCoat(String which, PaintFitReport.Odd odd) {
    return String.format(
        Locale.ROOT,
        "Look at this coat again: %s. The others foretell another colour (ΔE00 %.0f away). It may"
            + " be another paint, have picked up colour from the brush, or be read at the wrong"
            + " place.",
        which,
        odd.foretold());
  }

  /** A coat whose noted load disagrees with the others: which, and the load that would fit. */
  public static String doubted(PaintFitReport.OtherLoad doubted) {
    return String.format(
        Locale.ROOT,
        "Look at this load again: %s. Beside the others it looks like a load of %.2g; with the one"
            + " noted they foretell another colour (ΔE00 %.0f away).",
        coat(doubted.coat().coat()),
        doubted.load(),
        doubted.foretold());
  }

  /** Takes the load that would fit. */
  public static String takeLoad(double load) {
    return String.format(Locale.ROOT, "Note %.2g and learn again", load);
  }

  /** Why nothing could be learnt. */
  public static String refused(FitRefusal refusal) {
    return SwatchWords.sentence("Nothing was learnt", refusal);
  }

  /** A file too large to be one of readings. */
  public static String tooLarge(String file) {
    return file + " is larger than 20 MB, which no table of swatches is. Check the file.";
  }

  /** A file that is no text. */
  public static String unreadable(String file) {
    return file + " cannot be read as text. Export the readings as a text file in UTF-8.";
  }

  /** What can be read from a file of readings. */
  public static String field(ReadingField field) {
    return switch (field) {
      case NAME -> "Name";
      case FIRST -> "Spectrum from";
      case LAST -> "to";
      case LIGHTNESS -> "L*";
      case A -> "a*";
      case B -> "b*";
      case X -> "X";
      case Y -> "Y";
      case Z -> "Z";
      case AMOUNT -> "Amount";
    };
  }

  /** A column of the table in hand by its number from 0, its head and its first cell. */
  public static String place(int place, RawTable table) {
    String head = table.columns().get(place);
    String example = table.rows().get(0).cells().get(place);
    String where =
        table.isTurned()
            ? WordParts.shortened(head) + " (line " + table.lines().get(place) + ")"
            : ShareWords.place(place, head);
    return where + (example.isBlank() ? "" : ": " + WordParts.shortened(example));
  }

  /** The question which column, or line, holds what. */
  public static String places(RawTable table) {
    return table.isTurned() ? "Which line holds what" : "Which column holds what";
  }

  /** The question what each sample of a file is. */
  public static String samples(RawTable table) {
    return table.isTurned() ? "What each column is" : ROWS;
  }

  /** How reflectances are written. */
  public static String scale(ReadingMapping.Scale scale) {
    return scale == ReadingMapping.Scale.PERCENT ? "percent" : "0 to 1";
  }

  /** The light of L*, a*, b*. */
  public static String light(ReadingMapping.ReadingLight light) {
    return light == ReadingMapping.ReadingLight.D50 ? "D50, as printers do" : "D65, daylight";
  }

  /** What the columns of a file are taken for, or why they cannot be. */
  public static String columns(String file, ReadingPlan plan, ReadingMapping mapping) {
    if (plan.fault().isPresent()) {
      return plan.fault().get() instanceof TableFault.NoReadings
          ? "Say below in which columns reflectances, or L*, a* and b*, or X, Y and Z, stand."
          : SwatchWords.sentence(file, plan.fault().get());
    }
    List<Double> nm = plan.wavelengths();
    String unit = mapping.scale() == ReadingMapping.Scale.PERCENT ? "in percent" : "0 to 1";
    String read =
        nm.isEmpty()
            ? mapping.isLab()
                ? "L*, a*, b* under " + mapping.light()
                : "X, Y, Z under %s, %s".formatted(mapping.light(), unit)
            : String.format(
                Locale.ROOT,
                "reflectance at %d wavelengths, %.0f–%.0f nm, %s",
                nm.size(),
                nm.get(0),
                nm.get(nm.size() - 1),
                unit);
    return "%s is read as %s.".formatted(file, read);
  }

  /** What the amounts of a file count as; empty if none are read. */
  public static String amounts(ReadingMapping mapping, boolean loads) {
    if (mapping.place(ReadingField.AMOUNT).isEmpty()) {
      return "";
    }
    return loads
        ? "Its loads are noted with the swatches; 1 is full strength."
        : "Its amounts are noted as loads: 1 is that at full strength, or the largest if none is.";
  }

  /** Amounts that no brush lays down. */
  public static String amountsTooLarge(int coats) {
    return "%s more than %.0f times the paint of a full coat, which is not noted. Check the amounts."
        .formatted(coats == 1 ? "1 has" : coats + " have", PaintedCoat.MOST_LOAD);
  }

  /** The first rows of a file as they stand in it, for the painter to see what its columns are. */
  public static String asItStands(RawTable table) {
    return table.rows().stream()
        .limit(FIRST_ROWS)
        .map(
            row ->
                row.cells().stream()
                    .limit(FIRST_CELLS)
                    .map(WordParts::shortened)
                    .collect(Collectors.joining(" · ")))
        .collect(Collectors.joining("\n"));
  }

  /** How much of a file can be kept; empty while its columns are at fault. */
  public static String rows(ReadingPlan plan, RawTable table) {
    if (plan.fault().isPresent()) {
      return "";
    }
    int usable = plan.usable().size();
    int wrong = plan.rows().size() - usable;
    String left =
        wrong == 0
            ? ""
            : " %d cannot be used and %s left out.".formatted(wrong, wrong == 1 ? "is" : "are");
    String one = table.isTurned() ? "column" : "row";
    return "%d %s.".formatted(usable, usable == 1 ? one : one + "s") + left;
  }

  /** Why a row of a file cannot be used. */
  public static String fault(ReadRow row) {
    return row.fault().map(fault -> SwatchWords.sentence(row.name(), fault)).orElse("");
  }

  /** Where optics came from, for example "your swatches, 4 swatches, 2026-05-01". */
  public static String origin(OpticsOrigin origin) {
    String reason =
        switch (origin.reason()) {
          case ESTIMATED -> "estimated from its pigments";
          case FITTED -> "learnt from swatches";
          case FILE -> "taken from a file";
          case UNKNOWN -> "nobody noted where from";
        };
    String detail = origin.detail().isEmpty() ? "" : ", " + origin.detail();
    return reason + detail + origin.date().map(d -> ", " + d).orElse("");
  }
}
