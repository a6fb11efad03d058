package org.panwright.command;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.swatch.check.MixErrors;
import org.panwright.swatch.check.OddCoat;
import org.panwright.swatch.check.PaintResiduals;
import org.panwright.swatch.check.ScreenAverage;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.coat.SwatchSet;
import org.panwright.swatch.file.CoatTable;
import org.panwright.swatch.file.PaintNames;
import org.panwright.swatch.fit.FitRefusedException;
import org.panwright.swatch.fit.FitReport;
import org.panwright.swatch.fit.FitSettings;
import org.panwright.swatch.fit.OpticsFit;
import org.panwright.swatch.table.TableFaultException;
import org.panwright.words.MixCheckWords;
import org.panwright.words.SwatchWords;

/**
 * {@code mixcheck --fit FIT.csv --test TEST.csv [--from spectra|colour] [--json]}: fits paints to
 * one file of measured coats, predicts the mixes of another, and says how far off the predictions
 * are, how well the coats of each paint fit together and which of them to look at again. Anyone can
 * test the engine with it.
 *
 * <p>Both files are laid out as {@link CoatTable} describes; the paper is that of the first. With
 * {@code --from colour} only the colour of each coat of the first file is used.
 */
final class MixCheck implements Command {
  private static final String NAME = "mixcheck";
  private static final long MOST_MEGABYTES = 50;

  @Override
  public void run(List<String> words, PrintStream out, PrintStream err) throws BadUseException {
    Arguments arguments = Arguments.of(NAME, words, Set.of("json"), Set.of("fit", "test", "from"));
    if (!arguments.plain().isEmpty()) {
      throw new BadUseException(MixCheckWords.tooManyWords(arguments.plain().get(0)));
    }
    String fitFile = arguments.required("fit");
    String testFile = arguments.required("test");
    boolean byColour = isColour(arguments.value("from").orElse("spectra"));

    CoatTable fitted = table(fitFile, CoatTable::read);
    CoatTable test = table(testFile, bytes -> CoatTable.read(bytes, fitted.usualLoad()));
    PaintNames names = PaintNames.of(List.of(fitted, test));
    CoatTable coats = fitted.named(names);
    SwatchSet set = swatches(fitFile, coats, byColour);
    names.several().forEach(ways -> err.println(MixCheckWords.onePaint(ways)));
    List<CoatTable.Row> mixes = mixes(fitFile, coats, testFile, test.named(names), err);
    FitReport report = fit(fitFile, set);
    Reading paper = set.swatches().get(0).ground();
    ScreenAverage screen = new ScreenAverage(set, report, paper);
    List<Lab> read = new ArrayList<>();
    List<Lab> predicted = new ArrayList<>();
    List<Lab> averaged = new ArrayList<>();
    for (CoatTable.Row mix : mixes) {
      read.add(mix.reading().lab());
      predicted.add(Light.D65.lab(report.predict(mix.paints(), paper)));
      averaged.add(screen.of(mix.paints()));
    }
    MixCheckAnswer answer =
        new MixCheckAnswer(
            MixErrors.of(predicted, read),
            MixErrors.of(averaged, read),
            PaintResiduals.of(report),
            OddCoat.in(set, FitSettings.MEASURED, report),
            MixCheckAnswer.FarMix.of(mixes, predicted));
    out.println(arguments.has("json") ? Json.text(answer.json()) : answer.text(fitFile, testFile));
  }

  private static boolean isColour(String source) throws BadUseException {
    return switch (source) {
      case "colour" -> true;
      case "spectra" -> false;
      default -> throw new BadUseException(MixCheckWords.unknownSource(source));
    };
  }

  private static SwatchSet swatches(String file, CoatTable coats, boolean byColour)
      throws BadUseException {
    try {
      SwatchSet set = coats.swatches();
      return byColour ? set.byColour() : set;
    } catch (TableFaultException broken) {
      throw new BadUseException(SwatchWords.sentence(file, broken.fault()));
    }
  }

  /** The coats of the test whose paints were all fitted; of the others the painter is told. */
  private static List<CoatTable.Row> mixes(
      String fitFile, CoatTable fitted, String testFile, CoatTable test, PrintStream err)
      throws BadUseException {
    int open = fitted.unmeasured();
    if (open > 0) {
      err.println(MixCheckWords.unmeasured(fitFile, open, open == fitted.coats().size()));
    }
    if (test.unmeasured() > 0) {
      err.println(MixCheckWords.untestedAmounts(testFile, test.unmeasured()));
    }
    List<CoatTable.Row> coats = test.coats();
    if (coats.isEmpty()) {
      throw new BadUseException(MixCheckWords.nothingToTest(testFile));
    }
    Set<String> known =
        fitted.coats().stream()
            .flatMap(row -> row.paints().stream())
            .map(PaintLoad::paint)
            .collect(Collectors.toSet());
    List<CoatTable.Row> mixes = new ArrayList<>();
    Set<String> unknown = new TreeSet<>();
    for (CoatTable.Row coat : coats) {
      List<String> strange =
          coat.paints().stream().map(PaintLoad::paint).filter(p -> !known.contains(p)).toList();
      unknown.addAll(strange);
      if (strange.isEmpty()) {
        mixes.add(coat);
      }
    }
    if (mixes.isEmpty()) {
      CoatTable.Row first = coats.get(0);
      throw new BadUseException(
          MixCheckWords.paintNotFitted(testFile, first.name(), unknown.iterator().next(), fitFile));
    }
    if (mixes.size() < coats.size()) {
      err.println(
          MixCheckWords.leftOut(
              testFile, coats.size() - mixes.size(), fitFile, List.copyOf(unknown)));
    }
    return mixes;
  }

  private static FitReport fit(String file, SwatchSet set) throws BadUseException {
    try {
      return OpticsFit.of(set, FitSettings.MEASURED);
    } catch (FitRefusedException refused) {
      throw new BadUseException(SwatchWords.sentence(file, refused.refusal()));
    }
  }

  /** How the bytes of a file become a table. */
  private interface Reader {
    CoatTable read(byte[] bytes) throws TableFaultException;
  }

  private static CoatTable table(String file, Reader reader) throws BadUseException {
    Path path = Arguments.path(file);
    if (!Files.isRegularFile(path)) {
      throw new BadUseException(MixCheckWords.noFile(file));
    }
    try {
      if (Files.size(path) > MOST_MEGABYTES << 20) {
        throw new BadUseException(MixCheckWords.tooLarge(file, MOST_MEGABYTES));
      }
      return reader.read(Files.readAllBytes(path));
    } catch (IOException unreadable) {
      throw new BadUseException(MixCheckWords.unreadable(file));
    } catch (TableFaultException broken) {
      throw new BadUseException(SwatchWords.sentence(file, broken.fault()));
    }
  }
}
